import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply } from '../../../src/document/apply.ts';
import { isRefusal, type Refusal } from '../../../src/document/command.ts';
import { auditOf } from '../../../src/document/shelf/audit.ts';
import { driverBlockAt } from '../../../src/document/shelf/block.ts';
import { driverOf } from '../../../src/document/shelf/driver-of.ts';
import type { DriverEntry } from '../../../src/document/shelf/entry.ts';
import { matches, readQuery, type Query } from '../../../src/document/shelf/find.ts';
import { mergeShelves } from '../../../src/document/shelf/merge.ts';
import { putDriver, rowsInBlock } from '../../../src/document/shelf/put.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { speak } from '../../../src/units/show.ts';
import { decodeDocument } from '../../../src/exchange/decode.ts';
import { decodeShelf, readShelf, writeShelf } from '../../../src/exchange/shelf-file.ts';
import type { OctavoDocument } from '../../../src/document/types.ts';
import drivers from '../../../templates/drivers.json' with { type: 'json' };
import check from '../../../templates/two-driver-check.json' with { type: 'json' };
import references from '../../references/demo-drivers.json' with { type: 'json' };

const demo = decodeShelf(drivers) as readonly DriverEntry[];
const named = (name: string): DriverEntry => demo.find((each) => each.name === name)!;
const entry = (name: string, ...rows: readonly (readonly [string, string])[]): DriverEntry => ({
  id: `id-${name}-${rows.length}`,
  name,
  rows: rows.map(([label, text]) => ({ label, text })),
  source: '',
  tables: [],
  invented: false,
});

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

const anyEntry = fc.record({
  id: fc.string({ minLength: 1, maxLength: 4 }),
  name: fc.constantFrom('W-1', 'W-2', 'T-1'),
  rows: fc.array(
    fc.record({ label: fc.constantFrom('Fs', 'Qts', 'Own row', '['), text: fc.string({ maxLength: 6 }) }),
    { maxLength: 3 },
  ),
  source: fc.constantFrom('', 'measured', "maker's sheet"),
  tables: fc.array(fc.record({ title: fc.constantFrom('Response', 'Impedance'), text: fc.string({ maxLength: 9 }) }), {
    maxLength: 2,
  }),
  invented: fc.boolean(),
});
const anyShelf = fc.uniqueArray(anyEntry, { selector: ({ id }) => id, maxLength: 5 });

