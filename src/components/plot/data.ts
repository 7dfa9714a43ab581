import type { Curve } from '../../../functions/values/curve.ts';
import type { Line, UnitSystem } from '../../document/types.ts';

/** A curve of a plot, named beside itself. */
export interface PlotSeries {
  readonly label: string;
  readonly line: Line;
  readonly curve: Curve;
  /** The curve at the baseline; drawn dashed in grey where it differs. */
  readonly ghost?: Curve | undefined;
  /** Ring the extreme inside the plot's band, with its value and frequency. */
  readonly ring?: 'minimum' | 'maximum' | undefined;
}

/** A value in the plot's quantity (SI) that curves should not pass. */
export interface PlotLimit {
  readonly label: string;
  readonly value: number;
  readonly forbidden: 'above' | 'below';
}

/** A frequency that matters in the sheet: a vertical needle. */
export interface PlotMark {
  readonly label: string;
  /** Hertz. */
  readonly frequency: number;
}

/** All that a plot of curves over frequency shows; SI values. All curves have one quantity, that of the first. */
export interface PlotData {
  readonly title: string;
  /** The conditions, after the unit: "at 1 m, 2.83 V". */
  readonly detail?: string | undefined;
  readonly series: readonly PlotSeries[];
  readonly limits: readonly PlotLimit[];
  readonly marks: readonly PlotMark[];
  /** Ends of the frequency axis in hertz. */
  readonly horizontal: readonly [number, number];
  /** Ends of the value axis; found from the curves where absent. */
  readonly vertical?: readonly [number, number] | undefined;
  readonly system: UnitSystem;
  /** What the ghosts are: "baseline 1 900 Hz". */
  readonly baseline?: string | undefined;
}
