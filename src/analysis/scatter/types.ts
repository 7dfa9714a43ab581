import type { OctavoDocument } from '../../document/types.ts';
import type { Place } from '../../engine/types.ts';
import type { Result } from '../subject/types.ts';

export type CauseName = 'cms' | 'bl' | 'mms' | 're';

export type Spread =
  /** Causes behind a driver, linked; shares, one standard deviation, lognormal. `at` is the cell that holds the driver. */
  | { readonly kind: 'driver'; readonly at: Place; readonly causes: Readonly<Partial<Record<CauseName, number>>> }
  /** Any numeric input: one standard deviation as a share of its value (lognormal), or in SI (normal). */
  | { readonly kind: 'share' | 'amount'; readonly at: Place; readonly deviation: number };

export interface ScatterQuestion {
  readonly document: OctavoDocument;
  readonly spreads: readonly Spread[];
  /** Numbers, curves and verdicts to be watched. */
  readonly results: readonly Place[];
  readonly runs: number;
  readonly seed: number;
}

/** The runs of a scatter from one number up to, not including, another. */
export interface ScatterShare extends ScatterQuestion {
  readonly from: number;
  readonly to: number;
}

export interface Cause {
  /** `Woofer: compliance Cms`. */
  readonly label: string;
  /** What one standard deviation of it does to the result, SI. */
  readonly effect: number;
  /** First-order share of the variance, 0 to 1. */
  readonly share: number;
}

export type Scattered =
  | {
      readonly kind: 'number';
      readonly result: Result;
      /** One a run, NaN where a run gave none. */
      readonly values: Float64Array;
      readonly percentiles: { readonly low: number; readonly middle: number; readonly high: number };
      readonly mean: number;
      readonly deviation: number;
      /** Biggest first. */
      readonly causes: readonly Cause[];
    }
  | {
      readonly kind: 'curve';
      readonly result: Result;
      /** 5, 50 and 95 % at each frequency of the grid. */
      readonly low: Float64Array;
      readonly middle: Float64Array;
      readonly high: Float64Array;
      readonly from: number;
      readonly to: number;
    }
  | {
      readonly kind: 'verdict';
      readonly result: Result;
      /** Shares of the runs; they add up to 1. */
      readonly odds: {
        readonly good: number;
        readonly caution: number;
        readonly fail: number;
        readonly problem: number;
      };
    };

export interface Scatter {
  readonly runs: number;
  readonly seed: number;
  readonly results: readonly Scattered[];
  /** Whether the sheet was calculated by formulas compiled for it; the engine's own way is slower and gives the same. */
  readonly isCompiled: boolean;
}
