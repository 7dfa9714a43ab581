import type { QuantityName } from '../../quantities.ts';
import type { CellRecord, Field } from '../record.ts';

export type Datum = number | string | undefined;

export interface ReadableField<R extends CellRecord> extends Field {
  readonly label: string;
  readonly read: (record: R) => Datum;
}

/** A field of a kind of record. The label is what its card says; the summary where none is given. */
export const field = <R extends CellRecord>(
  name: string,
  summary: string,
  quantity: QuantityName | 'text',
  read: (record: R) => Datum,
  label = summary,
): ReadableField<R> => ({ name, summary, label, quantity, read });

export const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);
