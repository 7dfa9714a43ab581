import { airDensity, referencePressure, soundSpeed } from '../air.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import type { Curve } from '../values/curve.ts';
import { zeros } from '../numeric/blocks.ts';
import { intoPolar } from '../numeric/polar.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { roomFor, solveLoad } from './acoustic-load.ts';
import { boxFields, type BoxDriver } from './box-driver.ts';
import { lastOnly, modelOf } from './circuit-of.ts';
import { solveLumped, type LumpedSolution } from './lumped.ts';

/** Decibels above the flat level, and phase. */
type Response = Pick<Curve, 'y'> & Required<Pick<Curve, 'phase'>>;

const room = roomFor(frequencies.length);
/** The load of a box over the grid. Its arrays serve one box after the other: use it before another is asked for. */
export const loadOf = lastOnly((box) => solveLoad(modelOf(box), frequencies, room));

const responses = new WeakMap<Box, Response>();

/** Response of a box over the grid, once per box, the coil inductance left out. */
export function responseOf(box: Box): Response {
  const known = responses.get(box);
  if (known !== undefined) return known;
  const solution = solveLumped(modelOf(box), frequencies, false, loadOf(box), 'pressure');
  const { pressureRe: y, pressureIm: phase } = solution;
  intoPolar(y, phase, 'decibels');
  const response = { y, phase };
  responses.set(box, response);
  return response;
}

/** Pressure over the grid with the coil inductance, which changes it by up to a few per cent at low frequencies, times
 *  `scale`, in the arrays given. */
export const coilPressureOf = (
  box: Box,
  to: readonly [Float64Array, Float64Array],
  scale: number,
): Pick<LumpedSolution, 'pressureRe' | 'pressureIm'> =>
  solveLumped(modelOf(box), frequencies, true, loadOf(box), 'pressure', to, scale);

const cone = zeros(2, frequencies.length);

/** Travel of the cone over its value at 0 Hz in free air, over the grid, with the coil inductance. The array serves one
 *  box after the other: use it before another is asked for. */
export const travelOf = lastOnly((box) => {
  const [travelRe, travelIm] = cone;
  solveLumped(modelOf(box), frequencies, true, loadOf(box), 'travel', cone);
  for (let index = 0; index < travelRe.length; index += 1) {
    const re = travelRe[index]!;
    const im = travelIm[index]!;
    travelRe[index] = Math.sqrt(re * re + im * im);
  }
  return travelRe;
});

/** Travel at 0 Hz in free air for 1 V: Bl·Cms/(Re + series), metres per volt. */
export function travelPerVolt(box: Box): number | Problem {
  const driver = need(box.driver, [...boxFields, 'sd'], 'box');
  if (driver instanceof Problem) return driver;
  const compliance = driver.vas / (airDensity * soundSpeed ** 2 * driver.sd ** 2);
  const angular = 2 * Math.PI * driver.fs;
  // Bl² = ωs·Mms·Re/Qes with Mms = 1/(ωs²·Cms).
  const forceFactor = Math.sqrt(driver.re / (driver.qes * angular * compliance));
  return (forceFactor * compliance) / (driver.re + box.seriesResistance);
}

/** Level at 1 m into half space for 1 V far above the resonances, series resistance included. */
export function flatLevel(box: Box): number {
  const { fs, qes, vas, re } = box.driver as BoxDriver;
  const efficiency = (4 * Math.PI ** 2 * fs ** 3 * vas) / (soundSpeed ** 3 * qes);
  const power = (efficiency * re) / (re + box.seriesResistance) ** 2;
  return 10 * Math.log10((power * airDensity * soundSpeed) / (2 * Math.PI) / referencePressure ** 2);
}
