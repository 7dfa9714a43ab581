import { beforeAll, describe, expect, test } from 'vitest';
import { followed } from '../../../src/app/plots/form/follow.ts';
import { SheetOffers } from '../../../src/app/plots/form/offers.ts';
import { SheetCells } from '../../../src/app/plots/form/sheet-cells.ts';
import { suggested } from '../../../src/app/plots/form/suggest.ts';
import { drawingData } from '../../../src/app/plots/drawing-source.ts';
import type { Offers, PlotDraft } from '../../../src/components/plot-form/data.ts';
import { rectangleOf } from '../../../src/document/area.ts';
import { openTemplate } from '../../templates/open-template.ts';
import { check, draftWith, ownSheet } from './composed.ts';

let cells: SheetCells;

beforeAll(async () => {
  ({ cells } = await ownSheet());
});

function offered(draft: Parameters<typeof draftWith>[0]): Offers {
  const { measured, labels } = check(cells, draft);
  return new SheetOffers(cells).for(draftWith(draft), measured, labels);
}

describe('the fields offer', () => {
  test('curves by their names, and numbers of the quantity that the axis has', () => {
    const { series, limits, marks } = offered({ series: [{ cell: 'B2' }] });
    expect(series).toEqual([
      { cell: 'Response', words: 'Response, small box' },
      { cell: 'B3', words: 'Response, large box' },
    ]);
    const numbers = limits.map(({ cell }) => cell);
    expect([numbers.includes('B4'), numbers.includes('B5')]).toEqual([true, false]);
    expect(marks).toEqual([{ cell: 'B5', words: 'Hand-over' }]);
  });

  test('columns of numbers as they stand below one another', () => {
    const { series, beside } = offered({ kind: 'bars', series: [{ cell: 'B13:B14' }] });
    expect(series).toContainEqual({ cell: 'B13:B14', words: 'Price' });
    expect(series).toContainEqual({ cell: 'Levels', words: 'Level' });
    expect(beside).toContainEqual({ cell: 'A12:A14', words: 'Part' });
  });

  test('the kinds that suit the cells; without cells those of the sheet, and on an empty one all', async () => {
    expect(offered({ series: [{ cell: 'B2' }] }).kinds).toEqual(['curves']);
    expect(offered({ kind: 'bars', series: [{ cell: 'B13:B14' }] }).kinds).toEqual(['bars', 'points', 'lines']);
    expect(offered({ series: [{}] }).kinds).toEqual(['curves', 'bars', 'points', 'lines', 'shapes']);
    const own = await ownSheet({ cells: new Map(), names: new Map() });
    const draft = draftWith({ series: [{}] });
    const nothing = { values: undefined, bottom: undefined };
    expect(new SheetOffers(own.cells).for(draft, nothing, new Map()).kinds).toHaveLength(6);
  });

  test('the columns of a table', async () => {
    const { workbook, sheet } = await openTemplate('saw-list');
    const table = new SheetCells(workbook, sheet());
    const draft = { id: 'plot', ...suggested(table, 'bars', rectangleOf('C54')) };
    const { columns } = new SheetOffers(table).for(draft, { values: undefined, bottom: undefined }, new Map());
    expect(columns[0]).toEqual({ numbers: ['Count', 'Length', 'Width', 'Thickness'], words: ['Part'] });
    expect(draft.series).toMatchObject([{ label: 'Count', column: 'Count', names: 'Part' }]);
  });
});

describe('what was suggested and not touched', () => {
  const begun = (kind: PlotDraft['kind'], area: string): PlotDraft => ({
    id: 'plot',
    ...suggested(cells, kind, rectangleOf(area)),
  });

  test('follows another cell, with the title', () => {
    const draft = begun('curves', 'B2');
    const [series] = draft.series;
    const next = followed(cells, draft, { ...draft, series: [{ ...series!, cell: 'B3' }] }, undefined);
    expect(next).toMatchObject({ title: 'Response, large box', series: [{ label: 'Response, large box' }] });
    const named = { ...draft, title: 'Mine', series: [{ ...series!, label: 'Box' }] };
    const kept = followed(cells, named, { ...named, series: [{ ...named.series[0]!, cell: 'B3' }] }, undefined);
    expect(kept).toMatchObject({ title: 'Mine', series: [{ cell: 'B3', label: 'Box' }] });
  });

  test('follows another kind, which draws the same cells in its own way', () => {
    const source = rectangleOf('A7:B10');
    const draft = begun('lines', 'A7:B10');
    const bars = followed(cells, draft, { ...draft, kind: 'bars' }, source);
    expect(bars).toMatchObject({ title: 'Level', series: [{ across: '', names: 'A8:A10' }] });
    const named = { ...draft, title: 'Mine' };
    expect(followed(cells, named, { ...named, kind: 'bars' }, source).title).toBe('Mine');
  });

  test('follows the cell of a mark', () => {
    const draft = begun('curves', 'B2:B5');
    const next = followed(cells, draft, { ...draft, marks: [{ ...draft.marks[0]!, cell: 'B4' }] }, undefined);
    expect(next.marks).toEqual([{ cell: 'B4', label: 'Lowest level' }]);
  });
});

test('bars of a single row have the names of the row above', async () => {
  const own = await ownSheet({
    cells: new Map(
      Object.entries({ B1: 'Woofer', C1: 'Tweeter', A2: 'Price', B2: '62 ¤', C2: '34 ¤' }).map(([cell, text]) => [
        cell,
        { text },
      ]),
    ),
    names: new Map(),
  });
  const draft = suggested(own.cells, 'bars', rectangleOf('B2:C2'));
  expect(draft).toMatchObject({ title: 'Price', series: [{ cell: 'B2:C2', names: 'B1:C1' }] });
  const { plot } = check(own.cells, draft);
  const data = drawingData(own.workbook, own.sheet, plot);
  expect(data?.form === 'bars' && data.bars.map(({ name }) => name)).toEqual(['Woofer', 'Tweeter']);
});
