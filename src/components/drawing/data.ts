import type { QuantityName } from '../../../functions/quantities.ts';
import type { BetterEnd, Line, UnitSystem } from '../../document/types.ts';
import type { PlotLimit } from '../plot/data.ts';

/** What an axis measures, and in which unit. */
export interface Axis {
  readonly quantity: QuantityName;
  readonly symbol: string;
}

/** A limit or a needle may stand at a number of the axis; all values are SI. */
export interface Mark {
  readonly label: string;
  readonly value: number;
}

/** Numbers of cells as bars, a row each; the parts of a row lie end to end. */
export interface BarsData {
  readonly form: 'bars';
  readonly title: string;
  readonly axis: Axis;
  readonly bars: readonly Bar[];
  /** As they were at the baseline; row by row the same. */
  readonly ghost?: readonly Bar[];
  readonly horizontal?: readonly [number, number];
  readonly limits: readonly PlotLimit[];
  readonly system: UnitSystem;
}

export interface Bar {
  readonly name: string;
  readonly parts: readonly BarPart[];
}

interface BarPart extends Mark {
  readonly line: Line;
}

export interface Point {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

export interface PointGroup {
  readonly label: string;
  readonly line: Line;
  readonly points: readonly Point[];
}

/** One column over another, as points or as lines. */
export interface PointsData {
  readonly form: 'points' | 'lines';
  readonly title: string;
  readonly across: Axis;
  readonly up: Axis;
  readonly groups: readonly PointGroup[];
  /** As they were at the baseline. */
  readonly ghost?: readonly PointGroup[];
  readonly limits: readonly PlotLimit[];
  readonly marks: readonly Mark[];
  readonly best?: readonly [across: BetterEnd, up: BetterEnd];
  readonly horizontal?: readonly [number, number];
  readonly vertical?: readonly [number, number];
  readonly system: UnitSystem;
}

/** A circle stands at its middle, a rectangle at its lower left corner; metres from the lower left corner of the ground. */
export interface Shape {
  readonly name: string;
  readonly outline: 'circle' | 'rectangle';
  readonly line: Line;
  readonly left: number;
  readonly below: number;
  readonly width: number;
  readonly height: number;
}

/** A drawing to scale: shapes on one ground or on several of the same size. */
export interface ShapesData {
  readonly form: 'shapes';
  readonly title: string;
  readonly axis: Axis;
  readonly width: number;
  readonly height: number;
  readonly grounds: readonly (readonly Shape[])[];
  /** As they were at the baseline. */
  readonly ghost?: readonly (readonly Shape[])[];
  readonly system: UnitSystem;
}

export type DrawingData = BarsData | PointsData | ShapesData;
