import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Window } from '../../../functions/values/window.ts';
import { call, curve, number, refusal, spoken, verdict } from '../radiation/call.ts';
import { way } from '../radiation/ways.ts';

const row = (...cells: readonly (number | string | null)[]) => [cells];
const column = (...cells: readonly (number | string | null)[]) => cells.map((cell) => [cell]);
const windowOf = (low: number, high: number): Window =>
  call('PAIR.WINDOW', {
    floorNames: column('resonance'),
    floors: column(low),
    stretchedFloors: column(low * 0.75),
    ceilingNames: column('narrowing'),
    ceilings: column(high),
    stretchedCeilings: column(high * 1.37),
  }) as Window;

describe('a whole team', () => {
  // A woofer of 220 mm, a midrange and a dome: low hand-over from 208 Hz (chamber), upper window 1700 to 2984 Hz,
  // 85.8 dB after 4 dB of make-up, pads of 3.7 and 4.1 dB; worked in two models outside.
  const threeWay = {
    handovers: row(260, 2250),
    levels: row(85.8, 89.5, 89.9),
    windows: [windowOf(208, 900), windowOf(1700, 2984)],
  };
  test('of three ways holds', () => {
    const found = verdict('TEAM.VERDICT', threeWay);
    expect(found.status).toBe('good');
    expect(spoken(found.reason)).toContain('three-way');
  });
  test.each([
    ['a hand-over outside its window', { handovers: row(260, 3400) }, 'caution', 'Drivers 2 and 3'],
    ['a hand-over far outside', { handovers: row(260, 6000) }, 'fail', 'narrowing'],
    ['a midrange quieter than the woofer', { levels: row(90, 88, 93) }, 'fail', 'Driver 2'],
    ['a narrow band', { handovers: row(800, 2250) }, 'caution', 'fewer ways'],
    ['a large pad', { levels: row(82, 86, 94) }, 'caution', 'Driver 3'],
    ['no shared window', { windows: [windowOf(208, 900), windowOf(4000, 1500)] }, 'fail', 'Drivers 2 and 3'],
  ] as const)('%s is told', (_, change, status, words) => {
    const found = verdict('TEAM.VERDICT', { ...threeWay, ...change });
    expect(found.status).toBe(status);
    expect(spoken(found.reason)).toContain(words);
  });
  test('thresholds can be bent', () => {
    expect(verdict('TEAM.VERDICT', { ...threeWay, handovers: row(600, 2250), band: 1.5 }).status).toBe('good');
  });
  test('of two and of four ways', () => {
    const two = { handovers: row(1800), levels: row(84.7, 90), windows: [windowOf(1080, 1923)] };
    expect(spoken(verdict('TEAM.VERDICT', two).reason)).toContain('two-way');
    const four = {
      handovers: row(90, 500, 4000),
      levels: row(84, 85, 86, 90),
      windows: [windowOf(60, 200), windowOf(300, 900), windowOf(2000, 6000)],
      band: 2,
    };
    expect(spoken(verdict('TEAM.VERDICT', four).reason)).toContain('four-way');
  });
  test.each([
    ['too few windows', { windows: [windowOf(208, 900)] }, 'one less of each other'],
    ['a cell without a number', { levels: row(85, null, 90) }, 'Cell 2 of the levels'],
    ['hand-overs out of order', { handovers: row(2250, 260) }, 'from low to high'],
  ] as const)('%s is refused by name', (_, change, words) => {
    expect(refusal('TEAM.VERDICT', { ...threeWay, ...change })).toContain(words);
  });
});

