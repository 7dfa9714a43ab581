import { define } from '../define.ts';
import { airDensity, referencePressure } from '../air.ts';
import { usual } from '../usual.ts';

/** The largest travel through the filter over the travel without it at the hand-over. */
const shareOf = { LR2: 1, LR4: 0.5 } as const;

const slopeShare = (slope: string): number => (slope === 'LR2' ? shareOf.LR2 : shareOf.LR4);

/** One-way peak travel times ω² for a level at 1 m in half space. */
const acceleration = (sd: number, level: number): number =>
  (Math.SQRT2 * referencePressure * 10 ** (level / 20) * 2 * Math.PI) / (airDensity * sd);

const travelOf = (sd: number, level: number, frequency: number): number =>
  acceleration(sd, level) / (2 * Math.PI * frequency) ** 2;

const sd = { ...usual.area, summary: 'radiating area' } as const;
const level = { ...usual.level, summary: 'level at 1 m, half space', typical: [60, 130] } as const;
const slope = { choice: ['LR2', 'LR4'], summary: 'acoustic slope of the high-pass' } as const;
const source = { source: 'beranek1954', at: 'simple source in half space, x = √2·p·2πr/(ρ·Sd·ω²)' } as const;

export const trebleTravel = define({
  name: 'TREBLE.TRAVEL',
  summary: 'The one-way peak travel that a driver needs for a level at a frequency.',
  parameters: { sd, level, frequency: { ...usual.frequency, summary: 'frequency' } },
  returns: { quantity: 'travel', summary: 'one-way peak travel' },
  source,
  example: { formula: '=TREBLE.TRAVEL("7 cm²", "100 dB", "1044 Hz")', gives: 0.00049 },
  remarks:
    'A sine at 1 m in front of a wide wall. Four times as much an octave lower, twice as much for 6 dB more. Level is that of the tone alone, as rms.',
  compute: (given) => travelOf(given.sd, given.level, given.frequency),
});

export const trebleFloor = define({
  name: 'TREBLE.FLOOR',
  summary: 'The lowest hand-over at which a tweeter stays within a share of its travel.',
  parameters: {
    sd,
    xmax: { quantity: 'travel', min: 1e-6, max: 1, summary: 'one-way travel that the driver allows' },
    level,
    slope,
    share: { quantity: 'ratio', min: 0.01, max: 1, default: 0.7, summary: 'share of the travel to be used' },
  },
  returns: { quantity: 'frequency', summary: 'lowest hand-over by travel' },
  source: {
    source: 'own',
    at: 'travel of a piston through a Linkwitz–Riley high-pass: LR4 peaks at half, LR2 levels off at the whole',
  },
  example: { formula: '=TREBLE.FLOOR("7 cm²", "0.35 mm", "100 dB", "LR4", 0.7)', gives: 1044 },
  remarks:
    'The slope is that of the sound, driver and filter together. Below an LR2 hand-over the travel does not fall any more, so the same driver needs √2 the frequency. Travel is one-way: halve a peak-to-peak figure.',
  compute: (given) =>
    Math.sqrt((slopeShare(given.slope) * acceleration(given.sd, given.level)) / (given.share * given.xmax)) /
    (2 * Math.PI),
});

export const trebleTravelAt = define({
  name: 'TREBLE.TRAVEL_AT',
  summary: 'The largest travel of a tweeter through its filter when handed over at a frequency.',
  parameters: { sd, level, frequency: { ...usual.frequency, summary: 'hand-over' }, slope },
  returns: { quantity: 'travel', summary: 'largest one-way peak travel at any frequency' },
  source: { source: 'own', at: 'u²/(1+u⁴) for LR4 has its peak ½ at u = 1; 1/(1+u²) for LR2 tends to 1' },
  example: { formula: '=TREBLE.TRAVEL_AT("7 cm²", "100 dB", "1044 Hz", "LR4")', gives: 0.000245 },
  remarks:
    'Compare it with the travel that the driver allows. The slope is that of the sound, driver and filter together.',
  compute: (given) => slopeShare(given.slope) * travelOf(given.sd, given.level, given.frequency),
});
