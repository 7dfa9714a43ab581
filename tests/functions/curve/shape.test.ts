import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  curveDivide,
  curveJoin,
  curveMean,
  curvePhase,
  curveScale,
  curveSmooth,
  curveTable,
} from '../../../functions/curve/shape.ts';
import { catalogue } from '../../../functions/index.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';

const plain = { quantity: 'ratio' } as const;
const levels = (y: (octaves: number) => number, from = 10, to = 40960): Curve => ({
  kind: 'curve',
  title: 'Level',
  quantity: 'level',
  y: frequencies.map((f) => y(Math.log2(f / 1000))),
  from,
  to,
});

test('every function that gives a curve says what the curve shows', () => {
  const silent = catalogue.filter(({ returns }) => 'record' in returns && returns.record === 'curve' && !returns.of);
  expect(silent.map((each) => each.name)).toEqual([]);
});
test('smoothing leaves straight ohms alone and keeps the mean power of a comb', () => {
  const ohms: Curve = { ...levels((x) => 8 + x), quantity: 'resistance' };
  const same = curveSmooth.compute({ curve: ohms, width: 1 / 3 }, plain) as Curve;
  same.y.forEach((value, index) => expect(value).toBeCloseTo(ohms.y[index]!, 9));
  // A comb of one period in each third of an octave has the mean of its power everywhere.
  const comb = levels((x) => 10 * Math.log10(1 + 0.9 * Math.cos(2 * Math.PI * 3 * x)));
  const flat = curveSmooth.compute({ curve: comb, width: 1 / 3 }, plain) as Curve;
  for (let index = 20; index < 550; index += 1) expect(flat.y[index]).toBeCloseTo(0, 6);
});
test('a smoothed curve stays between its lowest and highest value', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -60, max: 120, noNaN: true }), { minLength: 577, maxLength: 577 }),
      fc.double({ min: 0.001, max: 4, noNaN: true }),
      (values, width) => {
        const curve = { ...levels(() => 0), y: Float64Array.from(values) };
        const { y } = curveSmooth.compute({ curve, width }, plain) as Curve;
        expect(Math.max(...y)).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        expect(Math.min(...y)).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
      },
    ),
    { numRuns: 20 },
  );
});
test('a ratio times its divisor is the whole; levels are not divided', () => {
  const a: Curve = { ...levels((x) => 20 + x), quantity: 'resistance' };
  const b: Curve = { ...levels((x) => 30 - x), quantity: 'resistance' };
  const ratio = curveDivide.compute({ a, b }, plain) as Curve;
  expect(ratio.quantity).toBe('ratio');
  ratio.y.forEach((value, index) => expect(value * b.y[index]!).toBeCloseTo(a.y[index]!, 9));
  expect(curveDivide.compute({ a: levels(() => 1), b: levels(() => 2) }, plain)).toBeInstanceOf(Problem);
  expect(curveDivide.compute({ a, b: levels(() => 2) }, plain)).toBeInstanceOf(Problem);
  expect((curveScale.compute({ curve: a, factor: 3 }, plain) as Curve).y[9]).toBeCloseTo(3 * a.y[9]!, 9);
});
test('the mean of a line is its middle', () => {
  const given = { curve: levels((x) => 6 * x), from: 500, to: 2000 };
  expect(curveMean.compute(given, plain)).toBeCloseTo(0, 9);
  expect(curveMean.compute({ ...given, from: 1000, to: 4000 }, plain)).toBeCloseTo(6, 9);
});
test('a curve cut in two and joined again is whole', () => {
  const whole = levels((x) => 90 + Math.sin(3 * x));
  const low = { ...whole, y: whole.y.map((value) => value + 31), to: 1500 };
  const high = { ...whole, from: 150 };
  const given = { low, high, frequency: 300, width: 0.5, match: true };
  const joined = curveJoin.compute(given, plain) as Curve;
  joined.y.forEach((value, index) => expect(value).toBeCloseTo(whole.y[index]!, 9));
  expect([joined.from, joined.to]).toEqual([10, 40960]);
  const apart = curveJoin.compute({ ...given, match: false, width: 0 }, plain) as Curve;
  expect(apart.y[0]! - whole.y[0]!).toBeCloseTo(31, 9);
  expect(curveJoin.compute({ ...given, frequency: 120 }, plain)).toBeInstanceOf(Problem);
  expect(curveJoin.compute({ ...given, frequency: 160 }, plain)).toBeInstanceOf(Problem);
});
test('phase is read across a turn, and asked for where there is none', () => {
  const phase = frequencies.map((f) => {
    const angle = -f * 1e-3;
    return Math.atan2(Math.sin(angle), Math.cos(angle));
  });
  const curve = { ...levels(() => 0), phase };
  fc.assert(
    fc.property(fc.double({ min: 11, max: 20000, noNaN: true }), (frequency) => {
      const read = curvePhase.compute({ curve, frequency }, plain) as number;
      const turns = (read + frequency * 1e-3) / (2 * Math.PI);
      expect(Math.abs(turns - Math.round(turns))).toBeLessThan(1e-3);
    }),
  );
  expect(curvePhase.compute({ curve: levels(() => 0), frequency: 100 }, plain)).toBeInstanceOf(Problem);
});
test('a table has its rows an octave', () => {
  const given = { curve: levels((x) => x), perOctave: 3, from: 125, to: 1000 };
  const { rows } = curveTable.compute(given, plain) as TableRecord;
  expect(rows).toHaveLength(10);
  expect(rows[9]![0]).toBeCloseTo(1000, 9);
  expect(rows[0]![1]).toBeCloseTo(-3, 2);
});
