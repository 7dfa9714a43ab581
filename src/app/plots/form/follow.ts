import type { PlotDraft, PlotKind, SeriesDraft } from '../../../components/plot-form/data.ts';
import type { Rectangle } from '../../../document/area.ts';
import { isRefusal } from '../../../document/command.ts';
import { labelFor } from './columns.ts';
import type { SheetCells } from './sheet-cells.ts';
import { suggested, titleOf } from './suggest.ts';

/** A draft after something was typed: what was suggested and not touched follows the cells and the kind that are typed now.
 *  @param source - The cells that the draft began with. */
export function followed(
  cells: SheetCells,
  before: PlotDraft,
  draft: PlotDraft,
  source: Rectangle | undefined,
): PlotDraft {
  if (before.kind !== draft.kind) return source ? asKind(cells, before.kind, draft, source) : draft;
  const series = draft.series.map((part, index) => followedSeries(cells, draft.kind, before.series[index], part));
  const next = {
    ...draft,
    series,
    limits: draft.limits.map((part, index) => followedMark(cells, before.limits[index], part)),
    marks: draft.marks.map((part, index) => followedMark(cells, before.marks[index], part)),
  };
  const isSuggested = draft.title === before.title && draft.title === titleOf(cells, before.kind, before.series);
  return isSuggested ? { ...next, title: titleOf(cells, draft.kind, series) } : next;
}

/** Another kind draws the same cells in its own way. */
function asKind(cells: SheetCells, before: PlotKind, draft: PlotDraft, source: Rectangle): PlotDraft {
  const [was, now] = [suggested(cells, before, source), suggested(cells, draft.kind, source)];
  const parts = ['title', 'series', 'limits', 'marks'] as const;
  const untouched = parts.filter((part) => JSON.stringify(was[part]) === JSON.stringify(draft[part]));
  return { ...draft, ...Object.fromEntries(untouched.map((part) => [part, now[part]])) };
}

function followedSeries(
  cells: SheetCells,
  kind: PlotKind,
  before: SeriesDraft | undefined,
  part: SeriesDraft,
): SeriesDraft {
  if (!before || before.cell === part.cell) return part;
  const suggestion = (typed: string): SeriesDraft | undefined => {
    const found = cells.find(typed);
    return isRefusal(found) ? undefined : suggested(cells, kind, found.area).series[0];
  };
  const [was, now] = [suggestion(before.cell), suggestion(part.cell)];
  const next = (field: 'label' | 'column' | 'across' | 'names'): string =>
    part[field] === (was?.[field] ?? '') ? (now?.[field] ?? '') : part[field];
  return { ...part, label: next('label'), column: next('column'), across: next('across'), names: next('names') };
}

function followedMark<P extends { readonly cell: string; readonly label: string }>(
  cells: SheetCells,
  before: P | undefined,
  part: P,
): P {
  if (!before || before.cell === part.cell) return part;
  const label = (typed: string): string => {
    const found = cells.find(typed);
    return isRefusal(found) ? '' : labelFor(cells, found.area);
  };
  return part.label === label(before.cell) ? { ...part, label: label(part.cell) } : part;
}
