import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { across, plus, polar, sizeOf } from './complex.ts';

const source = { source: 'own', at: 'power of each part of a complex voltage divider' } as const;

export const padDrive = define({
  name: 'PAD.DRIVE',
  summary: 'The average voltage that music leaves for a branch, from the power of the amplifier.',
  parameters: {
    power: { quantity: 'power', min: 1e-6, max: 1e6, typical: [1, 1000], summary: 'rated sine power of the amplifier' },
    ohms: { ...usual.ohms, summary: 'ohms that this power is rated into' },
    crest: { quantity: 'level', min: 0, max: 40, default: 12, summary: 'peaks over the average; 3 dB for a sine' },
    share: {
      quantity: 'ratio',
      min: 0,
      max: 1,
      default: 0.15,
      typical: [0.02, 0.5],
      summary: 'share of the power that falls into the band of the branch',
    },
  },
  returns: { quantity: 'voltage', summary: 'V rms in the band' },
  source: { source: 'practice', at: 'peak √(2·P·R), lowered by the crest factor, times the root of the share' },
  example: { formula: '=PAD.DRIVE("100 W", "8 Ω", "12 dB", 0.15)', gives: 3.891 },
  remarks:
    'The peaks just reach the clipping voltage. Unclipped music has a crest of 10 to 20 dB, hard clipping about 3 dB, and clipping also raises the share of the treble: try 0.25.',
  compute: (given) => Math.sqrt(2 * given.power * given.ohms * given.share) * 10 ** (-given.crest / 20),
});

export const padHeat = define({
  name: 'PAD.HEAT',
  summary: 'The power that one part of a pad, or the driver behind it, turns into heat.',
  parameters: {
    volts: { quantity: 'voltage', min: 0, max: 1e6, summary: 'average voltage at the pad, V rms' },
    series: { quantity: 'resistance', min: 0, max: 1e6, summary: 'resistor in series' },
    shunt: { ...usual.ohms, summary: 'resistor across the driver' },
    ohms: { ...usual.ohms, summary: 'real ohms of the driver in its band' },
    part: { choice: ['series', 'shunt', 'driver'], summary: 'the part' },
    phase: {
      quantity: 'angle',
      min: -Math.PI / 2,
      max: Math.PI / 2,
      default: 0,
      summary: 'phase of the impedance of the driver',
    },
  },
  returns: { quantity: 'power', summary: 'average power' },
  source,
  example: { formula: '=PAD.HEAT("3.891 V", "2.7 Ω", "6.8 Ω", "6.1 Ω", "series")', gives: 1.17 },
  remarks:
    'Choose a resistor for at least twice this and keep it off stuffing and foam: at its rated power it burns the fingers. With crest 3 dB the same shows what an amplifier driven into clipping does.',
  compute(given) {
    const driver = polar(given.ohms, given.phase);
    const behind = across({ re: given.shunt, im: 0 }, driver);
    const current = given.volts / sizeOf(plus({ re: given.series, im: 0 }, behind));
    const volts = current * sizeOf(behind);
    if (given.part === 'series') return current ** 2 * given.series;
    return given.part === 'shunt'
      ? volts ** 2 / given.shunt
      : Math.max(0, (volts ** 2 * Math.cos(given.phase)) / given.ohms);
  },
});
