import type { Status } from '../../functions/values/verdict.ts';
import type { Curve } from '../../functions/values/curve.ts';

/** A cell as a reader sees it: formatted in its unit and in the document's unit system. */
export type ShownCell =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly number: string; readonly unit: string }
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'verdict';
      readonly status: Status;
      readonly word: string;
      readonly reason: string;
      readonly note: string;
    }
  | { readonly kind: 'curve'; readonly curve: Curve; readonly text: string }
  /** Any other record: its name and key figures. */
  | { readonly kind: 'record'; readonly title: string; readonly text: string }
  /** `waiting`: not computed yet; the last shown text is kept. */
  | { readonly kind: 'waiting'; readonly text: string }
  | { readonly kind: 'problem'; readonly message: string };
