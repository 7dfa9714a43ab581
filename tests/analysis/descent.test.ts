import direct from 'ml-direct';
import { expect, test } from 'vitest';
import { awaited } from '../../src/analysis/optimise/awaited.ts';
import { descended } from '../../src/analysis/optimise/descent.ts';

type Cost = (place: readonly number[]) => number;

/** Costs over the unit square such as verdicts make of a sheet, each with its lowest value: a corner that a jump cuts off, a
 *  kink, a flat with a step, a bowl beyond the border, nothing but a flat. */
const costs: readonly (readonly [string, Cost, number])[] = [
  ['an edge beyond which it jumps', ([x = 0, y = 0]) => (2 * x + y < 1 ? 1e6 : 0) + x + y, 0.5],
  ['a kink', ([x = 0, y = 0]) => Math.max(Math.abs(x - 0.3), 3 * Math.abs(y - 0.8)), 0],
  ['a flat with a step', ([x = 0]) => Math.floor(4 * x), 0],
  ['a bowl beyond the border', ([x = 0, y = 0]) => (x + 0.2) ** 2 + (y - 1.1) ** 2, 0.05],
  ['nothing but a flat', () => 7, 7],
];

test.each(costs)('%s: ends at the lowest from one of the best of a coarse grid', async (_, cost, lowest) => {
  const starts = Array.from({ length: 36 }, (__, id) => [(id % 6) / 5, Math.floor(id / 6) / 5])
    .toSorted((a, b) => cost(a) - cost(b))
    .slice(0, 4);
  const ends = await Promise.all(starts.map((start) => descended(cost, start)));
  for (const [index, end] of ends.entries()) {
    expect(cost(end)).toBeLessThanOrEqual(cost(starts[index] ?? []));
    for (const share of end) expect(Math.abs(share - 0.5)).toBeLessThanOrEqual(0.5);
  }
  const found = Math.min(...ends.map(cost));
  expect(found).toBeGreaterThanOrEqual(lowest);
  expect(found - lowest).toBeLessThan(1e-3);
});

test('a cost that has to be waited for leads to the same place, and each place is asked once', async () => {
  const cost: Cost = ([x = 0, y = 0]) => 100 * (y - x ** 2) ** 2 + (1 - x) ** 2;
  const asked: string[] = [];
  const slow = async (place: readonly number[]): Promise<number> => {
    await Promise.resolve();
    asked.push(place.join(' '));
    return cost(place);
  };
  const quick: string[] = [];
  const atOnce = await descended(
    (place) => {
      quick.push(place.join(' '));
      return cost(place);
    },
    [0.1, 0.9],
  );
  expect(await descended(slow, [0.1, 0.9])).toEqual(atOnce);
  expect(asked).toEqual(quick);
});

test('a calculation of a library that is left and begun anew gives what it gives at once', async () => {
  // Dividing rectangles asks for many places in each of its rounds.
  const cost = (place: Float64Array | number[]): number => ((place[0] ?? 0) - 0.3) ** 2 + (place[1] ?? 0);
  const calculate = (of: (place: Float64Array) => number): number =>
    direct((place: number[]) => of(Float64Array.from(place)), [0, 0], [1, 1], { iterations: 6 }).minFunctionValue;
  const slow = (place: Float64Array): number | Promise<number> =>
    (place[0] ?? 0) > 0.5 ? Promise.resolve(cost(place)) : cost(place);
  expect(await awaited<Float64Array, number, number>(slow, calculate)).toBe(calculate(cost));
  await expect(awaited(() => Promise.reject(new Error('no answer')), calculate)).rejects.toThrow('no answer');
});
