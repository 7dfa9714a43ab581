import { describe, expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { templates } from '../../templates/index.ts';
import { run } from '../../src/cli/run.ts';
import { createEngine } from '../../src/engine/direct.ts';
import type { SheetEngine } from '../../src/engine/types.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { SlowEngine } from '../document/slow-engine.ts';

const file = JSON.stringify({
  octavo: 1,
  title: 'Check',
  system: 'metric',
  sheets: [
    {
      name: 'Sheet',
      rows: 9,
      columns: [{ width: 99 }, { width: 99 }],
      names: { Tuning: 'B4', Twice: 'B5', Holds: 'B7', Both: 'B4:B5' },
      cells: { A4: 'Tuning', B4: '38 Hz', B5: '=B4*2', B7: '=CHECK(B5,100)' },
    },
    { name: 'Next one', rows: 9, columns: [{ width: 99 }], names: { Other: 'A1' }, cells: { A1: '7' } },
  ],
});

const outcome = (...given: string[]): Promise<Outcome> => outcomeOn(() => new SlowEngine(), given);

/** With the engine that calculates in truth. */
const real = (...given: string[]): Promise<Outcome> => outcomeOn(createEngine, given);

interface Outcome {
  readonly status: number;
  readonly out: string;
  readonly error: string;
}

async function outcomeOn(newEngine: () => SheetEngine, given: readonly string[]): Promise<Outcome> {
  const out: string[] = [];
  const error: string[] = [];
  const status = await run(given, {
    out: (text) => out.push(text),
    error: (text) => error.push(text),
    read: async (path) => ({ 'check.json': file, 'broken.json': '{"octavo": 1, "title": 3}' })[path],
    newEngine,
    catalogue,
    drivers,
    templates: new Map([
      ['check-template', JSON.parse(file) as unknown],
      ...templates.map(({ id, content }) => [id, content] as const),
    ]),
  });
  return { status, out: out.join('\n'), error: error.join('\n') };
}

const json = async (...given: string[]): Promise<Record<string, unknown>> =>
  JSON.parse((await outcome(...given, '--json')).out) as Record<string, unknown>;

describe('the command line', () => {
  test('prints the value of a formula', async () => {
    expect(await outcome('=2*3+4')).toEqual({ status: 0, out: '10', error: '' });
    expect(await json('=2*3+4')).toEqual({ kind: 'number', value: 10, unit: '', text: '10' });
  });

  test('prints all named cells of a document, those of further sheets with their sheet', async () => {
    expect((await outcome('check.json')).out.split('\n')).toEqual([
      'Tuning: 38 Hz',
      'Twice: 76',
      'Holds: Good: The value is 76.',
      'Both B4: 38 Hz',
      'Both B5: 76',
      "'Next one'!Other: 7",
    ]);
  });

  test('sets cells, a bare number in the unit that the cell shows, and prints what is asked', async () => {
    const given = ['--set', 'Tuning=60', '--set', "'Next one'!A1=9", '--get', 'B4', '--get', 'Holds', '--get', 'Other'];
    expect(await outcome('check.json', ...given)).toEqual({
      status: 0,
      out: 'B4: 60 Hz\nHolds: Too high: The value is 120.\nOther: 9',
      error: '',
    });
  });

  test('gives JSON with SI values, units, texts and kinds', async () => {
    expect(await json('check.json', '--get', 'Tuning', '--get', 'Holds', '--get', 'A9', '--get', 'Both')).toEqual({
      Tuning: { kind: 'number', value: 38, unit: 'Hz', text: '38 Hz' },
      Holds: {
        kind: 'verdict',
        value: { status: 'good', word: 'Good', reason: 'The value is 76.' },
        unit: '',
        text: 'Good: The value is 76.',
      },
      A9: { kind: 'empty', value: null, unit: '', text: '' },
      Both: {
        kind: 'range',
        cells: {
          B4: { kind: 'number', value: 38, unit: 'Hz', text: '38 Hz' },
          B5: { kind: 'number', value: 76, unit: '', text: '76' },
        },
      },
    });
  });

  test('opens a template by its name', async () => {
    expect((await outcome('check-template', '--get', 'Twice')).out).toBe('Twice: 76');
  });

  test('lists the functions', async () => {
    const { out, status } = await outcome('--functions', '--json');
    const listed = JSON.parse(out) as { name: string }[];
    expect([status, listed.map(({ name }) => name)]).toEqual([0, catalogue.map(({ name }) => name)]);
    expect((await outcome('--functions')).out.split('\n').filter((line) => line !== '')).toHaveLength(catalogue.length);
  });

  test.each([
    [['nowhere.json'], 'There is no file "nowhere.json", and no template of that name; templates are check-template, '],
    [['broken.json'], 'broken.json: This document is damaged or was changed by hand. title: a text is wanted'],
    [['check-tenplate'], 'no template of that name; is check-template meant?'],
    [['SQRT(4)'], `A formula begins with an equals sign: calc '=SQRT(4)'`],
    [['check.json', '--get', 'Twise'], 'Nothing is called "Twise" here; is "Twice" meant?'],
    [['check.json', '--set', 'Both=1'], '"Both" is the range B4:B5; --set writes one cell.'],
    [['check.json', '--set', 'Twise=1'], 'Nothing is called "Twise" here; is "Twice" meant?'],
    [['check.json', '--get', 'A10'], 'A10 lies outside the 9 rows and 2 columns of "Sheet"'],
    [['check.json', '--get', 'A99999999'], 'A99999999 lies outside the 9 rows'],
    [['check.json', '--get', "'Next one'!A0"], 'A0 lies outside the 9 rows and 1 columns of "Next one"'],
    [
      ['check.json', '--get', 'Nowhere!A1'],
      'There is no sheet "Nowhere" in this document; there are "Sheet", "Next one".',
    ],
    [['check.json', '--get'], '--get wants the cell to print'],
    [['check.json', '--set', 'Tuning'], `--set wants NAME=TEXT, as in --set 'Volume=12 L', but got "Tuning"`],
    [['check.json', 'other.json'], 'One file or formula is wanted, but "other.json" was given too.'],
    [['=1', '--set', 'B4=2'], '--set and --get belong to a file, not to a formula.'],
    [['--json=yes'], '--json takes no value, but got "yes".'],
    [['--what'], 'There is no option --what'],
    [['-x'], 'There is no option -x'],
    [['--functions', 'check.json'], '--functions takes nothing beside it but --json.'],
    [[], 'A formula or a file is wanted.'],
    [[''], 'A formula or a file is wanted.'],
  ])('%j ends with status 1 and the reason', async (given, reason) => {
    const { status, out, error } = await outcome(...given);
    expect([status, out]).toEqual([1, '']);
    expect(error).toContain(reason);
  });

  test('says why a formula has no result; for programs in JSON too, and with the same status', async () => {
    const formula = '=CLOSED.QTC(0.386, "28.52 L", "0 L")';
    const told = await real(formula);
    expect([told.status, told.out]).toEqual([1, '']);
    expect(told.error).toContain('volume');
    const described = await real(formula, '--json');
    expect([described.status, described.error]).toEqual([1, told.error]);
    expect(JSON.parse(described.out)).toMatchObject({ kind: 'problem', value: null, message: told.error });
  });

  test('takes a formula with spaces round it', async () => {
    expect(await outcome(' =2*3 ')).toEqual({ status: 0, out: '6', error: '' });
  });

  test('what is set in vain or in doubt is told with the cell where it shows', async () => {
    const asked = (...given: string[]): Promise<Outcome> => real('closed-box-bench', ...given);
    const [large, none] = [await asked('--set', 'Volume=12000 L', '--get', 'Qtc'), await asked('--set', 'Volume=0 L')];
    expect([large.status, large.out]).toEqual([0, 'Qtc: 0.3867']);
    expect(large.error).toMatch(
      /^Doubtful, Box: CLOSED\.BOX, volume .* is usually .*; B24 is 12\s000 L\. Is the unit right\?$/,
    );
    expect([none.status, none.out]).toEqual([1, expect.stringContaining('Qtc: Problem: ')]);
    expect(none.error).toMatch(
      /^Box has no result any more: CLOSED\.BOX, volume .* must be at least .*, but B24 is 0 L\. Type/,
    );
    const beside = await asked('--set', 'Volume=0 L', '--get', 'Fill');
    expect(beside).toMatchObject({ status: 0, out: 'Fill: 1 ×' });
    expect(beside.error).toMatch(/^Without a result now, \d+ in all; .*B24 is 0 L\. Type/);
    expect(await asked('--set', 'Volume=0 L', '--set', 'Volume=12 L', '--get', 'Qtc')).toMatchObject({ status: 0 });
  });

  test.each(['=B4', '=2*SUM(B4:C9)', '=B4.fs'])('%s alone stands in no sheet, and is told so', async (formula) => {
    const { status, out, error } = await real(formula);
    expect([status, out]).toEqual([1, '']);
    expect(error).toMatch(/^B4(:C9|\.fs)? is a cell, but a formula alone stands in no sheet: .*calc FILE/);
  });

  test('a number without its unit is told beside the limit that it breaks', async () => {
    const { status, out, error } = await real('=EDGE.FREQUENCY(220)');
    expect([status, out]).toEqual([1, '']);
    expect(error).toMatch(
      /^Doubtful: .* write 220 mm if that is meant\.\nEDGE\.FREQUENCY, width .* at most 100 m, but/,
    );
    expect(await real('=[B4]')).toMatchObject({
      error: expect.stringMatching(/^The formula cannot be read from “\[”/),
    });
  });

  test('explains itself', async () => {
    const { status, out } = await outcome('--help');
    expect([status, out.includes("--set 'NAME=12 L'")]).toEqual([0, true]);
  });
});

describe('a shelf of drivers', () => {
  test('lists those that are like what is searched', async () => {
    const { status, out } = await outcome('--shelf', '--find', 'Sd > 100 cm2, price <= 62');
    expect(status).toBe(0);
    expect(out.split('\n').map((line) => line.split(',')[0])).toEqual(['W-165 A', 'W-165 A4']);
    expect(out).toContain('Fs 38 Hz');
    expect(out).toContain('Consistent');
  });

  test('gives programs what was typed, the numbers in SI and the audit', async () => {
    const { out } = await outcome('--shelf', '--find', 'X-200', '--json');
    const [driver] = JSON.parse(out) as { rows: unknown[]; numbers: { fs: unknown }; audit: { word: string } }[];
    expect(driver?.numbers.fs).toEqual({ value: 35, unit: 'Hz' });
    expect(driver?.rows).toContainEqual({ label: 'Qts', text: '0.4' });
    expect(driver?.audit.word).toBe('Check Qts');
  });

  test.each([
    [['--shelf', 'nowhere.json'], 'There is no file "nowhere.json"'],
    [['--shelf', 'check.json'], 'a document with sheets'],
    [['--shelf', '--find', 'Colour < 3'], '“Colour” is no number of a driver'],
    [['--find', 'Fs < 900'], '--find belongs to a shelf'],
    [['--shelf', 'a.json', '--set', 'B4=3'], '--shelf takes one file'],
  ])('%j is refused with what is wrong', async (given, words) => {
    const { status, error } = await outcome(...given);
    expect(status).toBe(1);
    expect(error).toContain(words);
  });
});
