import type { Curve } from '../values/curve.ts';
import { placeOf } from '../values/grid.ts';
import { commonBand } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { polar, type Complex } from './complex.ts';

/** Less than this is no load but a short, and would divide by zero. Ohms. */
const least = 1e-9;

/** Refuses a curve that shows something else than ohms, or none. */
export const notOhms = (curve: Curve, parameter: string): Problem | undefined => {
  if (curve.quantity !== 'resistance')
    return new Problem(say`“${curve.title}” is not an impedance; give a curve in ohms.`, parameter);
  if (curve.y.some((ohms) => !(ohms > least)))
    return new Problem(say`“${curve.title}” falls to zero ohms; correct the impedance.`, parameter);
  return undefined;
};

/** Refuses a curve that is not a whole impedance. */
export const notWhole = (curve: Curve, parameter: string): Problem | undefined =>
  notOhms(curve, parameter) ??
  (curve.phase
    ? undefined
    : new Problem(say`“${curve.title}” has no phase; give an impedance with its phase.`, parameter));

/** An impedance curve made point by point from whole impedances: `out(Σ into(z))`. */
export function combined(
  title: string,
  curves: readonly Curve[],
  into: (z: Complex) => Complex,
  out: (sum: Complex) => Complex,
  parameter = 'curves',
): Curve | Problem {
  const first = curves[0];
  if (!first) return new Problem(say`There is no curve; give at least one impedance.`, parameter);
  const wrong = curves.map((curve) => notWhole(curve, parameter)).find((problem) => problem !== undefined);
  if (wrong) return wrong;
  const band = commonBand(curves, parameter);
  if (band instanceof Problem) return band;
  const y = new Float64Array(first.y.length);
  const phase = new Float64Array(first.y.length);
  for (let index = 0; index < y.length; index += 1) {
    let re = 0;
    let im = 0;
    for (const curve of curves) {
      const part = into(polar(curve.y[index]!, curve.phase![index]!));
      re += part.re;
      im += part.im;
    }
    const whole = out({ re, im });
    y[index] = Math.hypot(whole.re, whole.im);
    phase[index] = Math.atan2(whole.im, whole.re);
  }
  if (!y.every(Number.isFinite))
    return new Problem(say`The loads cancel at some frequency; check that their phases lie within ±90°.`, parameter);
  return { kind: 'curve', title, quantity: 'resistance', y, phase, from: band.from, to: band.to };
}

/** A whole impedance at one frequency, between the points of the grid by its real and imaginary part. */
export function impedanceAt(curve: Curve, frequency: number): Complex {
  const place = Math.min(Math.max(placeOf(frequency), 0), curve.y.length - 1);
  const index = Math.min(Math.floor(place), curve.y.length - 2);
  const share = place - index;
  const [low, high] = [index, index + 1].map((at) => polar(curve.y[at]!, curve.phase?.[at] ?? 0));
  return { re: low!.re + share * (high!.re - low!.re), im: low!.im + share * (high!.im - low!.im) };
}
