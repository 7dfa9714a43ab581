import { expect, test } from 'vitest';
import { percentile } from '../../../functions/numeric/percentile.ts';

// Worked by hand from definition 7 in Hyndman and Fan, "Sample quantiles in statistical packages", The American
// Statistician 50 (1996): for n ordered values the share p lies at 1 + (n − 1)p.
test.each([
  [0.25, 3.25],
  [0.5, 5.5],
  [0.95, 9.55],
  [0, 1],
  [1, 10],
])('share %d of 1 to 10 lies at %d, in any order', (share, expected) => {
  expect(percentile(Float64Array.of(7, 1, 10, 3, 2, 9, 4, 8, 5, 6), share)).toBeCloseTo(expected, 12);
});

test('what is not a number does not count, and nothing has no percentile', () => {
  expect(percentile(Float64Array.of(2, Number.NaN, 4), 0.5)).toBe(3);
  expect(percentile(Float64Array.of(Number.NaN), 0.5)).toBeUndefined();
});
