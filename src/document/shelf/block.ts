import { columnLetters, formatAddress, parseAddress } from '../../formula/address.ts';
import { nameOf } from '../labels.ts';
import type { Sheet } from '../types.ts';
import { meaningOf, type RowMeaning } from './entry.ts';

/** The rows of a sheet that describe one driver: labels in one column, its numbers in another. */
export interface DriverBlock {
  readonly sheet: string;
  /** The name of the cell that gathers it; else what heads its column, or the name typed there. */
  readonly title: string;
  readonly rows: readonly BlockRow[];
}

export interface BlockRow {
  readonly label: string;
  readonly meaning: RowMeaning;
  readonly cell: string;
}

/** Fewer rows of known numbers are no driver. */
const FEWEST = 3;

/** The block that a cell belongs to; nothing where the labels beside it name no driver. Its rows end at an empty label, at a
 *  section, and at a formula such as the one that gathers them. */
export function driverBlockAt(sheet: Sheet, cell: string): DriverBlock | undefined {
  const at = parseAddress(cell);
  if (!at || at.column === 0) return undefined;
  const columns = [0, ...Array.from({ length: at.column - 1 }, (_, index) => at.column - 1 - index)];
  for (const labels of columns) {
    const rows = rowsAround(sheet, at.row, at.column, labels);
    if (rows.filter(isNumber).length < FEWEST) continue;
    const named = rows.find(({ meaning }) => meaning === 'name');
    const headed = sheet.columns[at.column]?.title ?? (named ? textAt(sheet, named.cell) : '');
    const title = gatheredAs(sheet, rows) ?? (headed || columnLetters(at.column));
    return { sheet: sheet.id, title, rows };
  }
  return undefined;
}

/** The name of the cell right below the rows that makes a driver of them. */
function gatheredAs(sheet: Sheet, rows: readonly BlockRow[]): string | undefined {
  const last = parseAddress(rows.at(-1)?.cell ?? '');
  const below = last && formatAddress({ ...last, row: last.row + 1 });
  return below !== undefined && /^=\s*DRIVER\s*\(/iu.test(textAt(sheet, below)) ? nameOf(sheet, below) : undefined;
}

const isNumber = ({ meaning }: BlockRow): boolean => meaning !== undefined && meaning !== 'name' && meaning !== 'basis';

const textAt = (sheet: Sheet, cell: string): string => sheet.cells.get(cell)?.text.trim() ?? '';

function rowsAround(sheet: Sheet, row: number, column: number, labels: number): BlockRow[] {
  const rowAt = (at: number): BlockRow | undefined => {
    const held = sheet.cells.get(formatAddress({ row: at, column: labels }));
    const label = held?.text.trim() ?? '';
    const cell = formatAddress({ row: at, column });
    if (at < 0 || label === '' || label.startsWith('=') || held?.look === 'section') return undefined;
    return textAt(sheet, cell).startsWith('=') ? undefined : { label, meaning: meaningOf(label), cell };
  };
  // From the formula that gathers the rows one comes to them too.
  const start = rowAt(row) ? row : row - 1;
  const rows: BlockRow[] = [];
  for (let at = start, each = rowAt(at); each; each = rowAt(--at)) rows.unshift(each);
  for (let at = start + 1, each = rowAt(at); rows.length > 0 && each; each = rowAt(++at)) rows.push(each);
  return rows;
}
