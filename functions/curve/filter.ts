import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';

/** Sections of the normalised low-pass: `undefined` is first order, a number the Q of a second-order one. */
const butterworth = {
  BW1: [undefined],
  BW2: [Math.SQRT1_2],
  BW3: [undefined, 1],
  BW4: [1 / (2 * Math.sin(Math.PI / 8)), 1 / (2 * Math.sin((3 * Math.PI) / 8))],
} as const;
const sections: Readonly<Record<string, readonly (number | undefined)[]>> = {
  ...butterworth,
  LR2: [...butterworth.BW1, ...butterworth.BW1],
  LR4: [...butterworth.BW2, ...butterworth.BW2],
};

/** Square of the denominator and its phase at a normalised frequency. */
const denominator = (q: number | undefined, u: number): { square: number; phase: number; order: number } =>
  q === undefined
    ? { square: 1 + u ** 2, phase: Math.atan(u), order: 1 }
    : { square: (1 - u ** 2) ** 2 + (u / q) ** 2, phase: Math.atan2(u / q, 1 - u ** 2), order: 2 };

export const filterSlope = define({
  name: 'FILTER.SLOPE',
  summary: 'The response of an ideal low-pass or high-pass, as a target for driver and filter together.',
  parameters: {
    frequency: { ...usual.frequency, summary: 'hand-over' },
    slope: {
      choice: ['LR2', 'LR4', 'BW1', 'BW2', 'BW3', 'BW4'],
      summary: 'Linkwitz–Riley or Butterworth with its order',
    },
    pass: { choice: ['low', 'high'], summary: 'the side that passes' },
  },
  returns: { record: 'curve', summary: 'level in dB with phase, 0 dB in the pass band' },
  source: {
    source: 'linkwitz1976',
    at: 'squared Butterworth filters; −6 dB at the hand-over, against −3 dB for Butterworth',
  },
  example: { formula: '=CURVE.AT(FILTER.SLOPE("2 kHz", "LR4", "low"), "2 kHz")', gives: -6.02 },
  remarks:
    'The target of the sound, not of the electrical filter alone: the driver adds its own slope. An LR2 pair sums flat with one driver reversed, an LR4 pair as it stands.',
  compute(given) {
    const high = given.pass === 'high';
    const at = (frequency: number) =>
      (sections[given.slope] ?? []).map((q) => denominator(q, frequency / given.frequency));
    const order = at(given.frequency).reduce((sum, each) => sum + each.order, 0);
    const gain = (frequency: number): number =>
      (high ? 20 * order * Math.log10(frequency / given.frequency) : 0) -
      at(frequency).reduce((sum, each) => sum + 10 * Math.log10(each.square), 0);
    return {
      kind: 'curve' as const,
      title: `${given.slope} ${given.pass}-pass`,
      quantity: 'level' as const,
      y: frequencies.map(gain),
      phase: frequencies.map(
        (frequency) => (high ? (order * Math.PI) / 2 : 0) - at(frequency).reduce((sum, each) => sum + each.phase, 0),
      ),
      from: frequencies[0]!,
      to: frequencies[frequencies.length - 1]!,
    };
  },
});
