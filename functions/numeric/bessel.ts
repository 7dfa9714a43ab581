import j1 from '@stdlib/math-base-special-besselj1';
import { bracketedRoot } from './root.ts';

/** Where J1 first returns to zero (Abramowitz & Stegun, table 9.5). */
export const firstZeroOfJ1 = 3.8317059702075125;

/** Bessel function of the first kind, order 1. */
export const besselJ1: (x: number) => number = j1;

/** Pressure of a piston in an infinite wall at an angle over that on its axis, 2·J1(x)/x with x = k·a·sin θ. */
export const pistonFactor = (x: number): number => (Math.abs(x) < 1e-4 ? 1 - x ** 2 / 8 : (2 * besselJ1(x)) / x);

/** The x inside the main lobe at which the piston factor has come down to `factor`, between 0 and 1. */
export const pistonArgument = (factor: number): number | undefined =>
  bracketedRoot((x) => pistonFactor(x) - factor, 0, firstZeroOfJ1);
