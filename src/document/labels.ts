import { formatAddress, parseAddress } from '../formula/address.ts';
import type { Sheet } from './types.ts';

/** What a reader would call a cell: the label of its row, with the column's title where the row has several such cells;
 *  else its name; else its address. */
export function labelOf(sheet: Sheet, address: string): string {
  const at = parseAddress(address);
  if (!at) return address;
  const label = at.column === 0 ? '' : textAt(sheet, at.row, 0);
  if (label === '') return nameOf(sheet, address) ?? address;
  const column = sheet.columns[at.column];
  const isShared = sheet.columns.some(
    ({ line }, other) => line && other !== at.column && other > 0 && textAt(sheet, at.row, other, true) !== '',
  );
  return column?.title && column.line && isShared ? `${label}, ${column.title}` : label;
}

/** The name that stands for exactly this cell. */
export function nameOf(sheet: Sheet, address: string): string | undefined {
  for (const [name, cells] of sheet.names) if (cells === address) return name;
  return undefined;
}

function textAt(sheet: Sheet, row: number, column: number, formulas = false): string {
  const text = sheet.cells.get(formatAddress({ row, column }))?.text ?? '';
  return !formulas && text.startsWith('=') ? '' : text.trim();
}
