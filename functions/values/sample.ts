import type { QuantityName } from '../quantities.ts';

/** What a number came to in many runs with spread causes. SI. */
export interface Sample {
  readonly kind: 'sample';
  readonly title: string;
  readonly quantity: QuantityName;
  /** One a run, in the order of the runs, so that samples of one seed belong together run by run. */
  readonly values: Float64Array;
  readonly seed: number;
}
