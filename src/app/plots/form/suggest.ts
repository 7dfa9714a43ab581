import { kinds, type PlotDraft, type PlotKind, type SeriesDraft } from '../../../components/plot-form/data.ts';
import { nextLine } from '../../../components/plot-form/parts.ts';
import { rectangleOf, type Rectangle } from '../../../document/area.ts';
import { isRefusal } from '../../../document/command.ts';
import { labelOf } from '../../../document/labels.ts';
import type { Line } from '../../../document/types.ts';
import { columnBefore, columnsIn, headingAbove, labelFor } from './columns.ts';
import { emptyDraft, emptySeries } from './draft.ts';
import { isAlike } from './saying.ts';
import { isDrawing, tableColumns } from './tables.ts';
import type { Held, SheetCells } from './sheet-cells.ts';

/** More series than this are hard to tell apart; the reader adds what he wants. */
const MOST_SERIES = 6;
/** More numbers than this beside the curves were not selected to be marks. */
const MOST_MARKS = 3;

interface Seen {
  readonly cell: string;
  readonly held: Held;
}

const seen = (cells: SheetCells, area: Rectangle): Seen[] =>
  cells.filled(area).map((cell) => ({ cell, held: cells.held(cell) }));

const only = (all: readonly Seen[], kind: Held['kind']): Seen[] => all.filter(({ held }) => held.kind === kind);

/** The kinds of plot that suit what an area holds, the likeliest first. */
export function kindsOf(cells: SheetCells, area: Rectangle): readonly PlotKind[] {
  const all = seen(cells, area);
  const tables = all.flatMap(({ held }) => held.table ?? []);
  const numbers = only(all, 'number');
  const found: PlotKind[] = [];
  if (only(all, 'curve').length > 0) found.push('curves');
  if (only(all, 'window').length > 0) found.push('window');
  if (tables.some(isDrawing)) found.push('shapes');
  if (tables.some((table) => tableColumns(table).numbers.length > 0)) found.push('bars');
  if (tables.some((table) => tableColumns(table).numbers.length > 1)) found.push('points', 'lines');
  if (numbers.length > 0) {
    const table = columnsIn(cells, area);
    const isTall = table.body.bottom > table.body.top;
    const across = isTall ? (['lines', 'points'] as const) : [];
    found.push(...(table.numbers.length > 1 && isTall ? [...across, 'bars' as const] : ['bars' as const, ...across]));
    if (table.numbers.length > 2) found.push('shapes');
  }
  return [...new Set(found)];
}

/** A plot of what an area holds: its series with the labels beside the cells, and numbers among curves as limits and marks. */
export function suggested(cells: SheetCells, kind: PlotKind, area: Rectangle): Omit<PlotDraft, 'id'> {
  const all = seen(cells, area);
  const series = seriesOf(cells, kind, area, all);
  const draft = { ...emptyDraft, kind, series: series.length === 0 ? [emptySeries] : series };
  const curve = only(all, 'curve')[0];
  const numbers = only(all, 'number');
  const ofQuantity = (quantity: string | undefined) =>
    numbers
      .filter(({ held }) => held.quantity === quantity)
      .slice(0, MOST_MARKS)
      .map(({ cell }) => ({ cell: cells.referenceTo(rectangleOf(cell)), label: labelOf(cells.sheet, cell) }));
  const isCurves = kind === 'curves';
  return {
    ...draft,
    title: titleOf(cells, kind, series),
    marks: isCurves || kind === 'window' ? ofQuantity('frequency') : [],
    limits: isCurves
      ? ofQuantity(curve?.held.quantity).map((limit) => ({ ...limit, forbidden: forbiddenSide(limit.label) }))
      : [],
  };
}

/** “Lowest load” is passed downwards. */
const forbiddenSide = (label: string): 'above' | 'below' =>
  /\b(least|lowest|min|minimum|floor|from)\b/i.test(label) ? 'below' : 'above';

function seriesOf(cells: SheetCells, kind: PlotKind, area: Rectangle, all: readonly Seen[]): readonly SeriesDraft[] {
  const { sheet } = cells;
  const single = (wanted: readonly Seen[]): SeriesDraft[] =>
    lined(
      cells,
      wanted.slice(0, MOST_SERIES).map(({ cell }) => ({
        ...emptySeries,
        cell: cells.referenceTo(rectangleOf(cell)),
        label: labelOf(sheet, cell),
        left: rectangleOf(cell).left,
      })),
    );
  if (kind === 'curves') return single(only(all, 'curve'));
  if (kind === 'window') return single(only(all, 'window').slice(0, 1));
  const tabled = all.find(({ held }) => held.table && (kind !== 'shapes' || isDrawing(held.table)));
  if (tabled?.held.table) {
    const { numbers, words } = tableColumns(tabled.held.table);
    const [first = '', second = ''] = numbers;
    const [series] = single([tabled]);
    if (!series || kind === 'shapes') return series ? [series] : [];
    const names = words[0] ?? '';
    return kind === 'bars'
      ? [{ ...series, label: first, column: first, names }]
      : [{ ...series, label: second, column: second, across: first, names }];
  }
  return kind === 'shapes' ? shapesOf(cells, area) : ofColumns(cells, kind, area);
}

