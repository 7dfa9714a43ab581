import type { QuantityName } from '../quantities.ts';

/** Values over the fixed frequency grid. */
export interface Curve {
  readonly kind: 'curve';
  /** What it shows, as in "Level at 1 m for 2.83 V". */
  readonly title: string;
  /** The quantity of `y`: `level` in dB, `resistance` for impedance magnitude, `travel`, `speed`, … */
  readonly quantity: QuantityName;
  /** SI values, one per grid frequency. */
  readonly y: Float64Array;
  /** Phase in radians where it means something (pressure, impedance, filters). */
  readonly phase?: Float64Array;
  /** The band in hertz in which the curve is meant to hold. */
  readonly from: number;
  readonly to: number;
}
