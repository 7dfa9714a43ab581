import { labelOf } from '../../../functions/driver/labels.ts';
import type { NumberField } from '../../../functions/driver/parameters.ts';

/** One line of a driver's data as it was typed: nothing is converted or rounded. */
export interface DriverRow {
  readonly label: string;
  /** `38 Hz`, `at 2.83 V`: with its unit. */
  readonly text: string;
}

/** A measured response or impedance, or a datasheet as it was pasted: kept word for word. */
export interface DriverTable {
  readonly title: string;
  readonly text: string;
}

/** A driver on the shelf. Its basis of level and its price are rows like the others. */
export interface DriverEntry {
  readonly id: string;
  readonly name: string;
  readonly rows: readonly DriverRow[];
  /** Where the numbers come from, in the reader's words. */
  readonly source: string;
  readonly tables: readonly DriverTable[];
  /** Made up for examples: no such driver can be bought. */
  readonly invented: boolean;
}

/** What a row names: a number of the driver, the basis of its level, its name, or nothing known. */
export type RowMeaning = NumberField | 'basis' | 'name' | undefined;

/** Read as the DRIVER function reads it. */
export function meaningOf(label: string): RowMeaning {
  const meant = labelOf(label);
  return typeof meant === 'object' ? meant.field : meant;
}

/** The first row that names it. */
export const rowOf = (rows: readonly DriverRow[], meaning: Exclude<RowMeaning, undefined>): DriverRow | undefined =>
  rows.find(({ label, text }) => text.trim() !== '' && meaningOf(label) === meaning);

/** The three bases of a printed level, as cells and questions offer them. */
export const bases = ['at 2.83 V', 'at 1 W into nominal', 'at 1 W into Re'] as const;
