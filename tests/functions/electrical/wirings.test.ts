import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadVerdict } from '../../../functions/electrical/load-rating.ts';
import { loadWired } from '../../../functions/electrical/load-wired.ts';
import { loadMixed, loadWirings } from '../../../functions/electrical/load-wirings.ts';
import { likeWirings, mixedWirings } from '../../../functions/electrical/wiring-list.ts';
import { readWiring, wiringText, type Wiring } from '../../../functions/electrical/wiring.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { ohmsCurve } from './circuit.ts';
import { plain, band, amplifier, unit, boxed, rowsOf, rowOf, spoken } from './wired.ts';

// Two woofers of 165 mm in 15 litres each on an amplifier of 4 Ω, worked out beforehand for the invented drivers:
// hertz within 2 %, decibels within 0.2, ohms within 0.05.
describe('two woofers on one amplifier', () => {
  const wirings = (id: string, count: number): unknown =>
    loadWirings.compute({ curve: boxed(id), level: unit(id).level!, count, ...band }, plain);
  test.each([
    ['W-165 A', 2, '1 | 2', 95.2, 2.91],
    ['W-165 A', 2, '1+2', 89.2, 11.65],
    ['W-165 A4', 2, '1+2', 91.9, 6.23],
    ['W-165 A4', 2, '1 | 2', 97.9, 1.56],
    ['W-165 A', 4, '1+2 | 3+4', 95.2, 5.83],
  ] as const)('%s, %d of them as %s: %d dB, %d Ω', (id, count, wiring, level, ohms) => {
    const row = rowOf(wirings(id, count), wiring);
    expect(Math.abs((row['Level'] as number) - level)).toBeLessThanOrEqual(0.2);
    expect(Math.abs((row['Lowest'] as number) - ohms)).toBeLessThanOrEqual(0.05);
  });
  test('every wiring of two gains as much for the same power', () => {
    for (const row of rowsOf(wirings('W-165 A', 2))) expect(row['Per watt']).toBeCloseTo(10 * Math.log10(2), 9);
  });
  test('the verdict names where the load dips', () => {
    const load = (id: string, wiring: string): Curve =>
      loadWired.compute({ wiring, curves: [boxed(id), boxed(id)] }, plain) as Curve;
    const parallel = loadVerdict.compute({ curve: load('W-165 A', '1 | 2'), minimum: 4, ...amplifier }, plain);
    expect((parallel as Verdict).status).toBe('caution');
    const named = Number(/at ([\d.]+), where/.exec(spoken(parallel))?.[1]);
    expect(Math.abs(named / 410 - 1)).toBeLessThanOrEqual(0.02);
    expect((parallel as Verdict).note?.join('')).toContain('meter');
    const verdict = (id: string, wiring: string): string =>
      (loadVerdict.compute({ curve: load(id, wiring), minimum: 4, ...amplifier }, plain) as Verdict).status;
    expect(verdict('W-165 A', '1+2')).toBe('good');
    expect(verdict('W-165 A4', '1+2')).toBe('good');
    expect(verdict('W-165 A4', '1 | 2')).toBe('fail');
  });
});

describe('wirings', () => {
  // Series-parallel networks: unlabelled 1, 2, 4, 10, 24, 66, 180, 522 and labelled 1, 2, 8, 52, 472 are sequences A000084
  // and A006351 of the On-Line Encyclopedia of Integer Sequences (from memory).
  test.each([
    [1, 1],
    [2, 2],
    [3, 4],
    [4, 10],
    [5, 24],
    [6, 66],
    [7, 180],
    [8, 522],
  ])('%d like units can be wired in %d ways', (units, ways) => {
    const texts = likeWirings(units).map(wiringText);
    expect(texts).toHaveLength(ways);
    expect(new Set(texts).size).toBe(ways);
  });
  test('units that differ give 1, 2, 8, 52, 472, like ones the shapes alone', () => {
    expect([1, 2, 3, 4, 5].map((count) => mixedWirings(Array.from({ length: count }, (_, at) => at)).length)).toEqual([
      1, 2, 8, 52, 472,
    ]);
    expect([1, 2, 3, 4].map((count) => mixedWirings(Array.from({ length: count }, () => 0)).length)).toEqual([
      1, 2, 4, 10,
    ]);
  });
  test('what is written can be read again', () => {
    for (const wiring of [...likeWirings(6), ...mixedWirings([0, 1, 2, 3])]) {
      const text = wiringText(wiring);
      const count = [...text.matchAll(/\d+/g)].length;
      expect(wiringText(readWiring(text, count) as Wiring)).toBe(text);
    }
  });
  test.each(['', '1+', '1 2', '(1+2', '1+2)', '1*2', '1+1', '1', '1+2+3', 'a|b', '1+3', '()'])(
    '“%s” is refused for two units',
    (text) => expect(readWiring(text, 2)).toBeInstanceOf(Problem),
  );
  test('whatever is written, it is a wiring or a problem', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'12+|() ') })), (text) => {
        const read = readWiring(text, 2);
        expect(read instanceof Problem || wiringText(read).length > 0).toBe(true);
      }),
    );
  });
});

describe('unlike drivers', () => {
  const both = [unit('W-165 A'), unit('W-165 A4')];
  test('in parallel each plays as it would alone, in series the higher ohms get more', () => {
    const table = loadMixed.compute({ at: 400, drivers: both }, plain);
    const parallel = rowOf(table, '1 | 2');
    const amplitude = 10 ** (both[0]!.level! / 20) + 10 ** (both[1]!.level! / 20);
    expect(parallel['Level']).toBeCloseTo(20 * Math.log10(amplitude), 9);
    expect(parallel['Share 2']).toBeGreaterThan(0.6);
    const series = rowOf(table, '1+2');
    expect(series['Share 1']).toBeGreaterThan(0.6);
    for (const row of rowsOf(table)) expect((row['Share 1'] as number) + (row['Share 2'] as number)).toBeCloseTo(1, 9);
  });
  test('like drivers stand as the table of like units says', () => {
    const one = unit('W-165 A');
    const mixed = loadMixed.compute({ at: 400, drivers: [one, one, one] }, plain);
    const bare = (loadMixed.compute({ at: 400, drivers: [one] }, plain) as TableRecord).rows[0]!;
    const alike = loadWirings.compute(
      { curve: ohmsCurve(() => [bare[1] as number, 0]), level: one.level!, count: 3, ...band },
      plain,
    );
    expect(rowsOf(mixed)).toHaveLength(4);
    for (const row of rowsOf(mixed)) {
      const twin = rowsOf(alike).find(
        (each) => Math.abs((each['Lowest'] as number) - (row['Lowest'] as number)) < 1e-6,
      )!;
      expect(row['Level']).toBeCloseTo(twin['Level'] as number, 6);
      expect(row['Largest share']).toBeCloseTo(twin['Largest share'] as number, 6);
    }
  });
  test('too many, or one without a level, is refused', () => {
    expect(loadMixed.compute({ at: 400, drivers: Array.from({ length: 6 }, () => both[0]!) }, plain)).toBeInstanceOf(
      Problem,
    );
    const bare: Driver = { kind: 'driver', name: 'X', re: 5, fs: 40, qms: 4, qes: 0.4, derived: [], doubts: [] };
    expect(loadMixed.compute({ at: 400, drivers: [bare] }, plain)).toBeInstanceOf(Problem);
  });
});
