import fc from 'fast-check';
import { expect, test } from 'vitest';
import { preferred, seriesNames } from '../../../functions/electrical/preferred.ts';
import { standardPairs, standardTolerance } from '../../../functions/electrical/standard.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { agrees, input, references } from '../../references/read.ts';

const ohms = { quantity: 'resistance' } as const;
const farads = { quantity: 'capacitance' } as const;
const plain = { quantity: 'ratio' } as const;
const rows = (table: unknown): readonly (readonly number[])[] => (table as TableRecord).rows as never;
const parallel = { wiring: 'parallel', series: 'E12', count: 5, part: 'resistor' } as const;

test.each(references('e-series', 'pair-'))('$id', (each) => {
  agrees(rows(standardPairs.compute({ ...parallel, value: input(each, 'x') }, ohms))[0]![2], each);
});
test('what stands in the table adds up, and is nearest first', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.constantFrom('parallel' as const, 'series' as const),
      fc.constantFrom('resistor' as const, 'coil' as const, 'capacitor' as const),
      fc.constantFrom('E6' as const, 'E12' as const, 'E24' as const),
      (value, wiring, part, series) => {
        const found = rows(standardPairs.compute({ value, wiring, part, series, count: 8 }, plain));
        const adds = (wiring === 'series') !== (part === 'capacitor');
        let before = 0;
        for (const [a, b, together, off] of found) {
          expect(together! / (adds ? a! + b! : (a! * b!) / (a! + b!))).toBeCloseTo(1, 9);
          expect(off).toBeCloseTo(together! / value - 1, 9);
          const distance = Math.abs(Math.log1p(off!));
          expect(distance).toBeGreaterThanOrEqual(before - 1e-12);
          before = distance;
        }
      },
    ),
  );
});
test('a value with its unit says itself what it is of', () => {
  // 2.7 and 4.7 µF side by side are 7.4 µF; in a row they are 1.71 µF.
  for (const part of ['resistor', 'capacitor'] as const) {
    const [first] = rows(standardPairs.compute({ ...parallel, part, value: 7.4e-6 }, farads));
    expect(first![0]! + first![1]!).toBeCloseTo(7.4e-6, 12);
    expect(first![4]).toBe('2.7 µF and 4.7 µF');
  }
  const [series] = rows(standardPairs.compute({ ...parallel, wiring: 'series', part: 'capacitor', value: 7.4 }, ohms));
  expect(series![0]! + series![1]!).toBeCloseTo(7.4, 9);
});
test('no pair is nearer: searched one by one through seven decades', () => {
  const all = [-3, -2, -1, 0, 1, 2, 3].flatMap((power) => preferred.E12.map((each) => each * 10 ** power));
  fc.assert(
    fc.property(fc.double({ min: 1, max: 9.99, noNaN: true }), (value) => {
      const [, , together] = rows(standardPairs.compute({ ...parallel, value }, ohms))[0]!;
      const off = (sum: number): number => Math.abs(Math.log(sum / value));
      const least = Math.min(...all.flatMap((a) => all.map((b) => off((a * b) / (a + b)))));
      expect(off(together!)).toBeLessThanOrEqual(least + 1e-9);
    }),
    { numRuns: 50 },
  );
});
test('neighbours of a series lie about twice its tolerance apart', () => {
  for (const series of seriesNames) {
    const tolerance = standardTolerance.compute({ series }, ohms) as number;
    const [few] = preferred[series];
    const step = 10 ** (1 / preferred[series].length);
    expect(few).toBe(1);
    expect(step - 1).toBeGreaterThan(1.9 * tolerance);
    expect(step - 1).toBeLessThan(3 * tolerance);
  }
});
// IEC 60063, E192 (from memory): the one member that is not the rounded power of ten is 9.20.
test('E192 holds E96, and 9.20 for 9.19', () => {
  expect(preferred.E192.filter((_, index) => index % 2 === 0)).toEqual(preferred.E96);
  expect(preferred.E192).toHaveLength(192);
  expect(preferred.E192).toContain(9.2);
  expect(preferred.E192).not.toContain(9.19);
});
