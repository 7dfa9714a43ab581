import type { Selection } from '../../components/grid/model.ts';
import type { Sheet } from '../../document/types.ts';
import { formatAddress, parseAddress } from '../../formula/address.ts';

export const START: Selection = { anchor: { row: 0, column: 0 }, focus: { row: 0, column: 0 } };

/** Where to begin on a sheet: at the input that its plots mark, otherwise at its first named input with a range. */
export function startOf(sheet: Sheet | undefined): Selection {
  if (!sheet) return START;
  const marked = sheet.plots.flatMap(({ marks }) => marks.map(({ cell }) => sheet.names.get(cell) ?? cell));
  const start = [...marked, ...sheet.names.values()].find((cell) => sheet.cells.get(cell)?.range);
  const at = parseAddress(start ?? '');
  return at ? { anchor: at, focus: at } : START;
}

/** The rectangle in text: `B4`, or `B4:C18`. */
export function cellsOf({ anchor, focus }: Selection): string {
  const first = formatAddress({ row: Math.min(anchor.row, focus.row), column: Math.min(anchor.column, focus.column) });
  const last = formatAddress({ row: Math.max(anchor.row, focus.row), column: Math.max(anchor.column, focus.column) });
  return first === last ? first : `${first}:${last}`;
}
