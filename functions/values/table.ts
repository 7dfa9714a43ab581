import type { QuantityName } from '../quantities.ts';

export interface Column {
  readonly name: string;
  readonly quantity: QuantityName | 'text';
}

/** Rows of several things at once: wirings, a cut list, a ledger. Numbers are SI; `null` where there is nothing. */
export interface TableRecord {
  readonly kind: 'table';
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly (number | string | null)[])[];
}
