import { describe, expect, test } from 'vitest';
import { allSlopes } from '../../../functions/crossover/slope.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { at, curve, points, table } from './run.ts';

const sections = (slope: string, pass: string) =>
  table('FILTER.SECTIONS', 1000, slope, pass).rows as readonly (readonly [number, number, number, number | null])[];

// Williams & Taylor, Electronic Filter Design Handbook, pole locations, from memory; Q to four digits.
const butterworth = {
  BW2: [0.7071],
  BW4: [0.5412, 1.3066],
  BW6: [0.5176, 0.7071, 1.9319],
  BW8: [0.5098, 0.6013, 0.9, 2.5629],
  LR4: [0.7071, 0.7071],
  LR8: [0.5412, 0.5412, 1.3066, 1.3066],
} as const;
test.each(Object.entries(butterworth))('Q of the sections of %s', (slope, printed) => {
  const rows = sections(slope, 'low');
  expect(rows.map((row) => row[2])).toEqual(printed.map(() => 1000));
  rows.forEach((row, index) => expect(Math.abs(row[3]! - printed[index]!)).toBeLessThanOrEqual(5e-5));
});

// scipy.signal.bessel(order, 1, analog=True, norm='mag'), 3 dB down at the hand-over: poles as frequency and Q.
test.each([
  [
    'BES3',
    [
      [1322.6758, null],
      [1447.6171, 0.69104663],
    ],
  ],
  [
    'BES4',
    [
      [1430.1716, 0.52193458],
      [1603.3575, 0.80553828],
    ],
  ],
] as const)('poles of %s', (slope, poles) => {
  sections(slope, 'low').forEach((row, index) => {
    const [frequency, q] = poles[index]!;
    expect(Math.abs(row[2] - frequency)).toBeLessThan(1e-3);
    if (q === null) expect(row[3]).toBeNull();
    else expect(Math.abs(row[3]! - q)).toBeLessThan(1e-6);
  });
});

describe.each(['low', 'high'])('%s-pass', (pass) => {
  test.each(allSlopes)('%s: the sections in a row give the slope', (slope) => {
    const whole = curve('FILTER.SLOPE', 1000, slope, pass);
    const rows = sections(slope, pass);
    for (const index of points(50, 20000)) {
      // Each as its circuit is set: 1/√((1 − u²)² + (u/Q)²), turned round for a high-pass.
      const level = rows.reduce((sum, [, order, frequency, q]) => {
        const u = pass === 'low' ? frequencies[index]! / frequency : frequency / frequencies[index]!;
        return sum - 10 * Math.log10(order === 1 ? 1 + u * u : (1 - u * u) ** 2 + (u / q!) ** 2);
      }, 0);
      expect(at(whole, frequencies[index]!)).toBeCloseTo(level, 8);
    }
  });
});
