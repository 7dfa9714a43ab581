import type { Curve } from './curve.ts';

/** What is said of a curve before its values are. */
export type Shown<Quantity extends Curve['quantity'] = Curve['quantity']> = Pick<Curve, 'title' | 'from' | 'to'> & {
  readonly quantity: Quantity;
};

/** A curve whose values are yet to be worked out. */
export abstract class ShownCurve<Quantity extends Curve['quantity'] = Curve['quantity']> implements Shown<Quantity> {
  readonly kind = 'curve';
  readonly title: string;
  readonly quantity: Quantity;
  readonly from: number;
  readonly to: number;

  constructor({ title, quantity, from, to }: Shown<Quantity>) {
    this.title = title;
    this.quantity = quantity;
    this.from = from;
    this.to = to;
  }
}
