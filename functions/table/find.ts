import { quantities } from '../quantities.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Column, TableRecord } from '../values/table.ts';

export type Entry = number | string | null;

interface FoundColumn {
  readonly column: Column;
  readonly values: readonly Entry[];
}

/** A column by its name, without regard to case, or by its number from 1. */
export function columnOf(table: TableRecord, wanted: string): FoundColumn | Problem {
  const word = wanted.trim().toLowerCase();
  const named = table.columns.findIndex((each) => each.name.trim().toLowerCase() === word);
  const place = named >= 0 ? named : /^\d+$/.test(word) ? Number(word) - 1 : -1;
  const column = table.columns[place];
  if (column) return { column, values: table.rows.map((row) => row[place] ?? null) };
  const names = table.columns.map((each) => `“${each.name}”`).join(', ');
  return new Problem(say`“${table.title}” has no column “${wanted}”; choose one of ${names}.`, 'column');
}

/** The value of a column in a row, counted from 1. */
export function entryAt(table: TableRecord, row: number, found: FoundColumn): Entry | Problem {
  if (!Number.isInteger(row) || row > table.rows.length)
    return new Problem(
      say`“${table.title}” has ${String(table.rows.length)} rows, counted from 1; there is no row ${String(row)}.`,
      'row',
    );
  return found.values[row - 1] ?? null;
}

/** All numbers of a column; refuses one of words. */
export function numbersOf(table: TableRecord, found: FoundColumn): readonly (number | undefined)[] | Problem {
  if (found.column.quantity === 'text') return ofWords(found.column);
  const numbers = found.values.map((each) => (typeof each === 'number' ? each : undefined));
  return numbers.some((each) => each !== undefined)
    ? numbers
    : new Problem(say`The column “${found.column.name}” of “${table.title}” holds no number.`, 'column');
}

export const ofWords = (column: Column): Problem =>
  new Problem(say`The column “${column.name}” holds words; read it with TABLE.TEXT.`, 'column');

/** Refuses a column that is of another kind than the sample number; a plain sample passes. */
export function unlike({ column }: FoundColumn, like: number | undefined, given: keyof typeof quantities) {
  if (like === undefined || given === 'ratio' || column.quantity === 'text') return undefined;
  const wanted = JSON.stringify(quantities[given].dimension);
  if (JSON.stringify(quantities[column.quantity].dimension) === wanted) return undefined;
  const { noun, si } = quantities[column.quantity];
  return new Problem(
    say`The column “${column.name}” holds ${noun}, not ${quantities[given].noun}; write 1 ${si} in its place.`,
    'like',
  );
}
