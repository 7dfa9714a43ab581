import { beforeAll, describe, expect, test } from 'vitest';
import type { SheetCells } from '../../../src/app/plots/form/sheet-cells.ts';
import { kindsOf, suggested } from '../../../src/app/plots/form/suggest.ts';
import type { PlotDraft, PlotKind } from '../../../src/components/plot-form/data.ts';
import { rectangleOf } from '../../../src/document/area.ts';
import { ownSheet } from './composed.ts';

let cells: SheetCells;

beforeAll(async () => {
  ({ cells } = await ownSheet());
});

const kinds = (area: string): readonly PlotKind[] => kindsOf(cells, rectangleOf(area));
const of = (kind: PlotKind, area: string): Omit<PlotDraft, 'id'> => suggested(cells, kind, rectangleOf(area));

describe('the kinds that are offered', () => {
  test.each([
    ['a curve', 'B2', ['curves']],
    ['curves among numbers', 'A2:B3', ['curves']],
    ['one number', 'B13', ['bars']],
    ['a column of numbers', 'B13:B14', ['bars', 'lines', 'points']],
    ['columns of numbers', 'A7:B10', ['lines', 'points', 'bars']],
    ['a row with a name, places and a size', 'A23:D23', ['bars', 'shapes']],
    ['a text', 'A1', []],
    ['nothing', 'H9', []],
    ['a loop', 'B16', []],
  ] as const)('suit %s', (_, area, expected) => {
    expect(kinds(area)).toEqual(expected);
  });
});

describe('a plot of curves', () => {
  test('is called as the cell is, by its name where it has one', () => {
    expect(of('curves', 'B2')).toMatchObject({
      title: 'Response, small box',
      series: [{ cell: 'Response', label: 'Response, small box', line: 'system' }],
      limits: [],
      marks: [],
    });
  });

  test('draws each in a line of its own, with numbers that were selected too as limits and marks', () => {
    expect(of('curves', 'A2:B5')).toMatchObject({
      series: [
        { cell: 'Response', line: 'woofer' },
        { cell: 'B3', line: 'tweeter' },
      ],
      limits: [{ cell: 'B4', label: 'Lowest level', forbidden: 'below' }],
      marks: [{ cell: 'B5', label: 'Hand-over' }],
    });
  });

  test('takes the line of the column', async () => {
    const columns = cells.sheet.columns.with(1, { width: 100, title: 'Tweeter', line: 'tweeter' });
    const own = await ownSheet({ columns });
    expect(suggested(own.cells, 'curves', rectangleOf('B2')).series[0]?.line).toBe('tweeter');
  });
});

describe('a plot of numbers', () => {
  test('puts the first column along the bottom, and calls the others as their headings do', () => {
    expect(of('lines', 'A7:C10')).toMatchObject({
      title: 'Level and floor',
      series: [
        { cell: 'Levels', label: 'Level', across: 'A8:A10' },
        { cell: 'C8:C10', label: 'Floor', across: 'A8:A10' },
      ],
    });
    expect(of('lines', 'A7:B10').title).toBe('Level over distance');
  });

  test('finds what stands beside a single column', () => {
    expect(of('lines', 'B8:B10').series).toMatchObject([{ cell: 'Levels', across: 'A8:A10', names: '' }]);
    expect(of('bars', 'B13:B14').series).toMatchObject([{ cell: 'B13:B14', label: 'Price', names: 'A13:A14' }]);
  });

  test('draws bars of one quantity alone; the column before names them', () => {
    expect(of('bars', 'A7:C10').series).toMatchObject([
      { cell: 'Levels', names: 'A8:A10' },
      { cell: 'C8:C10', names: 'A8:A10' },
    ]);
  });

  test('reads a single row along the row', () => {
    expect(of('bars', 'A23:D23').series).toMatchObject([{ cell: 'B23:D23', label: 'Woofer hole' }]);
  });
});

test('a drawing takes the names with the places', () => {
  expect(of('shapes', 'B23:D23').series).toMatchObject([{ cell: 'A23:D23' }]);
});
