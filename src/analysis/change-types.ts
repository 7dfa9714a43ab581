import type { OctavoDocument } from '../document/types.ts';
import type { CellValue, Place } from '../engine/types.ts';
import type { Result } from './subject-types.ts';

/** Every combination of inputs of a sheet of one's own. */
export interface CombinationsQuestion {
  readonly document: OctavoDocument;
  /** Each with the texts that it takes; a list of candidates takes a whole column of rows. */
  readonly inputs: readonly { readonly label: string; readonly options: readonly Option[] }[];
  readonly results: readonly Place[];
  /** A formula over the names of the results and inputs as if typed into the sheet; the larger the better. */
  readonly ranking?: string;
  readonly most: number;
}

/** Texts typed together: one cell for a value, many for a driver of the shelf. */
export interface Option {
  readonly name: string;
  readonly texts: readonly (Place & { readonly text: string })[];
  readonly price?: number;
}

export interface Combination {
  /** Which option of each input. */
  readonly options: readonly number[];
  readonly names: readonly string[];
  readonly cells: readonly CellValue[];
  readonly score?: number;
  /** No verdict of the document fails. */
  readonly isGood: boolean;
}

export interface Combinations {
  readonly results: readonly Result[];
  readonly rows: readonly Combination[];
  readonly judged: number;
}

export interface CheapestQuestion {
  readonly document: OctavoDocument;
  /** What may be changed, and into what. */
  readonly changes: readonly { readonly label: string; readonly options: readonly Option[] }[];
  readonly cost: 'money' | 'changes';
  /** At most so many changes at once. */
  readonly most: number;
}

export interface ChangeStep {
  readonly label: string;
  readonly option: Option;
  readonly cost: number;
  /** Verdicts that this step turns good, in order. */
  readonly mends: readonly Result[];
  readonly sentence: string;
}

export interface Cheapest {
  readonly failures: readonly Result[];
  /** Nothing where no set of changes within the bound mends all. */
  readonly steps?: readonly ChangeStep[];
  readonly cost: number;
  /** The changes that leave the fewest failures, where none mends all. */
  readonly nearest?: readonly ChangeStep[];
  readonly left: readonly Result[];
  /** Whether every set within the bound was looked at or ruled out. */
  readonly isComplete: boolean;
  readonly tried: number;
  readonly sentence: string;
}
