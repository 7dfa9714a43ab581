import type { TableRecord } from '../../../functions/values/table.ts';
import type { UnitSystem } from '../../document/types.ts';
import { unitFor } from './unit-of.ts';
import { writeCsv } from './write-csv.ts';

/** A table with a row of names and a row of units; all numbers of a column in the one unit. */
export function tableCsv({ columns, rows }: TableRecord, system: UnitSystem): string {
  const units = columns.map(({ quantity }, column) =>
    quantity === 'text'
      ? undefined
      : unitFor(
          rows.map((row) => Number(row[column] ?? 0)),
          quantity,
          system,
        ),
  );
  return writeCsv([
    columns.map(({ name }) => name),
    units.map((unit) => unit?.symbol),
    ...rows.map((row) =>
      row.map((value, column) =>
        typeof value === 'number' ? (units[column]?.of(value) ?? value) : (value ?? undefined),
      ),
    ),
  ]);
}
