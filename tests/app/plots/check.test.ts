import { beforeAll, describe, expect, test } from 'vitest';
import { checkPlot } from '../../../src/app/plots/form/check.ts';
import { SheetCells } from '../../../src/app/plots/form/sheet-cells.ts';
import { draftOf, plotOf } from '../../../src/app/plots/form/draft.ts';
import { openTemplate } from '../../templates/open-template.ts';
import { templateList } from '../../../templates/list.ts';
import { check, draftWith, ownSheet, saidAt, wrongIn } from './composed.ts';

let cells: SheetCells;

beforeAll(async () => {
  ({ cells } = await ownSheet());
});

const curve = { cell: 'Response' };

describe('what is sound becomes a plot', () => {
  test('cells are written as the sheet calls them, labels that are missing found beside them', () => {
    const { plot, remarks } = check(cells, {
      series: [{ cell: ' $b$3 ' }, { cell: 'response', label: ' Small ' }],
      limits: [{ cell: 'b4', label: '', forbidden: 'below' }],
      marks: [{ cell: 'B5', label: '' }],
    });
    expect([...remarks]).toEqual([]);
    expect(plot).toEqual({
      id: 'plot',
      title: 'Plot',
      kind: 'curves',
      series: [
        { cell: 'B3', label: 'Response, large box', line: 'system' },
        { cell: 'Response', label: 'Small', line: 'system' },
      ],
      limits: [{ cell: 'B4', label: 'Lowest level', forbidden: 'below' }],
      marks: [{ cell: 'B5', label: 'Hand-over' }],
    });
  });

  test('a title that is missing is found from what is drawn, and asked for where nothing is', () => {
    expect(check(cells, { title: ' ', series: [curve] }).plot.title).toBe('Response, small box');
    expect(saidAt(check(cells, { title: '', series: [{}] }), 'title')).toContain('needs a title');
  });

  test('what its kind does not ask for is left out', () => {
    const { plot } = check(cells, {
      kind: 'bars',
      series: [{ cell: 'B13:B14', names: 'A13:A14', across: 'A8:A10' }],
      marks: [{ cell: 'B5', label: '' }],
      vertical: ['1 m', '2 m'],
    });
    expect(plot).toEqual({
      id: 'plot',
      title: 'Plot',
      kind: 'bars',
      series: [{ cell: 'B13:B14', label: 'Price', line: 'system', names: 'A13:A14' }],
      limits: [],
      marks: [],
    });
  });
});

describe('a series', () => {
  test.each([
    ['', 'Name a cell'],
    ['Foo', 'no cell and no name “Foo” on this sheet'],
    ['My box', 'a name holds no space'],
    ['Other!B2', 'write =Other!B2 into a cell here'],
    ['K900', 'K900 lies outside the 100 rows and 8 columns'],
    ['B2:B3', 'B2:B3 are 2 cells'],
    ['A1', 'A1 holds a text; a curve is wanted'],
    ['B5', 'B5 holds a frequency'],
  ])('of “%s” is refused with the remedy', (cell, words) => {
    const checked = check(cells, { series: [{ cell }] });
    expect(saidAt(checked, 'series.0.cell')).toContain(words);
    expect(wrongIn(checked)).toEqual(['series.0.cell']);
    expect(checked.plot.series).toEqual([]);
  });

  test('of a cell without a result is told, and no hindrance', () => {
    for (const [cell, words] of [
      ['H9', 'H9 is empty: it is drawn once it holds a curve.'],
      ['B16', 'B16 has no result now: The formula depends on itself'],
    ] as const) {
      const checked = check(cells, { series: [{ cell }] });
      expect(saidAt(checked, 'series.0.cell')).toContain(words);
      expect(wrongIn(checked)).toEqual([]);
      expect(checked.plot.series).toHaveLength(1);
    }
  });

  test('stands once, under a name of its own', () => {
    expect(saidAt(check(cells, { series: [curve, { cell: 'B2' }] }), 'series.1.cell')).toContain('drawn already');
    const named = check(cells, {
      series: [
        { ...curve, label: 'Box' },
        { cell: 'B3', label: 'Box' },
      ],
    });
    expect(saidAt(named, 'series.1.label')).toContain('the name of another curve');
  });
});

