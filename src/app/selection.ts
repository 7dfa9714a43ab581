import type { Selection } from '../components/grid/model.ts';
import type { Sheet } from '../document/types.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';

export const START: Selection = { anchor: { row: 0, column: 0 }, focus: { row: 0, column: 0 } };

/** Where to begin on a sheet: at the number that its first plot is about, otherwise at the first cell. */
export function startOf(sheet: Sheet | undefined): Selection {
  const reference = sheet?.plots.find(({ marks }) => marks.length > 0)?.marks[0]?.cell ?? '';
  const at = parseAddress(sheet?.names.get(reference) ?? reference);
  return at ? { anchor: at, focus: at } : START;
}

/** The rectangle in text: `B4`, or `B4:C18`. */
export function cellsOf({ anchor, focus }: Selection): string {
  const first = formatAddress({ row: Math.min(anchor.row, focus.row), column: Math.min(anchor.column, focus.column) });
  const last = formatAddress({ row: Math.max(anchor.row, focus.row), column: Math.max(anchor.column, focus.column) });
  return first === last ? first : `${first}:${last}`;
}
