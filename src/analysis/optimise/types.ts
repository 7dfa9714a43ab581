import type { OctavoDocument } from '../../document/types.ts';
import type { CellValue, Place } from '../../engine/types.ts';
import type { Input, Result, SetInput, Standing } from '../subject/types.ts';

/** What is to be as small, or as large, as can be: a number, its distance from a target, or how far a curve moves up and down
 *  within a band. The number may be one of the inputs, as of the smallest box that keeps every verdict. */
export type Objective =
  | { readonly kind: 'least' | 'most'; readonly result: Place }
  | { readonly kind: 'nearest'; readonly result: Place; readonly target: number }
  | { readonly kind: 'flattest'; readonly result: Place; readonly from: number; readonly to: number };

/** A result that must be at least, or at most, so much; SI. */
export interface Bound extends Place {
  readonly at: 'least' | 'most';
  readonly value: number;
}

export interface OptimiseQuestion {
  readonly document: OctavoDocument;
  /** With bounds, SI; those of the cell where left out. */
  readonly inputs: readonly (Place & { readonly range?: readonly [number, number] })[];
  readonly objective: Objective;
  /** The verdicts that must stay free of failure, or all good: `good`. None where left out. */
  readonly keep?: 'good' | 'clear';
  /** What results must keep beside the verdicts. */
  readonly limits?: readonly Bound[];
}

/** The best that was found. It has been typed into the sheet, and the sheet gave these results. */
export interface Optimum {
  readonly inputs: readonly Input[];
  readonly result: Result;
  readonly bounds: readonly (readonly [number, number])[];
  readonly limits: readonly (Pick<Bound, 'at' | 'value'> & { readonly result: Result })[];
  /** Nothing where no place within the bounds keeps what must be kept. */
  readonly found?: {
    readonly set: readonly SetInput[];
    readonly result: CellValue;
    /** The number that was made small or large: the distance from a target, of a curve its highest less its lowest. */
    readonly value: number;
    readonly worst: Standing;
    /** What the limited results are. */
    readonly limited: readonly CellValue[];
  };
  /** The same number as the sheet stands; NaN where it has none. */
  readonly before: number;
  /** The worst of the verdicts to be kept, as the sheet stands. */
  readonly worstBefore: Standing;
  /** How often the sheet was computed. */
  readonly looked: number;
}
