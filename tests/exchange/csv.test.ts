import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frequencies } from '../../functions/values/grid.ts';
import type { Curve } from '../../functions/values/curve.ts';
import { rectangleOf } from '../../src/document/area.ts';
import type { Cell, OctavoDocument } from '../../src/document/types.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { cellsCsv, filledArea } from '../../src/exchange/csv/cells-csv.ts';
import { curvesCsv } from '../../src/exchange/csv/curve-csv.ts';
import { tableCsv } from '../../src/exchange/csv/table-csv.ts';
import { writeCsv } from '../../src/exchange/csv/write-csv.ts';

/** Reads by the grammar of RFC 4180, section 2, and nothing else: a text outside it is an error. */
function read(text: string): string[][] {
  const rows: string[][] = [];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  let row: string[] = [];
  while (field.lastIndex < text.length) {
    const at = field.lastIndex;
    const match = field.exec(text);
    if (!match) throw new Error(`No field at ${at}: ${text.slice(at, at + 40)}`);
    row.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') {
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

const document = (cells: Record<string, Cell>, titles: readonly string[]): OctavoDocument => ({
  id: 'd',
  title: 'Levels',
  system: 'metric',
  sheets: [
    {
      id: 's',
      name: 'One',
      summary: '',
      rows: 12,
      columns: titles.map((title) => ({ width: 90, ...(title !== '' && { title }) })),
      names: new Map(),
      cells: new Map(Object.entries(cells)),
      plots: [],
    },
  ],
});

async function opened(given: OctavoDocument): Promise<Workbook> {
  const workbook = new Workbook(createEngine(), given);
  await workbook.ready;
  return workbook;
}

const flat = (quantity: Curve['quantity'], value: number, more: Partial<Curve> = {}): Curve => ({
  kind: 'curve',
  title: 'Flat',
  quantity,
  y: new Float64Array(frequencies.length).fill(value),
  from: 100,
  to: 10_000,
  ...more,
});

describe('comma-separated text', () => {
  // RFC 4180, section 2, rules 1, 5, 6 and 7, as printed.
  test.each([
    [
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    ],
    [[['aaa', 'b\r\nbb', 'ccc']], 'aaa,"b\r\nbb",ccc\r\n'],
    [[['aaa', 'b"bb', 'ccc']], 'aaa,"b""bb",ccc\r\n'],
  ])('is written as the standard prints it', (rows, text) => {
    expect(writeCsv(rows)).toBe(text);
  });

  test('gives back every text, but for the apostrophe before what looks like a formula', () => {
    const word = fc.string({ unit: 'grapheme' });
    fc.assert(
      fc.property(fc.array(fc.array(word, { minLength: 2, maxLength: 5 }), { minLength: 1 }), (rows) => {
        const again = read(writeCsv(rows)).map((row) => row.map((each) => each.replace(/^'/, '')));
        expect(again).toEqual(rows.map((row) => row.map((each) => each.replace(/^'/, ''))));
      }),
    );
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', ' =1', '\u2212 3 dB', '\uFF1D1'])(
    '%j does nothing',
    (text) => {
      expect(read(writeCsv([[text, 'x']]))[0]?.[0]).toBe(`'${text}`);
    },
  );

  test('numbers have a point, no spaces, a plain minus and no rounding noise', () => {
    expect(writeCsv([[-1808.5, 0.1 + 0.2, 1e-9, 12_000_000, Number.NaN, undefined]])).toBe(
      '-1808.5,0.3,1e-9,12000000,,\r\n',
    );
  });
});

describe('cells', () => {
  const levels = document(
    {
      A1: { text: 'Level' },
      B1: { text: '86.5 dB' },
      C1: { text: '38 Hz' },
      A2: { text: '=1/0' },
      B2: { text: '=B1-B3' },
      C2: { text: '12 L' },
      A3: { text: '-sign' },
      B3: { text: '-3 dB' },
    },
    ['Quantity', 'Woofer', 'Box', ''],
  );

  test('have titles, a row of units, and a column of units where they differ', async () => {
    const workbook = await opened(levels);
    const [sheet] = levels.sheets;
    const rows = read(cellsCsv(workbook, sheet!, filledArea(workbook, sheet!)));
    expect(rows.slice(0, 3)).toEqual([
      ['Quantity', 'Woofer', 'Box', 'Box, unit'],
      ['', 'dB', '', ''],
      ['Level', '86.5', '38', 'Hz'],
    ]);
    expect(rows[3]?.slice(1)).toEqual(['89.5', '12', 'L']);
    expect(rows[4]).toEqual(["'-sign", '-3', '', '']);
    expect(rows).toHaveLength(5);
    workbook.dispose();
  });

  test('of a selection are those and no others, in the unit shown', async () => {
    const workbook = await opened({ ...levels, system: 'imperial' });
    const [sheet] = levels.sheets;
    const rows = read(cellsCsv(workbook, sheet!, rectangleOf('C2')));
    expect(rows.slice(0, 2)).toEqual([['Box'], ['ft³']]);
    // 12 L of 28.316846592 L a cubic foot.
    expect(Number(rows[2]?.[0])).toBeCloseTo(12 / 28.316846592, 10);
    workbook.dispose();
  });
});

describe('curves', () => {
  test('stand side by side with their units, only where they hold', () => {
    const level = flat('level', 86);
    const ohms = flat('resistance', 6.4, {
      from: 5000,
      to: 20_000,
      phase: new Float64Array(frequencies.length).fill(Math.PI / 4),
    });
    const [names, units, ...points] = read(
      curvesCsv(
        [
          { label: 'Level', curve: level },
          { label: 'Ohms', curve: ohms },
        ],
        'metric',
      ),
    );
    expect(names).toEqual(['Frequency', 'Level', 'Ohms', 'Ohms, phase']);
    expect(units).toEqual(['Hz', 'dB', 'Ω', '°']);
    expect(points).toHaveLength(frequencies.filter((hertz) => hertz >= 100 && hertz <= 20_000).length);
    expect(points[0]?.slice(1)).toEqual(['86', '', '']);
    expect(points.at(-1)?.slice(1)).toEqual(['', '6.4', '45']);
    for (const [hertz] of points)
      expect(frequencies.some((each) => Math.abs(each / Number(hertz) - 1) < 1e-11)).toBe(true);
  });
});

describe('a table', () => {
  test('has names, units and numbers in one unit a column', () => {
    const csv = tableCsv(
      {
        kind: 'table',
        title: 'Panels',
        columns: [
          { name: 'Panel', quantity: 'text' },
          { name: 'Length', quantity: 'length' },
          { name: 'Note', quantity: 'text' },
        ],
        rows: [
          ['Front', 0.36, '=risky'],
          ['Back', null, null],
        ],
      },
      'metric',
    );
    expect(csv).toBe("Panel,Length,Note\r\n,mm,\r\nFront,360,'=risky\r\nBack,,\r\n");
  });
});
