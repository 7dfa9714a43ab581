import { MOST_COLUMNS, MOST_ROWS } from '../../formula/address.ts';
import { formatRectangle, readRectangle, type Rectangle } from '../area.ts';
import type { Axis, Refusal } from '../command.ts';
import type { Corner, Written } from '../formula-words.ts';
import { isOf, readdressed, rewriteFormulas, rewriteShown } from '../references.ts';
import { sheetOf, withSheet } from '../sheets.ts';
import type { OctavoDocument, Sheet } from '../types.ts';
import { NEW_COLUMN } from './put-cells.ts';

/** Rows or columns that come in before the line `at`, or that go from there on. */
export interface LineEdit {
  readonly kind: 'insert' | 'delete';
  readonly sheet: string;
  readonly axis: Axis;
  readonly at: number;
  readonly count: number;
}

export function insertLines(document: OctavoDocument, edit: LineEdit): OctavoDocument | Refusal {
  const sheet = sheetOf(document, edit.sheet);
  const { length, most } = sizeOf(sheet, edit.axis);
  if (edit.at < 0 || edit.at > length || edit.count < 1) throw new Error(`Nothing can be inserted at ${edit.at}.`);
  if (length + edit.count > most) {
    return {
      refused: `A sheet has at most ${most} ${edit.axis}; with ${edit.count} more it would have ${length + edit.count}.`,
    };
  }
  return reshaped(document, sheet, edit);
}

export function deleteLines(document: OctavoDocument, edit: LineEdit): OctavoDocument | Refusal {
  const sheet = sheetOf(document, edit.sheet);
  const { length } = sizeOf(sheet, edit.axis);
  if (edit.at < 0 || edit.count < 1 || edit.at + edit.count > length) {
    throw new Error(`Sheet ${sheet.name} has no ${edit.count} ${edit.axis} at ${edit.at}.`);
  }
  if (edit.count === length)
    return { refused: `A sheet keeps at least one of its ${edit.axis}; clear the cells instead.` };
  return reshaped(document, sheet, edit);
}

const sizeOf = (sheet: Sheet, axis: Axis): { length: number; most: number } =>
  axis === 'rows' ? { length: sheet.rows, most: MOST_ROWS } : { length: sheet.columns.length, most: MOST_COLUMNS };

function reshaped(document: OctavoDocument, { id }: Sheet, edit: LineEdit): OctavoDocument {
  const held = sheetOf(document, id);
  const rewritten = rewriteFormulas(document, (written, standing) =>
    written.kind === 'cells' && isOf(written, held, standing) ? followedReference(written, edit) : written,
  );
  const sheet = sheetOf(rewritten, id);
  const change = edit.kind === 'insert' ? edit.count : -edit.count;
  const names = new Map(
    [...sheet.names].flatMap(([name, cells]) => {
      const followed = followedCells(cells, edit);
      return followed === undefined ? [] : [[name, followed] as const];
    }),
  );
  const reshapedSheet: Sheet = {
    ...sheet,
    rows: edit.axis === 'rows' ? sheet.rows + change : sheet.rows,
    columns: edit.axis === 'columns' ? splicedColumns(sheet, edit) : sheet.columns,
    cells: followedKeys(sheet.cells, edit),
    names,
    ...rewriteShown(sheet, (cell) => (sheet.names.has(cell) ? cell : followedCells(cell, edit))),
  };
  const moved = withSheet(rewritten, reshapedSheet);
  const remembered = moved.baseline?.cells.get(id);
  if (!moved.baseline || !remembered) return moved;
  const cells = new Map(moved.baseline.cells).set(id, followedKeys(remembered, edit));
  return { ...moved, baseline: { ...moved.baseline, cells } };
}

const splicedColumns = (sheet: Sheet, { kind, at, count }: LineEdit): Sheet['columns'] =>
  kind === 'insert'
    ? sheet.columns.toSpliced(at, 0, ...Array.from({ length: count }, () => NEW_COLUMN))
    : sheet.columns.toSpliced(at, count);

const followedKeys = <T>(cells: ReadonlyMap<string, T>, edit: LineEdit): ReadonlyMap<string, T> =>
  readdressed(cells, (at) => {
    const line = followedLine(edit.axis === 'rows' ? at.row : at.column, edit);
    if (line === undefined) return undefined;
    return edit.axis === 'rows' ? { ...at, row: line } : { ...at, column: line };
  });

/** Where a line is afterwards; nothing where it is gone. */
function followedLine(line: number, { kind, at, count }: LineEdit): number | undefined {
  if (line < at) return line;
  if (kind === 'insert') return line + count;
  return line < at + count ? undefined : line - count;
}

/** Where cells are afterwards: an area grows with lines inside it and shrinks with lines taken from it. Anything that is
 *  no address, as a name, stays. */
function followedCells(cells: string, edit: LineEdit): string | undefined {
  const area = readRectangle(cells);
  if (!area) return cells;
  const [first, last] = edit.axis === 'rows' ? [area.top, area.bottom] : [area.left, area.right];
  const span = followedSpan(first, last, edit);
  if (!span) return undefined;
  const followed: Rectangle =
    edit.axis === 'rows' ? { ...area, top: span[0], bottom: span[1] } : { ...area, left: span[0], right: span[1] };
  return formatRectangle(followed);
}

/** The same for a reference in a formula; its corners keep their order and what is fixed. */
function followedReference(written: Written & { kind: 'cells' }, edit: LineEdit): Written | undefined {
  const axis = edit.axis === 'rows' ? 'row' : 'column';
  const { first, last = first } = written;
  const isTurned = first[axis] > last[axis];
  const [low, high] = isTurned ? [last, first] : [first, last];
  const span = followedSpan(low[axis], high[axis], edit);
  if (!span) return undefined;
  if (span[0] === low[axis] && span[1] === high[axis]) return written;
  const at = (corner: Corner, line: number): Corner => ({ ...corner, [axis]: line });
  const [start, end] = isTurned ? [span[1], span[0]] : span;
  return { ...written, first: at(first, start), ...(written.last && { last: at(written.last, end) }) };
}

function followedSpan(first: number, last: number, { kind, at, count }: LineEdit): [number, number] | undefined {
  const end = at + count;
  if (kind === 'insert') return [first >= at ? first + count : first, last >= at ? last + count : last];
  if (first >= at && last < end) return undefined;
  const start = first < at ? first : Math.max(first, end) - count;
  return [start, last < at ? last : last < end ? at - 1 : last - count];
}
