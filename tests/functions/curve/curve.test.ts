import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveAdd, curveDifference, curveLimit, curveShift, curveSum } from '../../../functions/curve/combine.ts';
import { filterSlope } from '../../../functions/crossover/filter-slope.ts';
import {
  curveAt,
  curveCrosses,
  curveFall,
  curveLowest,
  curvePeak,
  curvePeakAt,
  curveRipple,
} from '../../../functions/curve/read.ts';
import { curveColumn, curveRead } from '../../../functions/curve/tables.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { references } from '../../references/read.ts';

const level = { quantity: 'level' } as const;
const column = (...cells: readonly (number | string | null)[]) => cells.map((cell) => [cell]);
type Slope = 'LR2' | 'LR4' | 'BW1' | 'BW2' | 'BW3' | 'BW4';
const filter = (slope: Slope, pass: 'low' | 'high', frequency = 2500): Curve =>
  filterSlope.compute({ frequency, slope, pass }, level) as Curve;
const flat = (decibels: number): Curve =>
  curveRead.compute(
    { frequencies: column(1000), values: column(decibels), quantity: 'level', title: 'Flat' },
    level,
  ) as Curve;

describe('filters', () => {
  test('LR4 sums flat, LR2 with one reversed, and odd Butterworth pairs either way', () => {
    const reversed = (curve: Curve): Curve => ({ ...curve, phase: curve.phase!.map((angle) => angle + Math.PI) });
    const sums = [
      [filter('LR4', 'low'), filter('LR4', 'high')],
      [filter('LR2', 'low'), reversed(filter('LR2', 'high'))],
      [filter('BW3', 'low'), filter('BW3', 'high')],
      [filter('BW1', 'low'), reversed(filter('BW1', 'high'))],
    ].map((curves) => curveSum.compute({ curves }, level) as Curve);
    for (const sum of sums) for (const value of sum.y) expect(value).toBeCloseTo(0, 9);
  });
});

describe('sums', () => {
  test.each([...references('levels', 'sum-'), ...references('levels', 'coh-')])('$id', (each) => {
    const levels = each.inputs['L']!.value as readonly number[];
    const coherent = each.id.startsWith('coh');
    const curves = levels.map((one) => (coherent ? { ...flat(one), phase: new Float64Array(577) } : flat(one)));
    // The reference is written with ten digits, which is coarser than the tolerance it states: all ten must agree.
    expect(Number((curveSum.compute({ curves }, level) as Curve).y[288]!.toPrecision(10))).toBe(each.expected.value);
  });
  test('difference undoes add, shift moves, limit narrows', () => {
    const low = filter('BW2', 'low');
    const added = curveAdd.compute({ curve: flat(90), curves: [low] }, level) as Curve;
    const back = curveDifference.compute({ a: added, b: low }, level) as Curve;
    for (const value of back.y) expect(value).toBeCloseTo(90, 9);
    expect((curveShift.compute({ curve: flat(90), amount: -5.3 }, level) as Curve).y[0]).toBeCloseTo(84.7, 12);
    expect(curveShift.compute({ curve: flat(90), amount: 1 }, { quantity: 'resistance' })).toBeInstanceOf(Problem);
    const narrow = curveLimit.compute({ curve: flat(90), from: 100, to: 2000 }, level) as Curve;
    expect([narrow.from, narrow.to]).toEqual([100, 2000]);
    expect(curveAt.compute({ curve: narrow, frequency: 50 }, level)).toBeInstanceOf(Problem);
  });
});

describe('reading', () => {
  const decibels = 10 * Math.log10(2);
  test('the fall of a closed box of Q 0.707 at 69.6 Hz: F3 69.6, F10 40.2', () => {
    const curve = filter('BW2', 'high', 69.6);
    expect(Math.abs((curveFall.compute({ curve, fall: decibels }, level) as number) / 69.6 - 1)).toBeLessThan(1e-4);
    expect(Math.abs((curveFall.compute({ curve, fall: 10 }, level) as number) - 40.2)).toBeLessThanOrEqual(0.05);
    expect(curveFall.compute({ curve: flat(0), fall: 3 }, level)).toBeInstanceOf(Problem);
  });
  test('the peak of a resonance between grid points', () => {
    const curve: Curve = { ...flat(0), y: frequencies.map((f) => -20 * Math.log2(f / 333) ** 2) };
    const given = { curve, from: 20, to: 20000 };
    expect(curvePeakAt.compute(given, level)).toBeCloseTo(333, 6);
    expect(curvePeak.compute(given, level)).toBeCloseTo(0, 9);
    expect(curveLowest.compute(given, level)).toBeCloseTo(-20 * Math.log2(20000 / 333) ** 2, 1);
    const ripple = curveRipple.compute({ curve, from: 333 / 2, to: 333 * 2 }, level) as number;
    expect(Math.abs(ripple - 20)).toBeLessThan(0.01);
  });
  test('a low-pass and a high-pass cross −6.02 dB at the hand-over', () => {
    const given = { level: -20 * Math.log10(2), from: 20, to: 20000 };
    const down = curveCrosses.compute(
      { ...given, curve: filter('LR4', 'low'), direction: 'downwards' },
      level,
    ) as number;
    const up = curveCrosses.compute({ ...given, curve: filter('LR4', 'high'), direction: 'upwards' }, level) as number;
    expect(down / 2500).toBeCloseTo(1, 4);
    expect(up / 2500).toBeCloseTo(1, 4);
    expect(
      curveCrosses.compute({ ...given, level: 3, curve: filter('LR4', 'low'), direction: 'upwards' }, level),
    ).toBeInstanceOf(Problem);
  });
});

describe('tables', () => {
  const table = { quantity: 'level', title: 'Measured' } as const;
  test('a curve straight in log f comes back, in any order and with gaps', () => {
    const curve = curveRead.compute(
      {
        ...table,
        frequencies: column(4000, null, 100, 1000),
        values: column(90 - Math.log2(40), null, 90, 90 - Math.log2(10)),
      },
      level,
    ) as Curve;
    expect([curve.from, curve.to]).toEqual([100, 4000]);
    const values = curveColumn.compute({ curve, frequencies: column(200, 320) }, level) as readonly number[];
    expect(values[0]).toBeCloseTo(89, 9);
    expect(values[1]).toBeCloseTo(90 - Math.log2(3.2), 9);
    expect(curveColumn.compute({ curve, frequencies: column(50) }, level)).toBeInstanceOf(Problem);
  });
  test.each([
    ['a text', column(100, 'x'), column(1, 2), 'Row 2'],
    ['a missing value', column(100, 200), column(1, null), 'Row 2'],
    ['a frequency twice', column(100, 100), column(1, 2), 'twice'],
    ['nothing', column(null), column(null), 'empty'],
  ])('%s is refused', (_, left, right, words) => {
    const problem = curveRead.compute({ ...table, frequencies: left, values: right }, level);
    expect((problem as Problem).message.join('')).toContain(words);
  });
  test('whatever stands in the cells, there is a curve of numbers or a problem', () => {
    const cell = fc.oneof(fc.double(), fc.string(), fc.constant(null));
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 6 }), fc.array(cell, { maxLength: 6 }), (left, right) => {
        const made = curveRead.compute({ ...table, frequencies: column(...left), values: column(...right) }, level);
        expect(made instanceof Problem || made.y.every(Number.isFinite)).toBe(true);
      }),
    );
  });
});
