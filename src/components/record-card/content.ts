import type { QuantityName } from '../../../functions/quantities.ts';
import type { CellRecord } from '../../../functions/values/record.ts';

/** What a card opens: the whole result of a cell. Numbers are SI. */
export type CardContent =
  | { readonly kind: 'empty' }
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly quantity: QuantityName;
      readonly unit?: string | undefined;
    }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'record'; readonly record: CellRecord }
  | {
      readonly kind: 'problem';
      readonly message: string;
      /** The cell in which it arose, where that is another one. */
      readonly origin?: { readonly sheet: string; readonly cell: string; readonly label: string } | undefined;
    };

/** Something doubtful in what was typed, and what would put it right. */
export interface CardFinding {
  readonly level: 'error' | 'doubt';
  readonly message: string;
  readonly fix?: string | undefined;
}
