import fc from 'fast-check';
import { expect, test } from 'vitest';
import { largestBetween } from '../../../functions/numeric/largest.ts';
import { bracketedRoot } from '../../../functions/numeric/root.ts';

test('cube roots to the last digits', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (x) => {
      expect(bracketedRoot((y) => y ** 3 - x, 0, 1000)! / Math.cbrt(x)).toBeCloseTo(1, 12);
    }),
  );
});

test('a few steps where the function is smooth, and never many more than halving takes', () => {
  const steps = (value: (x: number) => number, from: number, to: number): number => {
    let count = 0;
    bracketedRoot((x) => ((count += 1), value(x)), from, to);
    return count;
  };
  expect(steps((x) => Math.cos(x) - x, 0, 1)).toBeLessThanOrEqual(10);
  expect(steps((x) => x ** 9 - 1e-6, 0, 10)).toBeLessThanOrEqual(110);
  expect(steps((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBeLessThanOrEqual(110);
});

test('the place of a jump, also where one side is infinite', () => {
  expect(bracketedRoot((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBeCloseTo(0.3, 15);
  expect(bracketedRoot((x) => (x < 0.3 ? x - 0.2 : Infinity), 0, 1)).toBeCloseTo(0.2, 15);
});

test('no root where the sign does not change, or is no number', () => {
  expect(bracketedRoot((x) => x ** 2 + 1, -1, 1)).toBeUndefined();
  expect(bracketedRoot(() => NaN, -1, 1)).toBeUndefined();
});

test('the top of a hump, inside or at an end', () => {
  expect(largestBetween(Math.sin, 1, 2)).toBeCloseTo(Math.PI / 2, 5);
  expect(largestBetween((x) => x, 1, 2)).toBe(2);
});
