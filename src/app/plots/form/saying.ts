import { quantities, type QuantityName } from '../../../../functions/quantities.ts';
import type { Remark } from '../../../components/plot-form/data.ts';
import { sameDimension } from '../../../units/dimension.ts';

/** Collects what is said at the fields of a draft, and what is called how where nothing is typed. */
export class Saying {
  readonly remarks = new Map<string, Remark>();
  readonly labels = new Map<string, string>();

  /** Says what is wrong; gives nothing, as what is wrong does. */
  wrong(at: string, text: string): undefined {
    this.remarks.set(at, { text, isWrong: true });
  }

  /** Says something that is no hindrance. */
  note(at: string, text: string): void {
    this.remarks.set(at, { text, isWrong: false });
  }
}

export const isAlike = (a: QuantityName, b: QuantityName): boolean =>
  sameDimension(quantities[a].dimension, quantities[b].dimension);
