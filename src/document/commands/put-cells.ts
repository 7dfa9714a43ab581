import { parseAddress, MOST_COLUMNS, MOST_ROWS } from '../../formula/address.ts';
import type { Applied, Refusal } from '../command.ts';
import { sheetOf, withSheet } from '../sheets.ts';
import type { Cell, Column, OctavoDocument, Sheet } from '../types.ts';

export type CellChanges = ReadonlyMap<string, Cell | undefined>;

/** The size of a sheet where a change of cells makes it grow, and where taking the change back makes it shrink again. */
export interface Extent {
  readonly rows: number;
  readonly columns: readonly Column[];
}

export const NEW_COLUMN: Column = { width: 108 };

/** Sets and removes whole cells; the sheet grows to hold them. */
export function putCells(
  document: OctavoDocument,
  id: string,
  changes: CellChanges,
  extent?: Extent,
): Applied | Refusal {
  const sheet = sheetOf(document, id);
  const grown = extent ?? extentWith(sheet, changes);
  if (grown.rows > MOST_ROWS || grown.columns.length > MOST_COLUMNS) {
    return { refused: `A sheet has at most ${MOST_ROWS} rows and ${MOST_COLUMNS} columns; this would need more.` };
  }
  const before = new Map<string, Cell | undefined>();
  const cells = new Map(sheet.cells);
  for (const [address, cell] of changes) {
    const held = sheet.cells.get(address);
    if (sameCell(held, cell)) continue;
    before.set(address, held);
    if (cell && !isBlank(cell)) cells.set(address, cell);
    else cells.delete(address);
  }
  const same = grown.rows === sheet.rows && grown.columns === sheet.columns;
  if (before.size === 0 && same) return { document, undo: { kind: 'put-cells', sheet: id, cells: before } };
  return {
    document: withSheet(document, { ...sheet, cells, ...grown }),
    undo: {
      kind: 'put-cells',
      sheet: id,
      cells: before,
      ...(same ? {} : { extent: { rows: sheet.rows, columns: sheet.columns } }),
    },
  };
}

/** The sheet's size, enlarged where a filled cell lies outside. */
function extentWith(sheet: Sheet, changes: CellChanges): Extent {
  let rows = sheet.rows;
  let columns = sheet.columns.length;
  for (const [address, cell] of changes) {
    const at = cell && !isBlank(cell) && parseAddress(address);
    if (!at) continue;
    rows = Math.max(rows, at.row + 1);
    columns = Math.max(columns, at.column + 1);
  }
  const missing = Math.min(columns, MOST_COLUMNS + 1) - sheet.columns.length;
  return {
    rows,
    columns: missing > 0 ? [...sheet.columns, ...Array.from({ length: missing }, () => NEW_COLUMN)] : sheet.columns,
  };
}

/** A cell with neither a text nor anything that says what it is for. */
export const isBlank = (cell: Cell): boolean =>
  cell.text === '' && !cell.unit && !cell.range && !cell.choices && !cell.look;

function sameCell(a: Cell | undefined, b: Cell | undefined): boolean {
  if (a === b) return true;
  const only = a && b ? undefined : (a ?? b);
  if (!a || !b) return only === undefined || isBlank(only);
  return (
    a.text === b.text &&
    a.unit === b.unit &&
    a.look === b.look &&
    a.origin === b.origin &&
    sameWords(a.range, b.range) &&
    sameWords(a.choices, b.choices)
  );
}

const sameWords = (a: readonly string[] | undefined, b: readonly string[] | undefined): boolean =>
  a === b ||
  (a !== undefined && b !== undefined && a.length === b.length && a.every((word, index) => word === b[index]));
