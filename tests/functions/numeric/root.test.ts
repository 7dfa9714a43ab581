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

test('no root where the sign does not change, or is no number', () => {
  expect(bracketedRoot((x) => x ** 2 + 1, -1, 1)).toBeUndefined();
  expect(bracketedRoot(() => NaN, -1, 1)).toBeUndefined();
});

test('the top of a hump, inside or at an end', () => {
  expect(largestBetween(Math.sin, 1, 2)).toBeCloseTo(Math.PI / 2, 5);
  expect(largestBetween((x) => x, 1, 2)).toBe(2);
});
