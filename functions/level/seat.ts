import { standardVolts } from '../air.ts';
import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { decay, distance, ohms, power, systemLevel, together } from './parameters.ts';

/** Level lost between 1 m and a distance. */
export const lossTo = (metres: number, perDoubling: number): number => perDoubling * Math.log2(metres);

/** Watts into ohms that raise the level for 2.83 V by some decibels. */
export const wattsFor = (raise: number, load: number): number => (10 ** (raise / 10) * standardVolts ** 2) / load;

const practice = {
  source: 'practice',
  at: '3 dB per doubling in a furnished room, 6 dB in the open; real rooms lie between',
} as const;

export const levelDistanceLoss = define({
  name: 'LEVEL.DISTANCE_LOSS',
  summary: 'How much quieter it is at a distance than at 1 m.',
  parameters: { distance, decay },
  returns: { quantity: 'level', summary: 'loss; negative nearer than 1 m' },
  source: practice,
  example: { formula: '=LEVEL.DISTANCE_LOSS("2.8 m", "3 dB")', gives: 4.46 },
  remarks: 'A band, not a point: work it out with 3 dB and with 6.02 dB per doubling and expect the truth between.',
  compute: (given) => lossTo(given.distance, given.decay),
});

export const levelAtSeat = define({
  name: 'LEVEL.AT_SEAT',
  summary: 'The level at the chair for 2.83 V.',
  parameters: { level: systemLevel, distance, decay, together },
  returns: { quantity: 'level', summary: 'level at the chair' },
  source: practice,
  example: { formula: '=LEVEL.AT_SEAT("84.7 dB", "2.8 m", "3 dB", "3 dB")', gives: 83.24 },
  compute: (given) => given.level - lossTo(given.distance, given.decay) + given.together,
});

const wanted = {
  level: systemLevel,
  distance,
  decay,
  together,
  peaks: { ...usual.level, default: 100, typical: [85, 115], summary: 'level of the peaks wanted at the chair' },
} as const;

interface Wanted {
  readonly level: number;
  readonly distance: number;
  readonly decay: number;
  readonly together: number;
  readonly peaks: number;
}
const raiseFor = (given: Wanted): number =>
  given.peaks - (given.level - lossTo(given.distance, given.decay) + given.together);

export const levelWatts = define({
  name: 'LEVEL.WATTS',
  summary: 'The power that each loudspeaker needs for the peaks wanted at the chair.',
  parameters: { ...wanted, ohms },
  returns: { quantity: 'power', summary: 'power for the peaks, as that of a sine' },
  source: practice,
  example: { formula: '=LEVEL.WATTS("84.7 dB", "2.8 m", "3 dB", "3 dB", "100 dB")', gives: 47 },
  remarks:
    'Peaks of 100 dB and more at the chair are for moments only: see HEARING.TIME. The travel of the woofer may give out long before the watts: see LIMIT.MAP.',
  compute: (given) => wattsFor(raiseFor(given), given.ohms),
});

export const levelVolts = define({
  name: 'LEVEL.VOLTS',
  summary: 'The voltage that each loudspeaker needs for the peaks wanted at the chair.',
  parameters: wanted,
  returns: { quantity: 'voltage', summary: 'V rms of a sine of that level' },
  source: practice,
  example: { formula: '=LEVEL.VOLTS("84.7 dB", "2.8 m", "3 dB", "3 dB", "100 dB")', gives: 19.5 },
  compute: (given) => standardVolts * 10 ** (raiseFor(given) / 20),
});

export const levelHeadroom = define({
  name: 'LEVEL.HEADROOM',
  summary: 'By how many decibels an amplifier exceeds the power that is needed.',
  parameters: {
    available: { ...power, summary: 'power of the amplifier' },
    needed: { ...power, summary: 'power needed for the peaks' },
  },
  returns: { quantity: 'level', summary: 'headroom; negative when it clips so much too early' },
  source: { source: 'own', at: 'definition of the decibel' },
  example: { formula: '=LEVEL.HEADROOM("100 W", "47 W")', gives: 3.28 },
  remarks: 'Common practice, no source: 3 dB and more is comfortable, 0 to 3 dB tight.',
  compute: (given) => 10 * Math.log10(given.available / given.needed),
});

export const levelClipVolts = define({
  name: 'LEVEL.CLIP_VOLTS',
  summary: 'The voltage at which an amplifier of a rated power clips.',
  parameters: { power: { ...power, summary: 'rated power for a sine' }, ohms },
  returns: { quantity: 'voltage', summary: 'V rms of the largest sine; its peak is √2 of that' },
  source: { source: 'own', at: 'U = √(P·R)' },
  example: { formula: '=LEVEL.CLIP_VOLTS("50 W", "8 ohm")', gives: 20 },
  remarks: 'Into fewer ohms most amplifiers clip at the same voltage or a little below.',
  compute: (given) => Math.sqrt(given.power * given.ohms),
});
