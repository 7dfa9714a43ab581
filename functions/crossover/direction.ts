import type { ComplexCurve } from '../values/complex-curve.ts';
import type { Way } from '../values/way.ts';
import { addWay, silence, type Seen } from './way-response.ts';

/** A direction in front of the panel, in radians: to the right, and upwards, of the listening axis. */
export interface Direction {
  readonly horizontal: number;
  readonly vertical: number;
}

export const onAxis: Direction = { horizontal: 0, vertical: 0 };

/** A way seen from a direction, far away: {@link Seen.nearer} than the middle of the panel. */
export function seenFrom(way: Way, { horizontal, vertical }: Direction): Seen {
  const right = Math.sin(horizontal) * Math.cos(vertical);
  const up = Math.sin(vertical);
  const ahead = Math.cos(horizontal) * Math.cos(vertical);
  const { x, y, z } = way.position;
  return { nearer: x * right + y * up - z * ahead, size: Math.sqrt(way.sd / Math.PI) * Math.hypot(right, up) };
}

/** The sum of several ways in a direction: complex pressures over 20 µPa, far away and referred to 1 m from the middle of
 *  the panel. */
export function sumAt(ways: readonly Way[], direction: Direction): ComplexCurve {
  const sum = silence();
  for (const way of ways) addWay(way, seenFrom(way, direction), sum);
  return sum;
}

/** One way alone. */
export const wayFieldAt = (way: Way, direction: Direction): ComplexCurve => sumAt([way], direction);
