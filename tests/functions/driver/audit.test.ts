import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { culprits } from '../../../functions/driver/culprit.ts';
import { complete, type Linked, type Parameters } from '../../../functions/driver/relations.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { call, driver, number, woofer } from '../enclosure/call.ts';
import { expectClose, input, references, withId, type Reference } from '../enclosure/reference.ts';

// An invented sheet with four planted errors and what the sound values give.
const printed = {
  fs: 35,
  qms: 5,
  qes: 0.5,
  qts: 0.4,
  vas: 0.07,
  sd: 0.0214,
  mms: 0.027,
  cms: 0.766e-3,
  bl: 9.4,
  re: 5.8,
  level: 92,
};

describe('a sheet with planted errors', () => {
  const found = culprits(printed);
  test('exactly the planted ones are blamed, Qts first', () => {
    expect(found[0]!.field).toBe('qts');
    expect(found.map(({ field }) => field).toSorted()).toEqual(['bl', 'level', 'qts', 'vas']);
  });
  test.each([
    ['qts', 0.4545, 4],
    ['vas', 0.04975, 4],
    ['bl', 8.299, 2],
    ['level', 89.75, 1],
  ] as const)('%s is %d by the others', (field, value, digits) => {
    expect(found.find((each) => each.field === field)!.computed).toBeCloseTo(value, digits);
  });
  test('the verdict names the first, the table every value', () => {
    const made = driver(printed);
    const verdict = call('DRIVER.CULPRIT', { driver: made }) as Verdict;
    expect([verdict.status, verdict.word]).toEqual(['fail', 'Check Qts']);
    const { rows, columns } = call('DRIVER.AUDIT', { driver: made }) as TableRecord;
    expect(rows.map(([symbol]) => symbol)).toEqual(['Fs', 'Qts', 'Vas', 'Mms', 'Cms', 'Bl', 'Level']);
    expect(rows.every((row) => row.length === columns.length)).toBe(true);
    expect(rows.find(([symbol]) => symbol === 'Fs')!.at(-1)).toBe('agrees');
    expect(rows.filter((row) => String(row.at(-1)).startsWith('likely')).map(([symbol]) => symbol)).toEqual([
      'Qts',
      'Vas',
      'Bl',
      'Level',
    ]);
  });
});

/** All twelve linked parameters, consistent. */
const sound: Parameters = complete({ fs: 38, qms: 4.8, qes: 0.42, vas: 0.02852, re: 5.8, sd: 0.0132 }).known;

describe('one error in a full sheet', () => {
  test.each(['fs', 'qes', 'sd', 'mms', 'cms', 'vas', 'bl', 'rms', 'level', 'qts'] as const)(
    '%s is found, upwards and downwards',
    (field: Linked) => {
      for (const factor of [1.3, 1 / 1.3]) {
        const value = field === 'level' ? sound.level! + 20 * Math.log10(factor) * 2 : sound[field]! * factor;
        expect(culprits({ ...sound, [field]: value })[0]!.field).toBe(field);
      }
    },
  );
  test('a sound sheet has no culprit, whatever the driver', () => {
    const q = fc.double({ min: 0.2, max: 10, noNaN: true });
    fc.assert(
      fc.property(
        q,
        q,
        fc.double({ min: 15, max: 2500, noNaN: true }),
        fc.double({ min: 1e-5, max: 1, noNaN: true }),
        (qms, qes, fs, vas) => {
          expect(culprits(complete({ fs, qms, qes, vas, re: 6, sd: 0.01 }).known)).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
    expect((call('DRIVER.CULPRIT', { driver: driver(sound) }) as Verdict).status).toBe('good');
  });
  test('nothing to check is a problem, not a pass', () => {
    expect(call('DRIVER.CULPRIT', { driver: woofer })).toBeInstanceOf(Problem);
    expect(call('DRIVER.AUDIT', { driver: woofer })).toBeInstanceOf(Problem);
  });
});

const values = references('driver-parameters');
const elements = (each: Reference) =>
  driver({
    re: input(each, 'Re'),
    bl: input(each, 'BL'),
    mms: input(each, 'Mms'),
    cms: input(each, 'Cms'),
    rms: input(each, 'Rms'),
    sd: input(each, 'Sd'),
  });

describe('level on another basis', () => {
  test.each(withId(values, /^(W1|W2|T1)-spl1w$/))('$id', (each) =>
    expectClose(number('DRIVER.LEVEL', { driver: elements(each), basis: '1 W in Re' }), each),
  );
  test('a watt in 8 nominal ohms is 2.83 V but for 0.005 dB, and asks for the nominal ohms', () => {
    const named = { ...woofer, nominal: 8 };
    const basis = '1 W in nominal ohms';
    expect(number('DRIVER.LEVEL', { driver: named, basis })).toBeCloseTo(number('DRIVER.LEVEL', { driver: named }), 2);
    expect(call('DRIVER.LEVEL', { driver: woofer, basis })).toBeInstanceOf(Problem);
  });
});

describe('changed drivers', () => {
  test.each(withId(values, /-x2-/))('$id', (each) => {
    const wiring = each.id.endsWith('ser283') ? { series: 2 } : { parallel: 2 };
    const group = call('DRIVER.GROUP', { driver: elements(each), ...wiring }) as Driver;
    expectClose(each.id.endsWith('vas') ? group.vas! : group.level!, each);
    expectClose(each.id.endsWith('vas') ? group.vas! : number('DRIVER.LEVEL', { driver: group }), each);
  });
  test('a group is consistent with itself: its elements give its Qs and Vas again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), (parallel, series) => {
        const group = call('DRIVER.GROUP', { driver: driver(sound), parallel, series }) as Driver;
        const { re, bl, mms, cms, rms, sd } = group;
        const again = complete({ re: re!, bl: bl!, mms: mms!, cms: cms!, rms: rms!, sd: sd! }).known;
        for (const field of ['fs', 'qms', 'qes', 'qts', 'vas', 'level'] as const)
          expect(again[field]! / group[field]!).toBeCloseTo(1, 9);
      }),
      { numRuns: 20 },
    );
  });
  test.each(withId(values, /-ebp$/))('$id', (each) =>
    expectClose(number('DRIVER.BANDWIDTH', { driver: elements(each) }), each),
  );
  test.each(withId(references('large-signal'), /^comp/))('$id', (each) => {
    const given = { power: input(each, 'P0'), thermal: input(each, 'Rth'), coefficient: 0.00393 };
    const warm = number('DRIVER.HEATING', given);
    expectClose(
      each.id.startsWith('compdb') ? number('DRIVER.HOT_LOSS', { rise: warm, coefficient: 0.00393 }) : warm,
      each,
    );
  });
  test('a warm coil and a series resistance of as many ohms are the same circuit', () => {
    const warm = call('DRIVER.HOT', { driver: woofer, rise: 50 }) as Driver;
    const series = call('DRIVER.SERIES', { driver: woofer, resistance: woofer.re! * 0.00393 * 50 }) as Driver;
    for (const field of ['re', 'qes', 'qts', 'level'] as const) expect(warm[field]!).toBeCloseTo(series[field]!, 9);
    // The level that the parameters of the warm driver make is its own.
    expect(number('DRIVER.LEVEL', { driver: warm })).toBeCloseTo(warm.level!, 6);
    expect(warm.qts!).toBeGreaterThan(woofer.qts!);
  });
});
