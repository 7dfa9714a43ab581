import type { OctavoDocument } from '../../document/types.ts';
import type { CellValue, Place } from '../../engine/types.ts';
import type { Input, Result, Span, Standing } from '../subject/types.ts';

export interface SweepQuestion {
  readonly document: OctavoDocument;
  readonly input: Span;
  /** The cells to be read; at least one. */
  readonly results: readonly Place[];
}

/** One input over a range: a row of the table for each value. */
export interface Sweep {
  readonly input: Input;
  readonly values: readonly number[];
  /** For each result what it was at each value; curves make a family. */
  readonly columns: readonly { readonly result: Result; readonly cells: readonly CellValue[] }[];
  /** For each value the worst of all verdicts of the document. */
  readonly worst: readonly Standing[];
}

export interface MapQuestion {
  readonly document: OctavoDocument;
  readonly across: Span;
  readonly up: Span;
  /** A number. */
  readonly result: Place;
  /** Contour levels, SI; round ones are chosen where absent. */
  readonly levels?: readonly number[];
  /** The verdicts that must be good; all of the document where absent. */
  readonly verdicts?: readonly Place[];
}

/** A line through points in the units of both axes (SI); closed where the last point is the first. */
export type Line = readonly (readonly [across: number, up: number])[];

export interface ResultMap {
  readonly across: Input;
  readonly up: Input;
  readonly acrossValues: readonly number[];
  readonly upValues: readonly number[];
  readonly result: Result;
  /** Row by row from the lowest value of `up`; NaN where there is no number. */
  readonly values: Float64Array;
  /** The worst of the verdicts at each point, as its place in `standings`: 0 where every one is good. */
  readonly worst: Uint8Array;
  readonly contours: readonly { readonly level: number; readonly lines: readonly Line[] }[];
  /** The edge of the region where all verdicts are good, between the points of the grid. */
  readonly goodEdge: readonly Line[];
  readonly verdicts: readonly Result[];
}