/** The row of words over a row of numbers. */
function wordsAbove(cells: SheetCells, row: Rectangle | undefined): Rectangle | undefined {
  if (!row || row.top === 0) return undefined;
  const above = { ...row, top: row.top - 1, bottom: row.top - 1 };
  return only(seen(cells, above), 'text').length > 0 ? above : undefined;
}

/** Whether two columns measure one thing. */
function isOfOne(cells: SheetCells, one: Rectangle, other: Rectangle): boolean {
  const [a, b] = [one, other].map((area) => only(seen(cells, area), 'number')[0]?.held.quantity);
  return a === undefined || b === undefined || isAlike(a, b);
}

/** Columns of numbers with the words beside them; the first column is the one along the bottom where one is wanted. */
function ofColumns(cells: SheetCells, kind: PlotKind, area: Rectangle): readonly SeriesDraft[] {
  const { numbers, words, body } = columnsIn(cells, area);
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (!first || !last) return [];
  const isAcross = kinds[kind].across;
  // One row of several numbers is read along the row.
  const isRow = body.top === body.bottom && numbers.length > 1 && !isAcross;
  const isApart = numbers.length > 1 && !isOfOne(cells, first, numbers[1] ?? first);
  const before = columnBefore(cells, body, 'number');
  const [across, values] = isAcross
    ? numbers.length > 1
      ? [first, numbers.slice(1)]
      : [before, numbers]
    : [undefined, isApart ? numbers.slice(1) : numbers];
  const areas = isRow
    ? [{ ...body, left: first.left, right: last.right }]
    : values.filter((each) => isOfOne(cells, each, values[0] ?? each));
  const names = isRow
    ? wordsAbove(cells, areas[0])
    : (words[0] ?? columnBefore(cells, body, 'text') ?? (isAcross ? undefined : isApart ? first : before));
  return lined(
    cells,
    areas.slice(0, MOST_SERIES).map((each) => ({
      ...emptySeries,
      cell: cells.referenceTo(each),
      label: labelFor(cells, each),
      across: across ? cells.referenceTo(across) : '',
      names: names ? cells.referenceTo(names) : '',
      left: each.left,
    })),
  );
}

function shapesOf(cells: SheetCells, area: Rectangle): readonly SeriesDraft[] {
  const { body, numbers } = columnsIn(cells, area);
  const first = numbers[0];
  if (!first) return [];
  const names = first.left > body.left ? first.left - 1 : Math.max(0, first.left - 1);
  return [{ ...emptySeries, cell: cells.referenceTo({ ...body, left: names }), label: labelFor(cells, body) }];
}

/** Each series in a line of its own: that of its column, or of the driver that its label speaks of. */
function lined(cells: SheetCells, series: readonly (SeriesDraft & { readonly left: number })[]): SeriesDraft[] {
  const drawn: SeriesDraft[] = [];
  for (const { left, ...each } of series) {
    const told = cells.sheet.columns[left]?.line ?? lineIn(each.label);
    const line = told ?? (series.length === 1 ? 'system' : nextLine(drawn));
    drawn.push({ ...each, line });
  }
  return drawn;
}

const lineIn = (label: string): Line | undefined =>
  (['woofer', 'tweeter', 'system'] as const).find((line) => label.toLowerCase().includes(line));

/** What a plot of these series would be called; empty where nothing says. */
export function titleOf(cells: SheetCells, kind: PlotKind, series: readonly SeriesDraft[]): string {
  const [one] = series;
  const labels = series.map(({ label }) => label).filter((label) => label !== '');
  const [first = '', second = ''] = labels;
  if (!one) return '';
  const found = cells.find(one.cell);
  if (one.column !== '' && !isRefusal(found)) return labelFor(cells, found.area);
  const across = cells.find(one.across);
  if (labels.length === 1 && kinds[kind].across && one.across !== '')
    return `${first} over ${lower(isRefusal(across) ? one.across : labelFor(cells, across.area))}`;
  const heading = isRefusal(found) ? '' : headingAbove(cells, found.area.top);
  // Nothing says what the cells are.
  if (first === one.cell) return heading || (kinds[kind].words.split(',')[0] ?? '');
  if (labels.length > 2) return heading || `${first} and ${String(labels.length - 1)} more`;
  return labels.length === 2 ? `${first} and ${lower(second)}` : first;
}

/** “Frequency” inside a sentence; what begins as a symbol does, stays: F3, SPL. */
const lower = (text: string): string =>
  /^\p{Lu}\p{Ll}{2,}/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
