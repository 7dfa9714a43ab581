import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Refusal } from '../../../src/document/command.ts';
import { auditOf } from '../../../src/document/shelf/audit.ts';
import { driverOf } from '../../../src/document/shelf/driver-of.ts';
import { matches, readQuery, type Query } from '../../../src/document/shelf/find.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { speak } from '../../../src/units/show.ts';
import { readShelf, writeShelf } from '../../../src/exchange/shelf-file.ts';
import references from '../../references/demo-drivers.json' with { type: 'json' };
import { anyShelf, demo, named, entry } from './demo.ts';

describe('the invented drivers', () => {
  test('are eleven, and one with planted errors, and say that they are invented', () => {
    expect(demo).toHaveLength(12);
    for (const { invented, source } of demo) {
      expect(invented).toBe(true);
      expect(source).toMatch(/^Invented/);
    }
  });

  // The numbers were made by an independent calculation kept in references/demo-drivers.json.
  test.each(references.drivers.map((driver) => [driver.id, driver] as const))(
    '%s has the numbers it was made with',
    (id, made) => {
      const driver = driverOf(named(id)) as Driver;
      expect(driver.fs).toBeCloseTo(made.fs_hz, 6);
      expect(driver.vas! * 1e3).toBeCloseTo(made.vas_l, 6);
      expect(driver.sd! * 1e4).toBeCloseTo(made.sd_cm2, 6);
      expect(driver.mms! * 1e3).toBeCloseTo(made.mms_g, 6);
      expect(driver.xmax! * 1e3).toBeCloseTo(made.xmax_mm, 6);
      expect(driver.level).toBeCloseTo(made.spl_2v83_db, 0);
      expect(driver.doubts).toEqual([]);
    },
  );

  test('are found consistent by the audit', () => {
    for (const each of demo.slice(0, 11)) expect([each.name, auditOf(each).word]).toEqual([each.name, 'Consistent']);
  });

  test('but the planted errors are found, Qts among them with what it should be', () => {
    const audit = auditOf(named('X-200 Z'));
    const { expected_flags: flags } = references.sheets_with_planted_errors[0]!;
    const said = audit.reasons.map((reason) => speak(reason, 'metric')).join('\n');
    expect(audit.status).toBe('fail');
    expect(said).toMatch(/Qts is printed as 0\.4, the others give 0\.454\d/);
    expect(flags.qts_from_qms_qes).toBeCloseTo(0.4545, 4);
    for (const symbol of ['Vas', 'Bl']) expect(said).toContain(`${symbol} is printed as`);
  });
});

describe('an audit', () => {
  test('questions a size that no driver has, and mends the unit', () => {
    const { status, reasons } = auditOf(entry('Slip', ['Fs', '38 Hz'], ['Sd', '132 mm²'], ['Re', '5.8 Ω']));
    expect(status).toBe('caution');
    expect(reasons.map((each) => speak(each, 'metric')).join(' ')).toContain(
      'Sd of 1.32 cm² is not plausible for a loudspeaker driver: did you mean 132 cm²?',
    );
  });

  test.each([
    [['Fs', '38'], /has no unit/],
    [['Fs', '38 g'], /needs a frequency, but 38 g is a mass/],
    [['Fs', 'low'], /needs a frequency, but holds “low”/],
  ] as const)('says what is wrong with %s', (row, words) => {
    const { reasons } = auditOf(entry('Odd', row, ['Qts', '0.4']));
    expect(reasons.map((each) => speak(each, 'metric')).join(' ')).toMatch(words);
  });

  test('says so when there is no number at all', () => {
    expect(auditOf(entry('Empty')).status).toBe('fail');
  });
});

