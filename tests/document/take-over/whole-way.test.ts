import { beforeAll, describe, expect, test } from 'vitest';
import { goTheWay, type Stage } from '../../../src/document/take-over/whole-way.ts';
import type { Sheet } from '../../../src/document/types.ts';
import { openTemplate, type OpenTemplate } from '../../templates/open-template.ts';
import { starterDocument } from '../../templates/starter-document.ts';

const way = ['vented-box', 'front-panel', 'first-crossover', 'saw-list', 'shopping-basket'].map(starterDocument);

let opened: OpenTemplate;
let stages: readonly Stage[];

const sheetCalled = (name: string): Sheet => {
  const sheet = opened.workbook.document.sheets.find((each) => each.name === name);
  if (!sheet) throw new Error(`There is no sheet ${name}.`);
  return sheet;
};
const cellOf = (sheet: Sheet, name: string): string => sheet.names.get(name) ?? name;
/** What a cell shows, by the name of its sheet and its own. */
const shown = (name: string, cell: string): string => {
  const sheet = sheetCalled(name);
  return opened.workbook.asText(sheet.id, cellOf(sheet, cell)).replaceAll('\u2009', '');
};
const write = async (name: string, texts: Readonly<Record<string, string>>): Promise<void> => {
  const sheet = sheetCalled(name);
  const written = new Map(Object.entries(texts).map(([cell, text]) => [cellOf(sheet, cell), text]));
  expect(await opened.workbook.do({ kind: 'write', sheet: sheet.id, texts: written })).toBeUndefined();
};
const names = (): string[] => opened.workbook.document.sheets.map(({ name }) => name);

describe('the way from two drivers to the basket', () => {
  beforeAll(async () => {
    opened = await openTemplate('two-driver-check');
    await opened.write({ B4: 'Mine', B5: '36 Hz', B19: '71 ¤', C4: 'Mine too', HandOver: '2100 Hz' });
    await opened.write({ Width: '240 mm', MakeUp: '4 dB', AmpMinimum: '3 Ω', Target: '102 dB' });
    stages = await goTheWay(opened.workbook, opened.sheet().id, way);
  });

  test('is one sheet behind the other, in the order of a build', () => {
    expect(names()).toEqual(['Two drivers', 'Vented box', 'Front panel', 'First crossover', 'Saw list', 'Basket']);
    expect(stages.map(({ name }) => name)).toEqual(names().slice(1));
  });

  test.each([
    ['Vented box', 'B8', 'Mine'],
    ['Vented box', 'B9', '36 Hz'],
    ['Front panel', 'HandOver', '2100 Hz'],
    ['Front panel', 'Width', '240 mm'],
    ['Front panel', 'MakeUp', '4 dB'],
    ['First crossover', 'HandOver', '2100 Hz'],
    ['First crossover', 'Volume', '22.3 L'],
    ['First crossover', 'AmpMinimum', '3 Ω'],
    ['First crossover', 'C5', 'Mine too'],
    ['Saw list', 'B4', 'Mine'],
    ['Saw list', 'Width', '240 mm'],
    ['Saw list', 'Height', '360 mm'],
    ['Saw list', 'Thickness', '19 mm'],
    ['Saw list', 'Volume', '22.3 L'],
    ['Basket', 'B6', 'Mine'],
    ['Basket', 'B21', '71 ¤'],
    ['Basket', 'C6', 'Mine too'],
    ['Basket', 'Target', '102 dB'],
  ])('in “%s” %s is %s', (sheet, cell, wanted) => {
    expect(shown(sheet, cell)).toBe(wanted);
  });

  test('what a sheet on the way computes goes on as well: pad, port, coil, parts, price of the board', () => {
    expect(shown('First crossover', 'Pad')).toBe(shown('Front panel', 'Pad'));
    expect(shown('Saw list', 'PortLength')).toBe(shown('Vented box', 'PortLength'));
    expect(shown('Saw list', 'SeriesOhms')).toBe(shown('First crossover', 'SeriesOhms'));
    for (const part of ['WooferCoils', 'TweeterCoils', 'Capacitors', 'Resistors'])
      expect(shown('Basket', part)).toBe(shown('First crossover', part));
    expect(shown('Basket', 'BoardPrice')).toBe(shown('Saw list', 'BoardPrice'));
  });

  test('what is changed on the way arrives at the end when one goes it again, and no sheet is added', async () => {
    await write('Two drivers', { HandOver: '1900 Hz', B4: 'Another', B19: '80 ¤' });
    await write('Front panel', { Thickness: '22 mm' });
    await write('Saw list', { SheetPrice: '60 ¤' });
    const again = await goTheWay(opened.workbook, opened.sheet().id, way);
    expect(names()).toHaveLength(6);
    expect(again.every(({ stood }) => stood)).toBe(true);
    expect(shown('First crossover', 'HandOver')).toBe('1900 Hz');
    expect(shown('Saw list', 'Thickness')).toBe('22 mm');
    expect(shown('Basket', 'BoardPrice')).toBe(shown('Saw list', 'BoardPrice'));
    expect([shown('Basket', 'B6'), shown('Basket', 'B21')]).toEqual(['Another', '80 ¤']);
    expect(again[1]?.taken.map(({ text }) => text)).toEqual(['Another', '80 ¤', '1900 Hz']);
  });

  test('is taken back in one step', async () => {
    await opened.workbook.undo();
    expect(shown('Basket', 'B6')).toBe('Mine');
    expect(shown('Saw list', 'Thickness')).toBe('19 mm');
  });
});

test('a driver that is known whole on another sheet keeps what only some sheets ask for', async () => {
  opened = await openTemplate('two-driver-check');
  await goTheWay(opened.workbook, opened.sheet().id, way);
  expect(shown('Saw list', 'B15')).toBe('82 mm');
  const problems = opened.workbook.document.sheets.flatMap((sheet) =>
    [...sheet.cells.keys()].flatMap((cell) => {
      const value = opened.workbook.state(sheet.id, cell)?.value;
      return value?.kind === 'problem' ? [`${sheet.name} ${cell}: ${value.message}`] : [];
    }),
  );
  expect(problems).toEqual([]);
});

test('sheets behind the next check belong to that one', async () => {
  opened = await openTemplate('two-driver-check');
  const first = opened.sheet().id;
  await opened.workbook.do({ kind: 'duplicate-sheet', sheet: first, id: 'second' });
  await goTheWay(opened.workbook, 'second', way.slice(0, 1));
  await goTheWay(opened.workbook, first, way.slice(0, 1));
  expect(names()).toEqual(['Two drivers', 'Vented box 2', 'Two drivers 2', 'Vented box']);
});