describe('a plot of columns', () => {
  const lines = (series: object) => check(cells, { kind: 'lines', series: [{ cell: 'B8:B10', ...series }] });

  test('wants a place for each value', () => {
    expect(saidAt(lines({}), 'series.0.across')).toContain('one for each cell of B8:B10');
    expect(saidAt(lines({ across: 'A8:A9' }), 'series.0.across')).toContain('A8:A9 is 2 cells, and B8:B10 3 cells');
    expect(saidAt(lines({ across: 'A1:A3' }), 'series.0.across')).toContain('A1:A3 holds no number');
    expect(saidAt(lines({ across: 'A8:A10', names: 'A8:A9' }), 'series.0.names')).toContain('2 names');
    expect(wrongIn(lines({ across: 'A8:A10' }))).toEqual([]);
  });

  test('measures one thing on each axis', () => {
    expect(saidAt(check(cells, { kind: 'bars', series: [{ cell: 'B4:B5' }] }), 'series.0.cell')).toContain(
      'B5 holds a frequency and B4 decibels',
    );
    const two = check(cells, { kind: 'bars', series: [{ cell: 'B13:B14' }, { cell: 'B8:B10' }] });
    expect(saidAt(two, 'series.1.cell')).toContain('one plot measures one thing');
  });

  test('is drawn of so many rows as can be seen', async () => {
    const own = await ownSheet({ rows: 10_001 });
    const long = check(own.cells, { kind: 'bars', series: [{ cell: 'B1:B10000' }] });
    expect(saidAt(long, 'series.0.cell')).toContain('B1:B10000 has 10000 cells; at most 100 are drawn');
  });

  test('to scale wants places and sizes, and what they lie on', () => {
    const drawn = check(cells, { kind: 'shapes', series: [{ cell: 'A23:D23' }], ground: ['B20', 'B21'] });
    expect(wrongIn(drawn)).toEqual([]);
    expect(drawn.plot.ground).toEqual(['B20', 'B21']);
    const wrong = check(cells, { kind: 'shapes', series: [{ cell: 'A23:B23' }], ground: ['', 'B5'] });
    expect(saidAt(wrong, 'series.0.cell')).toContain('A23:B23 has 2 columns');
    expect(saidAt(wrong, 'ground.0')).toContain('Name a cell');
    expect(saidAt(wrong, 'ground.1')).toContain('this axis shows length');
  });
});

test('limits and marks stand at numbers of their axis', () => {
  const checked = check(cells, {
    series: [curve],
    limits: [{ cell: 'B5', label: '', forbidden: 'above' }],
    marks: [
      { cell: 'A1', label: '' },
      { cell: 'B4', label: '' },
      { cell: 'B20:B21', label: '' },
    ],
  });
  expect(saidAt(checked, 'limits.0.cell')).toContain('B5 holds a frequency, and this axis shows decibels');
  expect(saidAt(checked, 'marks.0.cell')).toContain('A1 holds a text');
  expect(saidAt(checked, 'marks.1.cell')).toContain('name a cell with a frequency');
  expect(saidAt(checked, 'marks.2.cell')).toContain('2 cells');
});

describe('the ends of an axis', () => {
  const ends = (horizontal: readonly [string, string]) => check(cells, { series: [curve], horizontal });

  test('keep their unit; a bare number takes that of the axis, and it is said', () => {
    const checked = ends(['50', '2 kHz']);
    expect(checked.plot.horizontal).toEqual(['50 Hz', '2 kHz']);
    expect(saidAt(checked, 'horizontal.0')).toBe('Read as 50 Hz.');
  });

  test.each([
    [['20 Hz', ''], 'horizontal.1', 'this end too'],
    [['low', '2 kHz'], 'horizontal.0', '“low” is no quantity'],
    [['20 mm', '2 kHz'], 'horizontal.0', '“20 mm” is a length, and this axis shows a frequency'],
    [['2 kHz', '20 Hz'], 'horizontal.1', '20 Hz is not above 2 kHz'],
    [['0 Hz', '2 kHz'], 'horizontal.0', 'logarithmic'],
  ] as const)('%s are refused', (typed, at, words) => {
    const checked = ends(typed);
    expect(saidAt(checked, at)).toContain(words);
    expect(checked.plot.horizontal).toBeUndefined();
  });

  test('which is the better one is said of both axes', () => {
    const points = { kind: 'points', series: [{ cell: 'B8:B10', across: 'A8:A10' }] } as const;
    expect(check(cells, { ...points, best: ['low', 'high'] }).plot.best).toEqual(['low', 'high']);
    expect(saidAt(check(cells, { ...points, best: ['low', ''] }), 'best.1')).toContain('both axes');
  });
});

test.each(templateList.map(({ id }) => id))('nothing is wrong with the plots of %s', async (id) => {
  const { workbook } = await openTemplate(id);
  for (const sheet of workbook.document.sheets)
    for (const plot of sheet.plots) {
      const checked = checkPlot(new SheetCells(workbook, sheet), draftOf(plot), 'metric');
      expect(wrongIn(checked), plot.title).toEqual([]);
      expect(checked.plot).toEqual(plot);
    }
});

test('a form begins with a row to fill where a plot has lost its cells', () => {
  expect(draftOf(plotOf(draftWith({ series: [] }))).series).toHaveLength(1);
});
