import type { OctavoDocument } from '../document/types.ts';
import type { CellValue, Place } from '../engine/types.ts';
import type { Input, Result, SetInput } from './subject-types.ts';

export type Target =
  | { readonly kind: 'number'; readonly value: number }
  /** Good; with `orCaution` a caution serves as well. */
  | { readonly kind: 'good'; readonly orCaution?: boolean };

export interface SeekQuestion {
  readonly document: OctavoDocument;
  readonly result: Place;
  readonly target: Target;
  readonly input: Place;
  /** Where to look, SI; the plausible range of the input where absent. */
  readonly range?: readonly [number, number];
  /** Inputs set to something else first, as in `at 106 dB`. */
  readonly given?: readonly SetInput[];
}

export interface Found {
  readonly set: SetInput;
  /** What the sheet itself gives there. */
  readonly result: CellValue;
}

export interface Seek {
  readonly input: Input;
  readonly result: Result;
  readonly target: Target;
  readonly range: readonly [number, number];
  /** Each checked on the sheet itself, ascending. For a verdict the nearest good value of each stretch that is good. */
  readonly found: readonly Found[];
  /** For a verdict: the stretches of the range in which it is good, SI. */
  readonly stretches: readonly (readonly [number, number])[];
  /** Where the target is missed by least, when nothing was found; nothing where no value gives a result. */
  readonly nearest?: Found;
  /** The answer in one sentence. */
  readonly sentence: string;
}

/** A question in words, read; or why it could not be. */
export type ReadQuestion = SeekQuestion | { readonly wrong: string; readonly suggestions: readonly string[] };

export type Objective =
  | { readonly kind: 'least' | 'most'; readonly result: Place }
  /** An input to be as small, or large, as it can. */
  | { readonly kind: 'leastInput' | 'mostInput'; readonly input: Place }
  /** A curve with the least spread of its values between two frequencies. */
  | { readonly kind: 'flattest'; readonly curve: Place; readonly from: number; readonly to: number }
  | { readonly kind: 'target'; readonly result: Place; readonly value: number };

export interface OptimiseQuestion {
  readonly document: OctavoDocument;
  readonly inputs: readonly { readonly at: Place; readonly range?: readonly [number, number] }[];
  readonly objective: Objective;
  /** Verdicts that must stay free of failure; all that are free of it now where absent. */
  readonly keep?: readonly Place[];
  readonly seed?: number;
}

export interface Optimum {
  readonly set: readonly SetInput[];
  /** The objective before and after, in its own unit (SI). Lower is better but for `most` and `mostInput`. */
  readonly before: number;
  readonly after: number;
  /** Whether every verdict to be kept is kept there. */
  readonly keepsVerdicts: boolean;
  readonly broken: readonly Result[];
  readonly evaluations: number;
  readonly sentence: string;
}
