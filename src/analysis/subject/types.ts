import type { QuantityName } from '../../../functions/quantities.ts';
import { verdictIn } from '../../document/verdicts.ts';
import type { CellValue, Place } from '../../engine/types.ts';

/** What an input is set to: SI for a number, the word itself for a choice. */
export type Setting = number | string;

/** A cell with a typed number or word that may vary. */
export interface Input extends Place {
  /** What a reader calls it: its label, else its name, else its address. */
  readonly label: string;
  readonly name?: string;
  readonly quantity: QuantityName;
  /** The unit in which it was typed; empty for plain numbers and words. */
  readonly unit: string;
  /** What it is at present. */
  readonly present: Setting;
  /** Plausible ends, SI; for a word of no meaning. */
  readonly range: readonly [number, number];
  /** Whether the ends are those of the cell, and not a guess round its value. */
  readonly isRangeGiven: boolean;
  /** The words that it can take, where it takes words. */
  readonly choices?: readonly string[];
}

/** A cell with a formula, whose result can be asked for. */
export interface Result extends Place {
  readonly label: string;
  readonly name?: string;
  /** Of a number, or of the values of a curve; nothing where it is not known. */
  readonly quantity?: QuantityName;
  readonly unit?: string;
  readonly kind: 'number' | 'curve' | 'verdict' | 'other';
  readonly present: CellValue;
}

/** All that can vary in a document, and all that can be asked of it, in reading order. */
export interface Subject {
  readonly inputs: readonly Input[];
  readonly results: readonly Result[];
}

/** An input and what it is set to. `text` is what would be typed into the cell. */
export interface SetInput extends Place {
  readonly label: string;
  readonly value: Setting;
  readonly text: string;
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** How a question is followed and given up. */
export interface Watch {
  /** Aborting rejects the promise with an `AbortError`. */
  readonly signal?: AbortSignal;
  readonly progress?: (progress: Progress) => void;
}

/** How inputs are spaced over a range, both ends included. SI. */
export interface Span extends Place {
  readonly from: number;
  readonly to: number;
  /** How many values; at least two. */
  readonly steps: number;
  readonly spacing: 'linear' | 'logarithmic';
}

/** How a verdict stands; `problem` where it cannot be given. From best to worst in {@link standings}. */
export type Standing = 'good' | 'caution' | 'fail' | 'problem';

export const standings = ['good', 'caution', 'fail', 'problem'] as const satisfies readonly Standing[];

/** How the verdict in a cell stands. */
export const standingOf = (value: CellValue): Standing => verdictIn({ value })?.status ?? 'problem';
