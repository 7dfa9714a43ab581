import { quantities, type QuantityName } from '../../../../functions/quantities.ts';
import { kinds, type PlotDraft, type Remarks } from '../../../components/plot-form/data.ts';
import { isRefusal } from '../../../document/command.ts';
import type { Plot, UnitSystem } from '../../../document/types.ts';
import { formatAddress } from '../../../formula/address.ts';
import { checkEnds } from './ends.ts';
import { labelFor } from './columns.ts';
import { plotOf } from './draft.ts';
import { isAlike, Saying } from './saying.ts';
import { checkSeries } from './series.ts';
import { noun, type SheetCells } from './sheet-cells.ts';
import { titleOf } from './suggest.ts';

/** A draft, looked through. */
export interface Checked {
  /** What of it can be drawn. */
  readonly plot: Plot;
  readonly remarks: Remarks;
  /** What its values measure, and what lies along the bottom. */
  readonly measured: { readonly values: QuantityName | undefined; readonly bottom: QuantityName | undefined };
  /** What series, limits and marks are called where nothing is typed, by the field of the label. */
  readonly labels: ReadonlyMap<string, string>;
}

/** Looks a draft through: what is wrong is said at its field with the remedy, and what is sound can be drawn. */
export function checkPlot(cells: SheetCells, draft: PlotDraft, system: UnitSystem): Checked {
  const say = new Saying();
  const fields = kinds[draft.kind];
  const series = checkSeries(cells, draft, say);
  const title = titleOf(
    cells,
    draft.kind,
    series.map((each) => each.series),
  );
  say.labels.set('title', title);
  if (draft.title.trim() === '' && title === '')
    say.wrong('title', 'A plot needs a title, to be told from the others.');
  const values = series.find(({ quantity }) => quantity !== undefined)?.quantity;
  const bottom = fields.across ? series.find(({ across }) => across !== undefined)?.across : 'frequency';
  const [along, upwards] = draft.kind === 'bars' ? [values, undefined] : [bottom, values];
  const { best, ground } = draft;
  if (fields.best && (best[0] === '') !== (best[1] === ''))
    say.wrong(`best.${best[0] === '' ? '0' : '1'}`, 'Say it of both axes, or of neither.');
  const plot = plotOf({
    ...draft,
    title: draft.title.trim() || title,
    series: series.map((each) => each.series),
    limits: fields.limits ? checkMarked(cells, draft, 'limits', values, say) : [],
    marks: fields.marks ? checkMarked(cells, draft, 'marks', bottom, say) : [],
    horizontal: fields.horizontal ? checkEnds(draft, 'horizontal', along, system, say) : ['', ''],
    vertical: fields.vertical ? checkEnds(draft, 'vertical', upwards, system, say) : ['', ''],
    ground: fields.ground ? [groundAt(cells, ground[0], 0, say), groundAt(cells, ground[1], 1, say)] : ['', ''],
  });
  return { plot, remarks: say.remarks, measured: { values, bottom }, labels: say.labels };
}

/** Limits or marks whose cells hold a number of the axis, or may hold one later. */
function checkMarked<L extends 'limits' | 'marks'>(
  cells: SheetCells,
  draft: PlotDraft,
  list: L,
  quantity: QuantityName | undefined,
  say: Saying,
): PlotDraft[L] {
  const sound = draft[list].flatMap((part, index) => {
    const at = `${list}.${String(index)}`;
    const cell = numberAt(
      cells,
      part.cell,
      quantity,
      { at: `${at}.cell`, what: list === 'limits' ? 'limit' : 'mark' },
      say,
    );
    if (cell === undefined) return [];
    const found = cells.find(part.cell);
    const label = isRefusal(found) ? '' : labelFor(cells, found.area);
    say.labels.set(`${at}.label`, label);
    return [{ ...part, cell, label: part.label.trim() || label }];
  });
  return sound as unknown as PlotDraft[L];
}

/** The cell of a number, as a plot names it; nothing where it is none. */
function numberAt(
  cells: SheetCells,
  typed: string,
  quantity: QuantityName | undefined,
  { at, what }: { readonly at: string; readonly what: string },
  say: Saying,
): string | undefined {
  const found = cells.findOne(typed);
  if (isRefusal(found)) return say.wrong(at, found.refused);
  const {
    kind,
    words,
    quantity: held = 'ratio',
  } = cells.held(formatAddress({ row: found.area.top, column: found.area.left }));
  if (kind === 'nothing') say.note(at, `${found.reference} is empty: the ${what} is drawn once it holds a number.`);
  else if (kind === 'problem') say.note(at, `${found.reference} has no result now: ${words}`);
  else if (kind !== 'number')
    return say.wrong(at, `${found.reference} holds ${words}; a ${what} stands at a number, so name a cell with one.`);
  else if (quantity && !isAlike(held, quantity))
    return say.wrong(
      at,
      `${found.reference} holds ${words}, and this axis shows ${noun(quantity)}: name a cell with ${quantities[quantity].noun}.`,
    );
  return found.reference;
}

function groundAt(cells: SheetCells, typed: string, end: 0 | 1, say: Saying): string {
  return numberAt(cells, typed, 'length', { at: `ground.${String(end)}`, what: 'drawing' }, say) ?? '';
}
