import type { Rectangle } from '../../document/area.ts';
import { shownText } from '../../document/show-cell.ts';
import type { ShownCell } from '../../document/shown.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { columnLetters, formatAddress, parseAddress } from '../../formula/address.ts';
import { unitOf } from './unit-of.ts';
import { writeCsv, type CsvField } from './write-csv.ts';

const EMPTY: ShownCell = { kind: 'empty' };

/** The smallest area from the first cell that holds all that the sheet shows. */
export function filledArea(workbook: Pick<Workbook, 'shownTexts'>, sheet: Sheet): Rectangle {
  let [bottom, right] = [0, 0];
  for (const address of workbook.shownTexts().get(sheet.id)?.keys() ?? []) {
    const at = parseAddress(address);
    bottom = Math.max(bottom, at?.row ?? 0);
    right = Math.max(right, at?.column ?? 0);
  }
  return { top: 0, left: 0, bottom, right };
}

/** An area of a sheet as it is shown: a row of column titles, a row of units, then its rows. Where the numbers of a column
 *  have one unit it stands in the row of units; a column with several is followed by one that gives each number's own. */
export function cellsCsv(
  workbook: Pick<Workbook, 'shown' | 'state'>,
  sheet: Sheet,
  { top, left, bottom, right }: Rectangle,
): string {
  const rows = Array.from({ length: bottom - top + 1 }, (_, index) => top + index);
  const columns = Array.from({ length: right - left + 1 }, (_, index) => left + index).map((column) => {
    const cells = rows.map((row) => fieldOf(workbook, sheet.id, formatAddress({ row, column })));
    const units = new Set(cells.flatMap(({ unit }) => (unit === undefined ? [] : [unit])));
    return { title: sheet.columns[column]?.title || columnLetters(column), cells, units };
  });
  return writeCsv([
    columns.flatMap(({ title, units }) => (units.size > 1 ? [title, `${title}, unit`] : [title])),
    columns.flatMap(({ units }) => (units.size > 1 ? ['', ''] : [[...units][0]])),
    ...rows.map((_, index) =>
      columns.flatMap(({ cells, units }) => {
        const { field, unit } = cells[index] ?? {};
        return units.size > 1 ? [field, unit] : [field];
      }),
    ),
  ]);
}

function fieldOf(
  workbook: Pick<Workbook, 'shown' | 'state'>,
  sheet: string,
  cell: string,
): { readonly field: CsvField; readonly unit?: string } {
  const shown = workbook.shown(sheet, cell) ?? EMPTY;
  const value = workbook.state(sheet, cell)?.value;
  if (shown.kind === 'number' && value?.kind === 'number') {
    return { field: unitOf(shown.unit).of(value.value), unit: shown.unit };
  }
  return { field: shownText(shown) || undefined };
}
