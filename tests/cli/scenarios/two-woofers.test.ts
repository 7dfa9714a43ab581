import { describe, expect, test } from 'vitest';
import { type Described, calculated, expectNear, percent, inColumn } from './calculated.ts';

describe('two woofers on an amplifier for 4 Ω and more', () => {
  const many = (set: Record<string, string>, ...get: string[]): ReturnType<typeof calculated> =>
    calculated('many-cones', set, ...get);
  const four = inColumn('B', 'W-165 A4');
  const expectOhms = (actual: Described, expected: number): void => expectNear(actual, expected, 0.05);

  test.each([
    ['W-165 A in parallel', inColumn('B', 'W-165 A'), '2', '2', 95.2, 2.91, /^Low load.*41[01] Hz.*music is strong/],
    ['W-165 A in series', inColumn('B', 'W-165 A'), '2', '1', 89.2, 11.65, /^Good/],
    ['W-165 A4 in series', four, '2', '1', 91.9, 6.23, /^Good/],
    ['W-165 A4 in parallel', four, '2', '2', 97.9, 1.56, /^(?!Good|Low load)/],
    ['four W-165 A, pairs in series', inColumn('B', 'W-165 A'), '4', '2', 95.2, 5.83, /^Good/],
  ] as const)('%s', async (_, driver, count, number, level, ohms, word) => {
    const set = { ...driver, Count: count, WiringNumber: number };
    const cell = await many(set, 'GroupLevel', 'LowestOhms', 'LowestAt', 'F47', 'PerWatt');
    expectNear(cell('GroupLevel'), level, 0.2);
    expectOhms(cell('LowestOhms'), ohms);
    expect(cell('F47').text).toMatch(word);
    // For the same watts n units close together gain 10·lg n, in every even wiring.
    expect(cell('PerWatt').value).toBeCloseTo(10 * Math.log10(Number(count)), 6);
  });

  test('the load is lowest near 410 Hz', async () => {
    expectNear((await many({}, 'LowestAt'))('LowestAt'), 410, percent(410));
  });

  test('round a tweeter, and as a two-and-a-half-way', async () => {
    const names = ['SystemLevel', 'Pad', 'PairSpacing', 'PairNull', 'HalfSpacing', 'HalfNull'] as const;
    const degrees = (cell: Described): Described => ({ ...cell, value: (cell.value * 180) / Math.PI });
    const cell = await many({ ...four, WiringNumber: '1', MakeUp: '4.5 dB' }, ...names);
    expectNear(cell('SystemLevel'), 87.4, 0.2);
    expectNear(cell('Pad'), 2.6, 0.2);
    expectNear(cell('PairSpacing'), 0.278, percent(0.278));
    expectNear(degrees(cell('PairNull')), 19, 0.1);
    expectNear(cell('HalfSpacing'), 0.139, percent(0.139));
    expectNear(degrees(cell('HalfNull')), 40.5, 0.1);
    const half = await many({}, 'HalfLevel', 'HalfLowest', 'F79');
    expectNear(half('HalfLevel'), 89.2, 0.2);
    expectOhms(half('HalfLowest'), 2.91);
    expect(half('F79').text).toMatch(/^Low load.*2\.91/);
  });
});
