import type { QuantityName } from '../quantities.ts';
import type { Box } from './box.ts';
import type { Curve } from './curve.ts';
import type { Driver } from './driver.ts';
import type { Network } from './network.ts';
import type { Sample } from './sample.ts';
import type { TableRecord } from './table.ts';
import type { Verdict } from './verdict.ts';
import type { Way } from './way.ts';
import type { Window } from './window.ts';

/** Everything but plain numbers, texts and truths that a cell can hold. */
export type CellRecord = Driver | Box | Curve | Verdict | Window | Network | Way | TableRecord | Sample;

export type RecordKind = CellRecord['kind'];

export type RecordOf<K extends RecordKind> = Extract<CellRecord, { kind: K }>;

/** A readable field of a record: `Woofer.Fs` in a formula, a line of its card, a line of its text. */
export interface Field {
  /** As written after the dot, lower case: `fs`. */
  readonly name: string;
  readonly summary: string;
  /** `text` for words. */
  readonly quantity: QuantityName | 'text';
}
