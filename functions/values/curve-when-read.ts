import type { Curve } from './curve.ts';

type Shown = Omit<Curve, 'kind' | 'y' | 'phase'>;

class CurveWhenRead implements Curve {
  readonly kind = 'curve';
  readonly title: string;
  readonly quantity: Curve['quantity'];
  readonly from: number;
  readonly to: number;
  declare readonly y: Float64Array;
  #solve: () => Float64Array;

  constructor({ title, quantity, from, to }: Shown, solve: () => Float64Array) {
    this.title = title;
    this.quantity = quantity;
    this.from = from;
    this.to = to;
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
