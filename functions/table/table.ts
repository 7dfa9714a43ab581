import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { columnOf, entryAt, numbersOf, ofWords, unlike } from './find.ts';

const table = { record: 'table', summary: 'the table' } as const;
const column = { text: true, summary: 'name of the column, or its number from 1' } as const;
const row = { quantity: 'ratio', whole: true, min: 1, max: 1e6, summary: 'row, counted from 1' } as const;
const like = {
  quantity: 'any',
  min: -1e15,
  max: 1e15,
  optional: true,
  summary: 'any number of the same kind, as 1 Ω, so that the cell shows the unit',
} as const;
const source = { source: 'own', at: 'the table as it stands' } as const;
const sample = 'PAD.PAIRS("5.3 dB", "6.1 Ω", "E12", 3)';

export const tableRows = define({
  name: 'TABLE.ROWS',
  summary: 'How many rows a table has.',
  parameters: { table },
  returns: { quantity: 'ratio', summary: 'number of rows' },
  source,
  example: { formula: `=TABLE.ROWS(${sample})`, gives: 3 },
  compute: (given) => given.table.rows.length,
});

export const tableAt = define({
  name: 'TABLE.AT',
  summary: 'The number in a row and a column of a table.',
  parameters: { table, row, column, like },
  returns: { quantity: 'any', summary: 'number, in the unit of its column' },
  source,
  example: { formula: `=TABLE.AT(${sample}, 1, "Series", 1 Ω)`, gives: 2.7 },
  remarks:
    'Without the last argument the number is shown bare in its SI unit and is taken for whatever a formula wants. Words are read with TABLE.TEXT.',
  compute(given, context) {
    const found = columnOf(given.table, given.column);
    if (found instanceof Problem) return found;
    const wrong = unlike(found, given.like, context.quantity);
    if (wrong) return wrong;
    const entry = entryAt(given.table, given.row, found);
    if (entry instanceof Problem || typeof entry === 'number') return entry;
    return typeof entry === 'string'
      ? ofWords(found.column)
      : new Problem(say`Nothing stands in “${found.column.name}” of row ${String(given.row)}; choose another.`, 'row');
  },
});

export const tableText = define({
  name: 'TABLE.TEXT',
  summary: 'The words in a row and a column of a table.',
  parameters: { table, row, column },
  returns: { text: true, summary: 'words; empty where there are none' },
  source,
  example: { formula: '=TABLE.TEXT(STANDARD.PAIRS("2.5 Ω", "parallel", "E12", 3), 1, "Made of")', gives: '2.7 and 33' },
  compute(given) {
    const found = columnOf(given.table, given.column);
    if (found instanceof Problem) return found;
    const entry = entryAt(given.table, given.row, found);
    if (entry instanceof Problem) return entry;
    return typeof entry === 'number'
      ? new Problem(say`The column “${found.column.name}” holds numbers; read it with TABLE.AT.`, 'column')
      : (entry ?? '');
  },
});

export const tableTotal = define({
  name: 'TABLE.TOTAL',
  summary: 'The sum of a column of a table.',
  parameters: { table, column, like },
  returns: { quantity: 'any', summary: 'sum of its numbers; empty places are left out' },
  source,
  example: { formula: `=TABLE.TOTAL(${sample}, "Series", 1 Ω)`, gives: 8.1 },
  compute(given, context) {
    const found = columnOf(given.table, given.column);
    if (found instanceof Problem) return found;
    const wrong = unlike(found, given.like, context.quantity);
    if (wrong) return wrong;
    const numbers = numbersOf(given.table, found);
    return numbers instanceof Problem ? numbers : numbers.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  },
});

export const tableRow = define({
  name: 'TABLE.ROW',
  summary: 'The first row of a table that holds some words in a column.',
  parameters: { table, column, words: { text: true, summary: 'words looked for, in any case' } },
  returns: { quantity: 'ratio', summary: 'row, counted from 1' },
  source,
  example: {
    formula: '=TABLE.ROW(STANDARD.PAIRS("2.5 Ω", "parallel", "E12", 3), "Made of", "2.7 and 33")',
    gives: 1,
  },
  compute(given) {
    const found = columnOf(given.table, given.column);
    if (found instanceof Problem) return found;
    const wanted = given.words.trim().toLowerCase();
    const place = found.values.findIndex((each) => String(each ?? '').toLowerCase() === wanted);
    return place >= 0
      ? place + 1
      : new Problem(say`“${given.words}” stands in no row of “${found.column.name}”; check the words.`, 'words');
  },
});

export const tableExtremeRow = define({
  name: 'TABLE.ROW_OF',
  summary: 'The row in which a column is highest or lowest, among those that keep a limit.',
  parameters: {
    table,
    column,
    which: { choice: ['highest', 'lowest'], summary: 'which row is wanted' },
    least: { quantity: 'any', min: -1e15, max: 1e15, optional: true, summary: 'values below this are passed over' },
    most: { quantity: 'any', min: -1e15, max: 1e15, optional: true, summary: 'values above this are passed over' },
  },
  returns: { quantity: 'ratio', summary: 'row, counted from 1' },
  source,
  example: { formula: `=TABLE.ROW_OF(${sample}, "Input", "lowest", 6 Ω)`, gives: 2 },
  remarks:
    'With a limit it answers such questions as: which wiring has the lowest ohms that the amplifier still allows?',
  compute(given, context) {
    const found = columnOf(given.table, given.column);
    if (found instanceof Problem) return found;
    const wrong = unlike(found, given.least ?? given.most, context.quantity);
    if (wrong) return wrong;
    const numbers = numbersOf(given.table, found);
    if (numbers instanceof Problem) return numbers;
    const sense = given.which === 'highest' ? 1 : -1;
    const { least = -Infinity, most = Infinity } = given;
    let best = -1;
    for (const [index, each] of numbers.entries()) {
      if (each === undefined || each < least || each > most) continue;
      if (best < 0 || sense * each > sense * numbers[best]!) best = index;
    }
    if (best >= 0) return best + 1;
    const kind = found.column.quantity === 'text' ? 'ratio' : found.column.quantity;
    return given.least !== undefined
      ? new Problem(
          say`No row of “${found.column.name}” has at least ${measured(given.least, kind)}; lower it.`,
          'least',
        )
      : new Problem(say`No row of “${found.column.name}” keeps the limits; widen them.`, 'most');
  },
});
