import type { OctavoDocument } from '../../document/types.ts';
import type { CellValue, Place } from '../../engine/types.ts';
import type { Input, Result, SetInput } from '../subject/types.ts';

export type Target =
  | { readonly kind: 'number'; readonly value: number }
  /** Good; with `orCaution` a caution serves as well. */
  | { readonly kind: 'good'; readonly orCaution?: boolean };

/** In place of a result: all verdicts of the document together. */
export const EVERY = 'every verdict';

export interface SeekQuestion {
  readonly document: OctavoDocument;
  readonly result: Place | typeof EVERY;
  readonly target: Target;
  readonly input: Place;
  /** Where to look, SI; the plausible range of the input where absent. */
  readonly range?: readonly [number, number];
  /** Inputs set to something else first, as in `at 106 dB`. */
  readonly given?: readonly SetInput[];
}

export interface Found {
  readonly set: SetInput;
  /** What the sheet itself gives there; of all verdicts together the worst. */
  readonly result: CellValue;
  /** The verdicts that do not reach the target there. */
  readonly short: readonly Result[];
}

export interface Seek {
  readonly input: Input;
  /** What was asked for; one that stands in no cell for all verdicts together. */
  readonly result: Result;
  readonly target: Target;
  readonly range: readonly [number, number];
  /** Each checked on the sheet itself, ascending. For a verdict the nearest good value of each stretch that is good. */
  readonly found: readonly Found[];
  /** For a verdict: the stretches of the range in which it is good, SI. */
  readonly stretches: readonly (readonly [number, number])[];
  /** Where the target is missed by least, when nothing was found; nothing where no value gives a result. */
  readonly nearest?: Found;
  /** How many values were looked at; none of words, which are all looked at. */
  readonly looked: number;
  /** What lies nearer together than this can be missed: SI, or a share of the value. */
  readonly gap: { readonly of: 'input' | 'share'; readonly size: number };
  /** The answer in one sentence. */
  readonly sentence: string;
  /** How fine it looked, in words. */
  readonly searched: string;
}
