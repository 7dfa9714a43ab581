import { MOST_COLUMNS, MOST_ROWS } from '../../formula/address.ts';
import type { Place } from '../../engine/types.ts';
import { contains, formatRectangle, moved, readRectangle, rectangleOf, type Rectangle } from '../area.ts';
import type { Area, Refusal } from '../command.ts';
import type { Written } from '../formula-words.ts';
import { isOf, mapCorners, readdressed, rewriteFormulas, rewriteShown } from '../references.ts';
import { sameWord, sheetOf, withSheet } from '../sheets.ts';
import type { OctavoDocument, Sheet } from '../types.ts';
import { NEW_COLUMN } from './put-cells.ts';

/** Where cells go: from an area of one sheet, by a distance, to the same sheet or another. */
interface Move {
  readonly from: Sheet;
  readonly to: Sheet;
  readonly source: Rectangle;
  readonly target: Rectangle;
  readonly rows: number;
  readonly columns: number;
  /** Names of cells that go to another sheet; they go with them. */
  readonly names: ReadonlyMap<string, string>;
}

/** Cut and paste: whatever referred to the cells, or to a range or a name wholly among them, follows; the moved formulas
 *  still read the cells that they read. */
export function moveCells(document: OctavoDocument, area: Area, place: Place): OctavoDocument | Refusal {
  const move = moveOf(sheetOf(document, area.sheet), sheetOf(document, place.sheet), area.cells, place.cell);
  const { from, to, target } = move;
  if (from === to && move.rows === 0 && move.columns === 0) return document;
  if (target.bottom >= MOST_ROWS || target.right >= MOST_COLUMNS) {
    return { refused: `The cells would reach beyond ${MOST_ROWS} rows or ${MOST_COLUMNS} columns, which is the most.` };
  }
  for (const name of move.names.keys()) {
    const taken = [...to.names.keys()].find((each) => sameWord(each, name));
    if (taken !== undefined) {
      return {
        refused: `The cells take their name "${name}" along, but "${to.name}" has that name already; rename one.`,
      };
    }
  }
  const rewritten = rewriteFormulas(document, (written, standing, address) =>
    followed(written, standing, address, move),
  );
  return movedBaseline(movedSheets(rewritten, move), move);
}

function moveOf(from: Sheet, to: Sheet, cells: string, first: string): Move {
  const source = rectangleOf(cells);
  const start = rectangleOf(first);
  const rows = start.top - source.top;
  const columns = start.left - source.left;
  const leaving = from === to ? [] : [...from.names].filter(([, named]) => isInside(named, source));
  return { from, to, source, target: moved(source, rows, columns), rows, columns, names: new Map(leaving) };
}

function isInside(cells: string, source: Rectangle): boolean {
  const area = readRectangle(cells);
  return area !== undefined && contains(source, area.top, area.left) && contains(source, area.bottom, area.right);
}

/** A reference after the move; `standing` and `address` say where its formula stands before it. */
function followed(written: Written, standing: Sheet, address: string, move: Move): Written | undefined {
  const { from, to, source, rows, columns, names } = move;
  if (!isOf(written, from, standing)) return written;
  const home = standing.id === from.id && isInside(address, source) ? to : standing;
  const goes =
    written.kind === 'cells'
      ? contains(source, written.first.row, written.first.column) &&
        contains(source, (written.last ?? written.first).row, (written.last ?? written.first).column)
      : [...names.keys()].some((name) => sameWord(name, written.name));
  const lies = goes ? to : from;
  const isPlain = written.sheet === undefined && home.id === lies.id;
  const placed = isPlain || (written.sheet !== undefined && from === to) ? written : { ...written, sheet: lies.name };
  if (!goes || placed.kind === 'name') return lies === from && home.id === standing.id ? written : placed;
  return mapCorners(placed, (corner) => ({ ...corner, row: corner.row + rows, column: corner.column + columns }));
}

function movedSheets(document: OctavoDocument, move: Move): OctavoDocument {
  const { from, to, source, target, names } = move;
  const left = sheetOf(document, from.id);
  const arriving = leavingOf(left.cells, move);
  const without = withSheet(document, {
    ...left,
    cells: stayingOf(left.cells, source),
    names: new Map(
      [...left.names].flatMap(([name, cells]) =>
        names.has(name) ? [] : [[name, from === to ? follow(cells, move) : cells]],
      ),
    ),
    ...rewriteShown(left, (cell) => {
      if (left.names.has(cell)) return names.has(cell) ? undefined : cell;
      if (from === to) return follow(cell, move);
      return isInside(cell, source) ? undefined : cell;
    }),
  });
  const entered = sheetOf(without, to.id);
  const missing = Math.max(0, target.right + 1 - entered.columns.length);
  return withSheet(without, {
    ...entered,
    // Names of empty cells move too, so the sheet must hold the whole area.
    rows: Math.max(entered.rows, target.bottom + 1),
    columns: [...entered.columns, ...Array.from({ length: missing }, () => NEW_COLUMN)],
    cells: new Map([...stayingOf(entered.cells, target), ...arriving]),
    names: new Map([...entered.names, ...[...names].map(([name, cells]) => [name, follow(cells, move)] as const)]),
  });
}

const stayingOf = <T>(cells: ReadonlyMap<string, T>, area: Rectangle): ReadonlyMap<string, T> =>
  readdressed(cells, (at) => (contains(area, at.row, at.column) ? undefined : at));

const leavingOf = <T>(cells: ReadonlyMap<string, T>, { source, rows, columns }: Move): ReadonlyMap<string, T> =>
  readdressed(cells, (at) =>
    contains(source, at.row, at.column) ? { row: at.row + rows, column: at.column + columns } : undefined,
  );

function follow(cells: string, { source, rows, columns }: Move): string {
  const area = readRectangle(cells);
  return area && isInside(cells, source) ? formatRectangle(moved(area, rows, columns)) : cells;
}

function movedBaseline(document: OctavoDocument, move: Move): OctavoDocument {
  const { baseline } = document;
  const texts = baseline?.cells.get(move.from.id);
  if (!baseline || !texts) return document;
  const cells = new Map(baseline.cells).set(move.from.id, stayingOf(texts, move.source));
  const there = cells.get(move.to.id);
  if (there) cells.set(move.to.id, new Map([...stayingOf(there, move.target), ...leavingOf(texts, move)]));
  return { ...document, baseline: { ...baseline, cells } };
}
