import { describe, expect, test } from 'vitest';
import { resistorLoad } from '../../../functions/crossover/load-resistor.ts';
import { percentile } from '../../../functions/numeric/percentile.ts';
import { spreadNetwork } from '../../../functions/spread/spread-network.ts';
import type { Network } from '../../../functions/values/network.ts';
import type { Sample } from '../../../functions/values/sample.ts';

const eight = resistorLoad(8);
const capacitor: Network = {
  kind: 'network',
  name: 'capacitor',
  legs: [{ place: 'series', form: 'chain', capacitance: 1e-5 }],
};
const corner = 1 / (2 * Math.PI * 8 * 1e-5);
const given = { load: eight, frequency: corner, coils: 0.1, capacitors: 0.1, resistors: 0.1, runs: 20_000, seed: 5 };
const values = (of: Partial<typeof given> & { network: Network }): Float64Array =>
  (spreadNetwork.compute({ ...given, ...of }, { quantity: 'ratio' }) as Sample).values;

describe('a capacitor before a resistor', () => {
  // The level rises with the capacitor, so that its quantiles are those of an even spread, in closed form.
  test.each([0.1, 0.5, 0.9])('quantile %d is that of an even spread', (share) => {
    const level = (of: number): number => -10 * Math.log10(1 + (1 + 0.1 * (2 * of - 1)) ** -2);
    const fourErrors = 4 * Math.sqrt((share * (1 - share)) / 20_000);
    const found = percentile(values({ network: capacitor }), share)!;
    expect(found).toBeGreaterThan(level(share - fourErrors));
    expect(found).toBeLessThan(level(share + fourErrors));
  });
  test('never leaves the tolerance, and coils and resistors that are not there do nothing', () => {
    const some = values({ network: capacitor });
    const ends = [-0.1, 0.1].map((off) => -10 * Math.log10(1 + (1 + off) ** -2));
    expect(Math.min(...some)).toBeGreaterThanOrEqual(ends[0]!);
    expect(Math.max(...some)).toBeLessThanOrEqual(ends[1]!);
    expect(values({ network: capacitor, coils: 0, resistors: 0 })).toEqual(some);
  });
});

test('small tolerances add as squares: the spread of a pad is that of its two resistors', () => {
  const pad: Network = {
    kind: 'network',
    name: 'pad',
    legs: [
      { place: 'series', form: 'chain', resistance: 4 },
      { place: 'shunt', form: 'chain', resistance: 8 },
    ],
  };
  // 4 Ω before 8 ∥ 8 = 4 Ω: d ln U = −½·d ln Rs + ½·½·d ln Rp; an even spread of ±1 % has a standard deviation of 1 %/√3.
  const expected = ((20 / Math.LN10) * 0.01 * Math.hypot(0.5, 0.25)) / Math.sqrt(3);
  const some = values({ network: pad, resistors: 0.01 });
  const mean = some.reduce((sum, each) => sum + each, 0) / some.length;
  const spread = Math.sqrt(some.reduce((sum, each) => sum + (each - mean) ** 2, 0) / some.length);
  expect(Math.abs(spread / expected - 1)).toBeLessThan(0.02);
});

test('the same seed gives the same, another seed others', () => {
  const [once, again, other] = [5, 5, 6].map((seed) => values({ network: capacitor, seed, runs: 50 }));
  expect(again).toEqual(once);
  expect(other).not.toEqual(once);
});
