import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closedBox } from '../../../functions/enclosure/closed.ts';
import { normalNumbers } from '../../../functions/numeric/random.ts';
import { percentile } from '../../../functions/numeric/percentile.ts';
import { drifted, nominal } from '../../../functions/spread/causes.ts';
import { spreadOdds } from '../../../functions/spread/read.ts';
import {
  spreadCauses,
  spreadFall,
  spreadLevel,
  spreadQtc,
  spreadResonance,
} from '../../../functions/spread/spread-box.ts';
import type { Box } from '../../../functions/values/box.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Sample } from '../../../functions/values/sample.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { references, agrees } from '../../references/read.ts';

const context = { quantity: 'ratio' } as const;
const woofer: Driver = {
  kind: 'driver',
  name: 'W-165 A',
  fs: 38,
  qms: 4.8,
  qes: 0.42,
  qts: 0.3862,
  vas: 0.02852,
  re: 5.8,
  sd: 0.0132,
  mms: 0.0152,
  cms: 0.00115,
  bl: 7.08,
  derived: [],
  doubts: [],
};
const closed = (driver: Driver, volume = 0.0121): Box =>
  closedBox.compute(
    { driver, volume, seriesResistance: 0, fill: 1, leakageQ: undefined, absorptionQ: undefined },
    context,
  ) as Box;
const box = closed(woofer);
const none = { cms: 0, bl: 0, mms: 0, re: 0, volume: 0, runs: 4000, seed: 7 };
const asSample = (result: unknown): Sample => {
  if (result instanceof Problem) throw new Error('a sample was wanted');
  return result as Sample;
};

describe('random numbers', () => {
  test('are normal: mean, spread, and the shares within one and two sigma', () => {
    const next = normalNumbers(3);
    const values = Float64Array.from({ length: 40_000 }, next);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
    // Four standard errors of 40,000 draws.
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(variance - 1)).toBeLessThan(0.03);
    // Shares of the normal distribution: 68.27 % and 95.45 %.
    const within = (sigma: number): number => values.filter((value) => Math.abs(value) < sigma).length / values.length;
    expect(within(1)).toBeCloseTo(0.6827, 2);
    expect(within(2)).toBeCloseTo(0.9545, 2);
  });

  test('the same seed gives the same, another seed others', () => {
    const ten = (seed: number): number[] => Array.from({ length: 10 }, normalNumbers(seed));
    expect(ten(5)).toEqual(ten(5));
    expect(ten(5)).not.toEqual(ten(6));
  });
});

describe('causes', () => {
  // A suspension softer by a fifth, derived from first principles with a numeric library, mechanical losses left out.
  test.each([
    ['soft20-', 'qtc'],
    ['soft20fc-', 'resonance'],
  ])('a softer suspension moves Q and resonance in a box together: %s', (id, field) => {
    const [reference] = references('tolerance', id);
    const { Qts, fs, Vas, Vb } = reference!.inputs;
    const lossless: Driver = {
      ...woofer,
      fs: fs!.value as number,
      qms: 1e9,
      qes: Qts!.value as number,
      vas: Vas!.value as number,
    };
    // The reference takes the compliance a fifth larger.
    const softer = closed(drifted(lossless, { ...nominal, cms: 1.2 }), Vb!.value as number);
    const result = field === 'qtc' ? spreadQtc : spreadResonance;
    const { values } = asSample(result.compute({ ...none, runs: 10, box: softer }, context));
    agrees(values[0], reference!);
  });

  test('the stored parameters stay consistent with one another', () => {
    fc.assert(
      fc.property(
        fc.record({
          cms: fc.double({ min: 0.5, max: 2, noNaN: true }),
          bl: fc.double({ min: 0.5, max: 2, noNaN: true }),
          mms: fc.double({ min: 0.5, max: 2, noNaN: true }),
          re: fc.double({ min: 0.5, max: 2, noNaN: true }),
        }),
        (causes) => {
          const before = drifted(woofer, nominal);
          const after = drifted(woofer, causes);
          const fs = (driver: Driver): number => 1 / (2 * Math.PI * Math.sqrt(driver.mms! * driver.cms!));
          const qes = (driver: Driver): number =>
            (2 * Math.PI * driver.fs! * driver.mms! * driver.re!) / driver.bl! ** 2;
          // Relations of the trade (Small 1972) hold before to the rounding of the sheet; their ratio must not change.
          expect(fs(after) / after.fs!).toBeCloseTo(fs(before) / before.fs!, 9);
          expect(qes(after) / after.qes!).toBeCloseTo(qes(before) / before.qes!, 9);
          expect(after.vas! / after.cms!).toBeCloseTo(before.vas! / before.cms!, 9);
        },
      ),
    );
  });

  test('a fifth stiffer: Fs 38 to 42.5 Hz, Vas 28.5 to 22.8 L, Qts 0.386 to 0.432, worked by hand', () => {
    const stiffer = drifted(woofer, { ...nominal, cms: 0.8 });
    expect(stiffer.fs).toBeCloseTo(38 / Math.sqrt(0.8), 9);
    expect(stiffer.vas).toBeCloseTo(0.02852 * 0.8, 12);
    expect(stiffer.qts).toBeCloseTo(0.4318, 3);
  });
});

