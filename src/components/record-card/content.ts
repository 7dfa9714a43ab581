import type { QuantityName } from '../../../functions/quantities.ts';
import type { CellRecord } from '../../../functions/values/record.ts';

/** The result of a cell. Numbers are SI. */
export type CardValue =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'record'; readonly record: CellRecord }
  | {
      readonly kind: 'problem';
      readonly message: string;
      /** The cell in which it arose, where that is another one. */
      readonly origin?: { readonly sheet: string; readonly cell: string };
    };

/** Something doubtful in what was typed, and what would put it right. */
export interface CardFinding {
  readonly level: 'error' | 'doubt';
  readonly message: string;
  readonly fix?: string;
}

/** What a card opens: all that is known of a cell. */
export interface CardState {
  readonly sheet: string;
  readonly cell: string;
  readonly value: CardValue;
  /** The quantity is that of a number. */
  readonly type: { readonly kind: string; readonly quantity?: QuantityName | undefined };
  readonly unit?: string;
  readonly findings: readonly CardFinding[];
}