describe('mains and subs', () => {
  const given = { handover: 85, mainsF3: 87, travel: 2.9e-3, xmax: 4.5e-3, count: 2, volts: 28, amplifier: 40 };
  test.each([
    ['as it is', {}, 'good', 'All 4'],
    ['mains that sag', { mainsF3: 100 }, 'caution', 'sag already'],
    ['too much travel', { travel: 4.6e-3 }, 'fail', 'runs out of travel'],
    ['many subs', { count: 5 }, 'caution', 'more than'],
    ['an amplifier too small', { amplifier: 20 }, 'fail', 'larger amplifier'],
  ] as const)('%s', (_, change, status, words) => {
    const found = verdict('TEAM.MAINS_VERDICT', { ...given, ...change });
    expect(found.status).toBe(status);
    expect(spoken(found.reason)).toContain(words);
  });
  // A long-throw driver in 35 L gives 101.7 dB at 30 Hz, so that 106 dB needs two; worked in two models outside.
  test('106 dB from subs of 101.7 dB needs two', () => {
    expect(number('SUBS.COUNT', { one: 101.7, target: 106 })).toBe(2);
    expect(number('SUBS.COUNT', { one: 101.7, target: 101.7 })).toBe(1);
    expect(number('SUBS.COUNT', { one: 101.7, target: 106, lift: 4.3 })).toBe(1);
  });
  test('doubling is 6 dB for equal volts, 3 dB for shared watts, as one sum of equal pressures is', () => {
    expect(number('SUBS.LEVEL', { one: 100, count: 2 })).toBeCloseTo(100 + 20 * Math.log10(2), 12);
    expect(number('SUBS.LEVEL', { one: 100, count: 2, drive: 'same watts' })).toBeCloseTo(100 + 10 * Math.log10(2), 12);
    const subs = [way({ pressure: { ...way().pressure } }), way(), way()];
    const one = curve('AROUND.AXIS', { ways: [subs[0]] }).y[50]!;
    expect(number('SUBS.LEVEL', { one, count: 3 })).toBeCloseTo(curve('AROUND.AXIS', { ways: subs }).y[50]!, 9);
  });
  test('the number found reaches the level, one less does not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 110, noNaN: true }),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        (one, more) => {
          const count = number('SUBS.COUNT', { one, target: one + more });
          expect(number('SUBS.LEVEL', { one, count })).toBeGreaterThanOrEqual(one + more - 1e-6);
          if (count > 1) expect(number('SUBS.LEVEL', { one, count: count - 1 })).toBeLessThan(one + more);
        },
      ),
    );
  });
  test('half the travel is 6 dB more', () => {
    const travel = (value: number) => ({ ...way().pressure, quantity: 'travel', y: way().pressure.y.map(() => value) });
    expect(number('SUBS.RELIEF', { before: travel(4e-3), after: travel(2e-3) })).toBeCloseTo(6.0206, 4);
    expect(refusal('SUBS.RELIEF', { before: way().pressure, after: travel(1) })).toContain('BOX.TRAVEL');
    expect(refusal('SUBS.RELIEF', { before: travel(0), after: travel(0) })).toContain('no travel');
  });
});

describe('ranking by regret', () => {
  // Worked by hand: behind the best by (1.2, 0.5, 0) and (0, 0.4, 1.1), in steps of a half (2.4, 1, 0) and (0, 0.8, 2.2).
  const given = {
    candidates: column('M-1', 'M-2', 'M-3'),
    steps: row(0.5, 0.5),
    values: [
      [0.2, 1.2],
      [0.9, 0.8],
      [1.4, 0.1],
    ],
  };
  const regrets = (change = {}): readonly number[] => {
    const found = call('RANK.REGRET', { ...given, ...change });
    if (found instanceof Problem) throw new Error(spoken(found.message));
    return found as readonly number[];
  };
  test('each is behind by its worst column', () => {
    for (const [index, wanted] of [2.4, 1, 2.2].entries()) expect(regrets()[index]).toBeCloseTo(wanted, 12);
    expect(call('RANK.BEST', given)).toBe('M-2');
    const { rows } = call('RANK.TABLE', given) as TableRecord;
    expect(rows.map(([place, name, , by]) => [place, name, by])).toEqual([
      [1, 'M-2', 1],
      [2, 'M-3', 2],
      [3, 'M-1', 1],
    ]);
  });
  test('less can be better', () => {
    expect(call('RANK.BEST', { ...given, steps: row(-0.5, -5) })).toBe('M-1');
  });
  test('a shift of a whole column and a common scale of values and steps change nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (shift, scale) => {
          const values = given.values.map(([a, b]) => [(a! + shift) * scale, b!]);
          const moved = regrets({ values, steps: row(0.5 * scale, 0.5) });
          for (const [index, regret] of regrets().entries()) expect(moved[index]).toBeCloseTo(regret, 9);
        },
      ),
    );
  });
  test('a candidate best everywhere has no regret, and no regret is negative', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0, max: 9, noNaN: true }), fc.double({ min: 0, max: 9, noNaN: true })), {
          minLength: 1,
          maxLength: 30,
        }),
        (values) => {
          const all = [...values, [10, 10]];
          const found = regrets({ values: all, candidates: all.map(() => [null]) });
          expect(found.every((regret) => regret >= 0)).toBe(true);
          expect(found.at(-1)).toBe(0);
        },
      ),
    );
  });
  test.each([
    ['rows missing', { values: [[1, 2]] }, '1 rows of values for 3'],
    ['a step missing', { steps: row(0.5) }, 'one step for each'],
    ['a step of 0', { steps: row(0.5, 0) }, 'Step 2'],
    [
      'a cell without a number',
      {
        values: [
          [1, 2],
          [1, null],
          [1, 2],
        ],
      },
      'M-2 has no number in column 2',
    ],
  ] as const)('%s is refused by name', (_, change, words) => {
    for (const name of ['RANK.REGRET', 'RANK.BEST', 'RANK.TABLE'])
      expect(refusal(name, { ...given, ...change })).toContain(words);
  });
});