describe('samples', () => {
  test('small spreads agree with linear error propagation', () => {
    // ln fc with fs fixed causes: fc² ∝ (1/Cms + ρc²Sd²/Vb)/Mms, so d ln fc = −½ d ln Mms − ½/(1 + α) d ln Cms − ½ α/(1 + α) d ln Vb.
    const alpha = woofer.vas! / box.volume;
    const sigma = { cms: 0.01, mms: 0.02, volume: 0.015 };
    const expected = Math.hypot(sigma.mms / 2, sigma.cms / 2 / (1 + alpha), ((sigma.volume / 2) * alpha) / (1 + alpha));
    const { values } = asSample(spreadResonance.compute({ ...none, ...sigma, box }, context));
    const logs = values.map(Math.log);
    const mean = logs.reduce((sum, value) => sum + value, 0) / logs.length;
    const spread = Math.sqrt(logs.reduce((sum, value) => sum + (value - mean) ** 2, 0) / logs.length);
    // Four standard errors of a standard deviation of 4000 draws: 4/√8000 = 4.5 %.
    expect(Math.abs(spread / expected - 1)).toBeLessThan(0.045);
  });

  test('the ranking of causes is that of the closed form, and the shares add to one', () => {
    const table = spreadCauses.compute(
      { box, result: 'resonance', cms: 0.1, bl: 0.1, mms: 0.02, re: 0.1, volume: 0.01 },
      context,
    ) as TableRecord;
    const alpha = woofer.vas! / box.volume;
    const share = (name: string): number => table.rows.find((row) => row[0] === name)![2] as number;
    const squares = [0.02 / 2, 0.1 / 2 / (1 + alpha), ((0.01 / 2) * alpha) / (1 + alpha)].map((effect) => effect ** 2);
    const all = squares.reduce((sum, square) => sum + square, 0);
    expect(share('Moving mass Mms')).toBeCloseTo(squares[0]! / all, 4);
    expect(share('Compliance Cms')).toBeCloseTo(squares[1]! / all, 4);
    expect(share('Force factor Bl')).toBeCloseTo(0, 9);
    expect(table.rows.reduce((sum, row) => sum + (row[2] as number), 0)).toBeCloseTo(1, 9);
  });

  test('without spread every run is the planned box; the same seed repeats; level ignores the suspension', () => {
    const still = asSample(spreadFall.compute({ ...none, runs: 20, box, fall: 3 }, context));
    expect(percentile(still.values, 0)).toBe(percentile(still.values, 1));
    const once = asSample(spreadFall.compute({ ...none, runs: 50, cms: 0.1, box, fall: 3 }, context));
    const again = asSample(spreadFall.compute({ ...none, runs: 50, cms: 0.1, box, fall: 3 }, context));
    expect(once.values).toEqual(again.values);
    const level = asSample(spreadLevel.compute({ ...none, runs: 50, cms: 0.2, box }, context));
    expect(percentile(level.values, 1)! - percentile(level.values, 0)!).toBeLessThan(1e-9);
  });

  test('odds within limits and outside them add to one; limits of another kind are refused', () => {
    const sample = asSample(spreadResonance.compute({ ...none, cms: 0.1, mms: 0.05, box }, context));
    const hertz = { quantity: 'frequency' } as const;
    const inside = spreadOdds.compute({ sample, from: 68, to: 71 }, hertz) as number;
    const below = spreadOdds.compute({ sample, from: undefined, to: 68 }, hertz) as number;
    const above = spreadOdds.compute({ sample, from: 71, to: undefined }, hertz) as number;
    expect(inside).toBeGreaterThan(0.2);
    expect(inside + below + above).toBeCloseTo(1, 9);
    expect(spreadOdds.compute({ sample, from: 71, to: 68 }, hertz)).toBeInstanceOf(Problem);
    expect(spreadOdds.compute({ sample, from: 1, to: 2 }, { quantity: 'volume' })).toBeInstanceOf(Problem);
  });
});
