import { quantities } from '../../functions/quantities.ts';
import { settingText } from '../analysis/setting-text.ts';
import type { Answer, AnswerTable } from '../components/ask/data.ts';
import type { Command } from '../document/command.ts';
import { freeSheetName, newId, newSheet } from '../document/create.ts';
import { formatSheet } from '../document/formula-words.ts';
import type { Cell, OctavoDocument } from '../document/types.ts';
import { formatAddress } from '../formula/address.ts';
import { defaultUnit } from '../units/defaults.ts';

const DIGITS = 6;
const FIRST_WIDTH = 280;

/** An answer kept as a sheet right behind the one it was asked of: what was asked, the tables, and beside each row what its cell
 *  holds now. */
export function sheetOfAnswer(
  document: OctavoDocument,
  behind: string,
  title: string,
  answer: Answer,
): { readonly command: Command; readonly sheet: string } {
  const cells = new Map<string, Cell>();
  let row = 0;
  const put = (column: number, cell: Cell): void => void cells.set(formatAddress({ row, column }), cell);
  put(0, { text: title, look: 'section' });
  row++;
  for (const text of [answer.said, answer.note]) {
    put(0, { text, look: 'note' });
    row++;
  }
  for (const each of answer.tables) {
    row++;
    row = putTable(cells, document, each, row);
  }
  const wish = title.replaceAll(/['![\]*?:/\\\s]+/g, ' ').trim();
  const base = newSheet(freeSheetName(document, wish.slice(0, 40).trim() || 'Answer'));
  const sheet = {
    ...base,
    id: newId(),
    rows: Math.max(base.rows, row + 10),
    columns: base.columns.map((column, index) => (index === 0 ? { ...column, width: FIRST_WIDTH } : column)),
    cells,
  };
  const at = document.sheets.findIndex(({ id }) => id === behind) + 1;
  return { command: { kind: 'add-sheet', sheet, at }, sheet: sheet.id };
}

function putTable(
  cells: Map<string, Cell>,
  document: OctavoDocument,
  { table, live }: AnswerTable,
  first: number,
): number {
  let row = first;
  const put = (column: number, cell: Cell): void => void cells.set(formatAddress({ row, column }), cell);
  put(0, { text: table.title, look: 'section' });
  row++;
  for (const [column, { name }] of [...table.columns, ...(live ? [{ name: 'Now' }] : [])].entries())
    put(column, { text: name, look: 'label' });
  row++;
  for (const [index, values] of table.rows.entries()) {
    for (const [column, value] of values.entries()) {
      const quantity = table.columns[column]?.quantity ?? 'text';
      if (value === null) continue;
      const isNumber = typeof value === 'number' && quantity !== 'text' && quantity in quantities;
      put(column, {
        text: isNumber ? settingText({ unit: defaultUnit(quantity, document.system) }, value, DIGITS) : String(value),
      });
    }
    const place = live?.[index];
    const sheet = document.sheets.find(({ id }) => id === place?.sheet);
    if (place && sheet) put(table.columns.length, { text: `=${formatSheet(sheet.name)}!${place.cell}` });
    row++;
  }
  return row;
}
