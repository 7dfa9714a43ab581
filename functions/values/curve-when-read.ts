import type { Curve } from './curve.ts';
import { ShownCurve, type Shown } from './shown-curve.ts';

class CurveWhenRead extends ShownCurve implements Curve {
  declare readonly y: Float64Array;
  #solve: () => Float64Array;

  constructor(shown: Shown, solve: () => Float64Array) {
    super(shown);
    this.#solve = solve;
    Object.defineProperty(this, 'y', CurveWhenRead.#y);
  }

  static readonly #y = {
    enumerable: true,
    get(this: CurveWhenRead): Float64Array {
      const y = this.#solve();
      this.#solve = () => y;
      return y;
    },
  };
}

/** A curve without phase whose values are worked out when they are first read. */
export const curveWhenRead = (shown: Shown, solve: () => Float64Array): Curve => new CurveWhenRead(shown, solve);
