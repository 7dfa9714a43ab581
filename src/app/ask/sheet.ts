import { quantities } from '../../../functions/quantities.ts';
import { settingText } from '../../analysis/subject/setting-text.ts';
import { listed } from '../../analysis/subject/words.ts';
import type { Answer, AnswerTable } from '../../components/ask/data.ts';
import type { Command } from '../../document/command.ts';
import { freeSheetName, newId, newSheet } from '../../document/create.ts';
import { formatSheet } from '../../document/formula-words.ts';
import { labelOf } from '../../document/labels.ts';
import { sheetOf } from '../../document/sheets.ts';
import type { Cell, OctavoDocument } from '../../document/types.ts';
import { keyOf } from '../../engine/cell-index.ts';
import type { Place } from '../../engine/types.ts';
import { formatAddress } from '../../formula/address.ts';
import type { Functions } from '../../formula/types.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { liveWay } from './live.ts';

const DIGITS = 6;
const FIRST_WIDTH = 280;
/** More rows of formulas than these would make a sheet slow. */
const MOST_LIVE = 100;

/** An answer kept as a sheet right behind the one it was asked of: what was asked, the tables with formulas where results can follow
 *  from the values in their row, and beside each row what its cell holds now. */
export function sheetOfAnswer(
  document: OctavoDocument,
  behind: string,
  title: string,
  answer: Answer,
  functions: Functions = new Map(),
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
    row = putTable(cells, document, functions, each, row);
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
  functions: Functions,
  { table, live, over }: AnswerTable,
  first: number,
): number {
  let row = first;
  const put = (column: number, cell: Cell): void => void cells.set(formatAddress({ row, column }), cell);
  put(0, { text: table.title, look: 'section' });
  row++;
  const width = table.columns.length + (live ? 1 : 0);
  const rule = over && table.rows.length <= MOST_LIVE ? ruleOf(document, functions, over, width) : undefined;
  if (rule) {
    put(0, { text: rule.words, look: 'note' });
    row++;
  }
  const names = [...table.columns.map(({ name }) => name), ...(live ? ['Now'] : []), ...(rule?.names ?? [])];
  for (const [column, text] of names.entries()) put(column, { text, look: 'label' });
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
    for (const [column, cell] of rule?.row(row) ?? []) put(column, cell);
    const place = live?.[index];
    const sheet = document.sheets.find(({ id }) => id === place?.sheet);
    if (place && sheet) put(table.columns.length, { text: `=${formatSheet(sheet.name)}!${place.cell}` });
    row++;
  }
  return row;
}

/** Formulas that follow from the first cells of each row, in the columns of their results and, for what is between, beyond the
 *  table. Results whose formulas cannot be written in a row stay values. */
function ruleOf(
  document: OctavoDocument,
  functions: Functions,
  { inputs, results }: NonNullable<AnswerTable['over']>,
  width: number,
) {
  const way = liveWay(document, functions, inputs, results);
  if (!way) return undefined;
  const able = new Set(way.results.map(keyOf));
  const labels = (places: readonly Place[]): string[] =>
    places.map(({ sheet, cell }) => labelOf(sheetOf(document, sheet), cell));
  const columns = new Map<string, number>();
  for (const [column, each] of [...inputs, ...results].entries())
    if (column < inputs.length || able.has(keyOf(each))) columns.set(keyOf(each), column);
  const between = way.cells.filter((each) => !columns.has(keyOf(each)));
  for (const [index, each] of between.entries()) columns.set(keyOf(each), width + index);
  return {
    names: labels(between),
    words: `${listed(labels(way.results))}: live formulas of the first ${inputs.length === 1 ? 'column' : `${inputs.length} columns`}. The rest stands as when it was asked.`,
    row: (row: number): (readonly [column: number, cell: Cell])[] => {
      const at = (key: string): string => formatAddress({ row, column: columns.get(key) ?? 0 });
      return way.cells.map(({ sheet, cell }) => {
        const { unit } = sheetOf(document, sheet).cells.get(cell) ?? {};
        const text = way.formula({ sheet, cell }, at);
        return [columns.get(keyOf({ sheet, cell })) ?? 0, { text, ...(unit !== undefined && { unit }) }] as const;
      });
    },
  };
}
