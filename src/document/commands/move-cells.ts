import type { Place } from '../../engine/types.ts';
import { contains, formatRectangle, moved, readRectangle, rectangleOf, type Rectangle } from '../area.ts';
import { isRefusal, type Area, type Refusal } from '../command.ts';
import type { Written } from '../formula-words.ts';
import { isOf, mapCorners, readdressed, rewriteFormulas, rewritePlot } from '../references.ts';
import { MOST_COLUMNS, MOST_ROWS, sheetOf, withSheet } from '../sheets.ts';
import type { Cell, OctavoDocument, Sheet } from '../types.ts';
import { NEW_COLUMN, putCells } from './put-cells.ts';

/** Cut and paste inside a sheet: whatever referred to the cells, or to a range wholly among them, follows; the moved
 *  formulas still read the cells that they read. */
export function moveCells(document: OctavoDocument, from: Area, to: Place): OctavoDocument | Refusal {
  if (from.sheet !== to.sheet) {
    return {
      refused: 'Cells can be moved inside their sheet only. Copy them to the other sheet, then clear them here.',
    };
  }
  const source = rectangleOf(from.cells);
  const { top, left } = rectangleOf(to.cell);
  const rows = top - source.top;
  const columns = left - source.left;
  if (rows === 0 && columns === 0) return document;
  const target = moved(source, rows, columns);
  if (target.bottom >= MOST_ROWS || target.right >= MOST_COLUMNS) {
    return { refused: `The cells would reach beyond ${MOST_ROWS} rows or ${MOST_COLUMNS} columns, which is the most.` };
  }
  const held = sheetOf(document, from.sheet);
  const rewritten = rewriteFormulas(document, (written, standing) =>
    followedReference(written, standing, held, source, rows, columns),
  );
  const grown = movedCells(rewritten, from.sheet, source, rows, columns);
  if (isRefusal(grown)) return grown;
  const sheet = sheetOf(grown, from.sheet);
  const follow = (cells: string): string => followedCells(cells, source, rows, columns);
  const missing = Math.max(0, target.right + 1 - sheet.columns.length);
  const followed: Sheet = {
    ...sheet,
    // Names of empty cells move too, so the sheet must hold the whole area.
    rows: Math.max(sheet.rows, target.bottom + 1),
    columns: [...sheet.columns, ...Array.from({ length: missing }, () => NEW_COLUMN)],
    names: new Map([...sheet.names].map(([name, cells]) => [name, follow(cells)])),
    plots: sheet.plots.map((plot) => rewritePlot(plot, (cell) => (sheet.names.has(cell) ? cell : follow(cell)))),
  };
  return movedBaseline(withSheet(grown, followed), from.sheet, source, rows, columns);
}

function followedReference(
  written: Written,
  standing: Sheet,
  sheet: Sheet,
  source: Rectangle,
  rows: number,
  columns: number,
): Written | undefined {
  if (written.kind !== 'cells' || !isOf(written, sheet, standing)) return written;
  const { first, last = first } = written;
  if (!contains(source, first.row, first.column) || !contains(source, last.row, last.column)) return written;
  return mapCorners(written, (corner) => ({ ...corner, row: corner.row + rows, column: corner.column + columns }));
}

function movedCells(
  document: OctavoDocument,
  id: string,
  source: Rectangle,
  rows: number,
  columns: number,
): OctavoDocument | Refusal {
  const { cells } = sheetOf(document, id);
  const target = moved(source, rows, columns);
  const changes = new Map<string, Cell | undefined>();
  const inside = (area: Rectangle): ReadonlyMap<string, Cell> =>
    readdressed(cells, (at) => (contains(area, at.row, at.column) ? at : undefined));
  for (const address of inside(target).keys()) changes.set(address, undefined);
  for (const address of inside(source).keys()) changes.set(address, undefined);
  const arriving = readdressed(inside(source), (at) => ({ row: at.row + rows, column: at.column + columns }));
  for (const [address, cell] of arriving) changes.set(address, cell);
  const outcome = putCells(document, id, changes);
  return isRefusal(outcome) ? outcome : outcome.document;
}

function followedCells(cells: string, source: Rectangle, rows: number, columns: number): string {
  const area = readRectangle(cells);
  const isInside = area && contains(source, area.top, area.left) && contains(source, area.bottom, area.right);
  return isInside ? formatRectangle(moved(area, rows, columns)) : cells;
}

function movedBaseline(
  document: OctavoDocument,
  id: string,
  source: Rectangle,
  rows: number,
  columns: number,
): OctavoDocument {
  const { baseline } = document;
  const texts = baseline?.cells.get(id);
  if (!baseline || !texts) return document;
  const target = moved(source, rows, columns);
  const staying = readdressed(texts, (at) =>
    contains(source, at.row, at.column) || contains(target, at.row, at.column) ? undefined : at,
  );
  const arriving = readdressed(texts, (at) =>
    contains(source, at.row, at.column) ? { row: at.row + rows, column: at.column + columns } : undefined,
  );
  const cells = new Map(baseline.cells).set(id, new Map([...staying, ...arriving]));
  return { ...document, baseline: { ...baseline, cells } };
}
