import fc from 'fast-check';
import { expect, test } from 'vitest';
import { percentile, percentiles } from '../../../functions/numeric/percentile.ts';

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

const plainZero = (value: number | undefined): number | undefined => (value === 0 ? 0 : value);

test('agrees with the definition on the sample put in order, whatever the sample', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.oneof(
          fc.double({ noNaN: true, min: -1e6, max: 1e6 }),
          fc.integer({ min: 0, max: 3 }),
          fc.constant(Number.NaN),
        ),
      ),
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 4 }),
      (sample, shares) => {
        const sorted = sample.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
        const wanted = shares.map((share) => {
          const place = share * (sorted.length - 1);
          const [below, above] = [sorted[Math.floor(place)], sorted[Math.ceil(place)]];
          return below === undefined || above === undefined
            ? undefined
            : below + (above - below) * (place - Math.floor(place));
        });
        expect(percentiles(Float64Array.from(sample), shares).map(plainZero)).toEqual(wanted.map(plainZero));
      },
    ),
  );
});
