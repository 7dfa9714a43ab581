import { sizeOf, formatRectangle, type Rectangle } from '../../../document/area.ts';
import { labelOf, nameOf } from '../../../document/labels.ts';
import { formatAddress, parseAddress } from '../../../formula/address.ts';
import type { SheetCells } from './sheet-cells.ts';

/** An area read as a table: which of its columns hold numbers, which words, and the rows below its heading. */
export interface Columns {
  readonly body: Rectangle;
  readonly numbers: readonly Rectangle[];
  readonly words: readonly Rectangle[];
}

/** Reads an area as a table; rows at its ends that hold nothing are left out, and so is a first row of words over numbers. */
export function columnsIn(cells: SheetCells, area: Rectangle): Columns {
  const places = cells.filled(area).flatMap((address) => {
    const at = parseAddress(address);
    return at ? [{ ...at, kind: cells.held(address).kind }] : [];
  });
  const numbered = places.filter(({ kind }) => kind === 'number');
  const rows = numbered.map(({ row }) => row);
  const [top, bottom] = rows.length === 0 ? [area.top, area.bottom] : [least(rows), most(rows)];
  const body = { ...area, top, bottom };
  const columnsOf = (kind: 'number' | 'text', without: readonly number[] = []): number[] =>
    [
      ...new Set(
        places.flatMap((each) => (each.kind === kind && each.row >= top && each.row <= bottom ? [each.column] : [])),
      ),
    ]
      .filter((column) => !without.includes(column))
      .toSorted((a, b) => a - b);
  const numbers = columnsOf('number');
  const column = (at: number): Rectangle => ({ ...body, left: at, right: at });
  return { body, numbers: numbers.map(column), words: columnsOf('text', numbers).map(column) };
}

const least = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.min(a, b));
const most = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.max(a, b));

/** The nearest column left of an area whose cells in the same rows hold something of that kind. */
export function columnBefore(cells: SheetCells, area: Rectangle, kind: 'number' | 'text'): Rectangle | undefined {
  for (let column = area.left - 1; column >= 0; column--) {
    const beside = { ...area, left: column, right: column };
    if (cells.filled(beside).some((address) => cells.held(address).kind === kind)) return beside;
  }
  return undefined;
}

/** What a reader would call cells: a single one by the label of its row; a column by the words over it, or by its title. */
export function labelFor(cells: SheetCells, area: Rectangle): string {
  const { sheet } = cells;
  const first = formatAddress({ row: area.top, column: area.left });
  if (sizeOf(area) === 1) return labelOf(sheet, first);
  if (area.left === area.right) {
    const above = area.top === 0 ? '' : formatAddress({ row: area.top - 1, column: area.left });
    const isHeading = sheet.cells.get(above)?.look === 'section';
    const words = cells.words(first) || (isHeading ? '' : cells.words(above)) || sheet.columns[area.left]?.title;
    if (words) return words;
  } else if (area.top === area.bottom) return cells.words(first) || labelOf(sheet, first);
  return nameOf(sheet, formatRectangle(area)) ?? formatRectangle(area);
}

/** The nearest heading of a section above a row. */
export function headingAbove({ sheet }: SheetCells, row: number): string {
  for (let above = row; above >= 0; above--) {
    const cell = sheet.cells.get(formatAddress({ row: above, column: 0 }));
    if (cell?.look === 'section' && cell.text !== '' && !cell.text.startsWith('=')) return cell.text;
  }
  return '';
}
