import { formatAddress } from '../formula/address.ts';

export interface CellAt {
  readonly row: number;
  readonly column: number;
}

/** What is selected in a grid: a rectangle between two corners; `focus` is the active cell's corner. */
export interface Selection {
  readonly anchor: CellAt;
  readonly focus: CellAt;
}

export const START: Selection = { anchor: { row: 0, column: 0 }, focus: { row: 0, column: 0 } };

/** The rectangle in text: `B4`, or `B4:C18`. */
export function cellsOf({ anchor, focus }: Selection): string {
  const first = formatAddress({ row: Math.min(anchor.row, focus.row), column: Math.min(anchor.column, focus.column) });
  const last = formatAddress({ row: Math.max(anchor.row, focus.row), column: Math.max(anchor.column, focus.column) });
  return first === last ? first : `${first}:${last}`;
}