describe('merging', () => {
  test('keeps both of the same name with different numbers, and tells', () => {
    const { entries, told } = mergeShelves([entry('W-1', ['Fs', '38 Hz'])], [entry('W-1', ['Fs', '40 Hz'])]);
    expect(entries.map(({ name, rows }) => [name, rows[0]?.text])).toEqual([
      ['W-1', '38 Hz'],
      ['W-1 (2)', '40 Hz'],
    ]);
    expect(told.join(' ')).toContain('both are kept, the second as W-1 (2)');
  });

  test('joins sources and tables of the same numbers', () => {
    const held = { ...entry('W-1', ['Fs', '38 Hz']), source: 'sheet', tables: [{ title: 'Response', text: '20 80' }] };
    const their = { ...held, source: 'measured', tables: [{ title: 'Impedance', text: '20 8' }] };
    const { entries } = mergeShelves([held], [their]);
    expect(entries).toEqual([{ ...held, source: 'sheet\nmeasured', tables: [...held.tables, ...their.tables] }]);
  });

  test('loses neither side, gives each its own id, and does nothing a second time', () => {
    fc.assert(
      fc.property(anyShelf, anyShelf, (mine, theirs) => {
        const { entries } = mergeShelves(mine, theirs);
        const has = ({ rows, tables, invented }: DriverEntry): boolean =>
          entries.some(
            (each) =>
              each.invented === invented &&
              JSON.stringify(each.rows) === JSON.stringify(rows) &&
              tables.every((table) =>
                each.tables.some(({ title, text }) => title === table.title && text === table.text),
              ),
          );
        for (const each of [...mine, ...theirs]) expect(has(each)).toBe(true);
        expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
        expect(mergeShelves(entries, theirs).changed).toEqual([]);
      }),
    );
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

describe('another driver in a sheet', () => {
  const document = decodeDocument(check) as OctavoDocument;
  const [sheet] = document.sheets;
  const put = (cell: string, driver: DriverEntry) => putDriver(sheet!, driverBlockAt(sheet!, cell)!, driver);
  const written = (cell: string, driver: DriverEntry) => {
    const outcome = apply(document, put(cell, driver).command);
    if (isRefusal(outcome)) throw new Error(outcome.refused);
    return { cells: outcome.document.sheets[0]!.cells, undone: apply(outcome.document, outcome.undo) };
  };

  test('is written over all rows of its block in one step, and one step takes it back', () => {
    const { cells, undone } = written('B9', named('W-220 A'));
    expect(['B4', 'B5', 'B8', 'B10', 'B14', 'B15', 'B19'].map((cell) => cells.get(cell)?.text)).toEqual([
      'W-220 A',
      '27 Hz',
      '5.7 Ω',
      '222 cm²',
      '89.8 dB',
      'at 2.83 V',
      '98 ¤',
    ]);
    expect(cells.get('B5')?.range).toEqual(['15 Hz', '200 Hz']);
    expect(cells.get('B20')?.text).toBe('=DRIVER($A4:$A19,B4:B19)');
    expect(cells.get('C5')?.text).toBe('850 Hz');
    expect('document' in undone && undone.document.sheets[0]?.cells).toEqual(sheet?.cells);
  });

  test('is found from every row, from the formula that gathers them, and in its own column', () => {
    for (const cell of ['C4', 'C12', 'C19', 'C20']) {
      const block = driverBlockAt(sheet!, cell);
      expect([cell, block?.title, block?.rows[0]?.cell, block?.rows.at(-1)?.cell]).toEqual([
        cell,
        'Tweeter',
        'C4',
        'C19',
      ]);
    }
    for (const cell of ['A5', 'D24', 'E9', 'B2', 'B41']) {
      const block = driverBlockAt(sheet!, cell);
      expect([cell, block?.rows.some(({ cell: at }) => at === 'B5')]).not.toEqual([cell, true]);
    }
    expect(driverBlockAt(sheet!, 'D24')).toBeUndefined();
  });

  test('leaves nothing of the former one: what is not given is computed or emptied, and told', () => {
    const small = entry('Small', ['Fs', '60 Hz'], ['Qms', '4'], ['Qts', '0.4'], ['Re', '6 Ω']);
    const { cells } = written('B9', small);
    expect(cells.get('B7')?.text).toBe('0.4444');
    expect(cells.get('B11')?.text).toBe('');
    const told = put('B9', small).told.join(' ');
    expect(told).toContain('Computed from its other numbers: Qes.');
    expect(told).toMatch(/Not given for Small, so emptied: .*Mms/);
    expect(told).toContain('This sheet has no rows for Qts.');
  });

  test('takes the basis of its level in the words of the cell', () => {
    const { cells } = written(
      'B9',
      entry('Watt', ['Fs', '60 Hz'], ['Level', '88 dB'], ['Level basis', '1 W / 1 m in Re'], ['Re', '6 Ω']),
    );
    expect(cells.get('B14')?.text).toBe('88 dB');
    expect(cells.get('B15')?.text).toBe('at 1 W into Re');
  });

  test('comes from a column of the sheet as it was typed, and goes back unchanged', () => {
    const block = driverBlockAt(sheet!, 'B9')!;
    const { name, rows } = rowsInBlock(sheet!, block);
    expect(name).toBe('W-165 A');
    expect(rows).toContainEqual({ label: 'Radiating area Sd', text: '132 cm²' });
    const { command, given } = putDriver(sheet!, block, { ...entry(name), rows });
    expect(given).toContain('B10');
    const outcome = apply(document, command);
    expect('document' in outcome && outcome.document.sheets[0]?.cells).toEqual(sheet?.cells);
  });
});
