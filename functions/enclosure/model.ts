import { airDensity, referencePressure, soundSpeed } from '../air.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { solveLoad, type AcousticLoad } from './acoustic-load.ts';
import { boxFields, modelOf, type BoxDriver } from './circuit-of.ts';
import { solveLumped, type LumpedSolution } from './lumped.ts';

/** What has been solved of a box over the grid. */
interface Solved {
  load?: AcousticLoad;
  pressure?: LumpedSolution;
  coilPressure?: LumpedSolution;
  travel?: LumpedSolution;
}

const known = new WeakMap<Box, Solved>();

function solvedOf(box: Box): Solved {
  const before = known.get(box);
  if (before !== undefined) return before;
  const solved: Solved = {};
  known.set(box, solved);
  return solved;
}

/** The load of a box over the grid, once per box. */
export const loadOf = (box: Box): AcousticLoad => (solvedOf(box).load ??= solveLoad(modelOf(box), frequencies));

/** Pressure of a box over the grid, once per box, the coil inductance left out: for response and level. */
export const pressureOf = (box: Box): LumpedSolution =>
  (solvedOf(box).pressure ??= solveLumped(modelOf(box), frequencies, false, loadOf(box), 'pressure'));

/** The same with the coil inductance, which changes it by up to a few per cent at low frequencies. */
export const coilPressureOf = (box: Box): LumpedSolution =>
  (solvedOf(box).coilPressure ??= solveLumped(modelOf(box), frequencies, true, loadOf(box), 'pressure'));

/** Travel of the cone over the grid, once per box, with the coil inductance. */
export const travelOf = (box: Box): LumpedSolution =>
  (solvedOf(box).travel ??= solveLumped(modelOf(box), frequencies, true, loadOf(box), 'travel'));

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
