import { soundSpeed } from '../air.ts';
import { pistonFactor } from '../numeric/bessel.ts';
import { frequencies } from '../values/grid.ts';
import type { Way } from '../values/way.ts';
import type { ComplexCurve } from './ladder.ts';
import { wayField } from './way-response.ts';

/** A direction in front of the panel, in radians: to the right, and upwards, of the listening axis. */
export interface Direction {
  readonly horizontal: number;
  readonly vertical: number;
}

export const onAxis: Direction = { horizontal: 0, vertical: 0 };

/** How much nearer than the middle of the panel a way is in a direction, metres, far away; and the sine off its axis. */
export function seenFrom(
  way: Way,
  { horizontal, vertical }: Direction,
): { readonly nearer: number; readonly sine: number } {
  const right = Math.sin(horizontal) * Math.cos(vertical);
  const up = Math.sin(vertical);
  const ahead = Math.cos(horizontal) * Math.cos(vertical);
  const { x, y, z } = way.position;
  return { nearer: x * right + y * up - z * ahead, sine: Math.hypot(right, up) };
}

/** Complex pressure of a way over 20 µPa in a direction, far away and referred to 1 m from the middle of the panel:
 *  {@link wayField} with the way's position and the directivity of a piston of its area. */
export function wayFieldAt(way: Way, direction: Direction): ComplexCurve {
  const { re, im } = wayField(way);
  const { nearer, sine } = seenFrom(way, direction);
  const size = Math.sqrt(way.sd / Math.PI) * sine;
  if (nearer === 0 && size === 0) return { re, im };
  for (let index = 0; index < re.length; index += 1) {
    const wave = (2 * Math.PI * frequencies[index]!) / soundSpeed;
    const factor = size === 0 ? 1 : pistonFactor(wave * size);
    const cosine = factor * Math.cos(wave * nearer);
    const sines = factor * Math.sin(wave * nearer);
    const real = re[index]!;
    const imaginary = im[index]!;
    re[index] = real * cosine - imaginary * sines;
    im[index] = real * sines + imaginary * cosine;
  }
  return { re, im };
}

/** The sum of several ways in a direction. */
export function sumAt(ways: readonly Way[], direction: Direction): ComplexCurve {
  const re = new Float64Array(frequencies.length);
  const im = new Float64Array(frequencies.length);
  for (const way of ways) {
    const part = wayFieldAt(way, direction);
    for (let index = 0; index < re.length; index += 1) {
      re[index] = re[index]! + part.re[index]!;
      im[index] = im[index]! + part.im[index]!;
    }
  }
  return { re, im };
}
