import type { OctavoDocument } from '../../document/types.ts';
import type { CellValue, Place } from '../../engine/types.ts';
import type { Input, Result, SetInput, Setting, Standing } from '../subject/types.ts';

/** An input and the values that it takes. */
export interface Varied extends Place {
  readonly values: readonly Setting[];
}

export interface CombineQuestion {
  readonly document: OctavoDocument;
  readonly inputs: readonly Varied[];
  readonly results: readonly Place[];
  /** What ranks the combinations, a number; in reading order where left out. */
  readonly order?: { readonly result: Place; readonly by: 'least' | 'most' };
  /** Only combinations where no verdict fails or is without an answer. */
  readonly works?: true;
  /** So many are given. */
  readonly most: number;
}

export interface Combination {
  readonly set: readonly SetInput[];
  readonly results: readonly CellValue[];
  /** The worst of all verdicts of the document; good where there are none. */
  readonly worst: Standing;
}

/** Every combination of some inputs, the best of them given. What is given has been typed into the sheet. */
export interface Combine {
  readonly inputs: readonly Input[];
  readonly results: readonly Result[];
  /** How many were computed. */
  readonly of: number;
  readonly counts: Readonly<Record<Standing, number>>;
  readonly rows: readonly Combination[];
}
