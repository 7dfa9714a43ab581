import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { solveLumped } from './lumped.ts';
import { modelOf } from './circuit-of.ts';
import { travelOf, travelPerVolt } from './model.ts';

/** One-way peak travel at 0 Hz in free air for volts rms: what the travel ratio of the circuit multiplies. */
export function travelAt(box: Box, volts: number): number | Problem {
  const each = travelPerVolt(box);
  return each instanceof Problem ? each : Math.SQRT2 * volts * each;
}

/** One-way peak travel over the grid for volts rms. */
export function travelCurve(box: Box, volts: number): Float64Array | Problem {
  const scale = travelAt(box, volts);
  return scale instanceof Problem ? scale : travelTimes(box, scale);
}

/** The same where the travel at 0 Hz is known. */
export function travelTimes(box: Box, scale: number): Float64Array {
  const travel = travelOf(box);
  const y = new Float64Array(travel.length);
  for (let index = 0; index < y.length; index += 1) y[index] = scale * travel[index]!;
  return y;
}

/** One-way peak travel for volts rms at any one frequency. */
export function travelFunction(box: Box, volts: number): ((frequency: number) => number) | Problem {
  const scale = travelAt(box, volts);
  if (scale instanceof Problem) return scale;
  const model = modelOf(box);
  const at = new Float64Array(1);
  return (frequency) => {
    at[0] = frequency;
    const { travelRe, travelIm } = solveLumped(model, at, true);
    return scale * Math.hypot(travelRe[0]!, travelIm[0]!);
  };
}