describe('finding', () => {
  const found = (text: string): string[] => {
    const query = readQuery(text) as Query;
    return demo
      .filter((each) => matches({ entry: each, driver: driverOf(each) as Driver }, query))
      .map(({ name }) => name);
  };
  const numbers = (test: (driver: (typeof references.drivers)[number]) => boolean): string[] =>
    references.drivers.filter(test).map(({ id }) => id);
  const real = (text: string): string[] => found(text).filter((name) => name !== 'X-200 Z');

  test.each([
    ['Fs < 900', (each: { fs_hz: number }) => each.fs_hz < 900],
    ['fs<0.9 kHz', (each: { fs_hz: number }) => each.fs_hz < 900],
    ['Fs ≥ 38 Hz', (each: { fs_hz: number }) => each.fs_hz >= 38],
    ['Resonance > 38', (each: { fs_hz: number }) => each.fs_hz > 38],
    ['Sd > 100 cm2', (each: { sd_cm2: number }) => each.sd_cm2 > 100],
    ['cone area > 100', (each: { sd_cm2: number }) => each.sd_cm2 > 100],
    ['Sd > 20 in2', (each: { sd_cm2: number }) => each.sd_cm2 > 20 * 2.54 ** 2],
    ['Qts = 0.386', (each: { qts: number }) => Math.abs(each.qts - 0.386) <= 0.0005],
    ['Qts = 0.3 to 0.4', (each: { qts: number }) => each.qts >= 0.3 && each.qts <= 0.4],
    ['Vas = 10–30 L', (each: { vas_l: number }) => each.vas_l >= 10 && each.vas_l <= 30],
  ] as const)('%s', (text, holds) => {
    const wanted = numbers(holds);
    expect(wanted.length).toBeGreaterThan(0);
    expect(real(text)).toEqual(wanted);
  });

  test('all terms must hold, words of the name among them', () => {
    expect(real('Fs < 900, Sd > 100 cm2 and price <= 62')).toEqual(['W-165 A', 'W-165 A4']);
    expect(real('w-165')).toEqual(['W-165 A', 'W-165 A4']);
    expect(real('w-165 nominal > 4')).toEqual(['W-165 A']);
    expect(real('dome Fs < 900')).toEqual(real('dome').filter((name) => real('Fs < 900').includes(name)));
    expect(found('')).toHaveLength(12);
  });

  test.each([
    ['Colour < 3', '“Colour” is no number of a driver'],
    ['Fs <', 'Behind “Fs <” a number is wanted'],
    ['< 900', 'the name of a number is wanted'],
    ['Sd > 100 mm', 'Sd is an area, but mm is the unit of a length'],
    ['Fs < low', 'Behind “Fs <” a number is wanted'],
  ])('%s is not understood, and why is said', (text, words) => {
    expect((readQuery(text) as Refusal).refused).toContain(words);
  });

  test('nothing typed throws', () => {
    fc.assert(fc.property(fc.string({ maxLength: 60 }), (text) => void readQuery(text)));
    fc.assert(fc.property(fc.string({ maxLength: 20 }), (text) => void readQuery(`Fs < ${text} > 3`)));
  });
});

describe('the file of a shelf', () => {
  test('holds every word that was typed', () => {
    fc.assert(
      fc.property(anyShelf, (entries) => {
        expect(readShelf(writeShelf(entries))).toEqual(entries);
      }),
    );
  });

  test('is read by people: a row a line', () => {
    expect(writeShelf([entry('W-1', ['Fs', '38 Hz'], ['Qts', '0.4'])])).toContain(
      '        ["Fs", "38 Hz"],\n        ["Qts", "0.4"]',
    );
  });

  test.each([
    ['Dear reader', 'not readable JSON'],
    ['{"drivers": []}', 'no driver shelf'],
    ['[]', 'no driver shelf'],
    ['{"octavo": 1, "title": "x"}', 'a document with sheets'],
    ['{"octavoShelf": 2, "drivers": []}', 'newer Octavo'],
    ['{"octavoShelf": 0, "drivers": []}', 'octavoShelf: a whole number from 1 to 1 is wanted'],
    ['{"octavoShelf": 1}', 'drivers: a list is wanted'],
    ['{"octavoShelf": 1, "drivers": [{"name": 3, "rows": []}]}', 'drivers[0].name: a text is wanted'],
    ['{"octavoShelf": 1, "drivers": [{"name": "W", "rows": [["Fs"]]}]}', 'a label and a text are wanted'],
  ])('%s is refused', (text, words) => {
    expect((readShelf(text) as Refusal).refused).toContain(words);
  });
});
