import { airDensity, referencePressure, soundSpeed } from '../air.ts';
import { lossyCoilOf } from '../driver/lossy-coil.ts';
import { need, type With } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { solveLoad, type AcousticLoad } from './acoustic-load.ts';
import { solveLumped, type LumpedModel, type LumpedSolution } from './lumped.ts';

/** What every box asks of its driver. */
export const boxFields = ['fs', 'qms', 'qes', 'vas', 're'] as const;

type BoxDriver = With<(typeof boxFields)[number]>;

/** Vas over the apparent volume. */
export const complianceRatio = (driver: BoxDriver, box: Pick<Box, 'volume' | 'fill'>): number =>
  driver.vas / (box.volume * box.fill);

/** Where port, radiators or closed box resonate. */
export function resonanceOf(box: Box): number {
  const driver = box.driver as BoxDriver;
  if (box.tuning !== undefined) return box.tuning;
  if (box.radiator !== undefined) {
    return box.radiator.fp * Math.sqrt(1 + box.radiator.vap / (box.volume * box.fill));
  }
  return driver.fs * Math.sqrt(1 + complianceRatio(driver, box));
}

/** The circuit of a box; the driver must carry {@link boxFields}, as every box made here does. */
export function modelOf(box: Box): LumpedModel & { readonly ratio: number; readonly series: number } {
  const driver = box.driver as BoxDriver;
  const { radiator, frontVolume } = box;
  return {
    style: box.style === 'baffle' ? 'free' : box.style,
    fs: driver.fs,
    qms: driver.qms,
    qes: driver.qes,
    re: driver.re,
    coil: driver.le ?? 0,
    lossyCoil: lossyCoilOf(driver),
    series: box.seriesResistance,
    ratio: complianceRatio(driver, box),
    ...(frontVolume === undefined ? {} : { frontRatio: driver.vas / frontVolume }),
    ...(radiator === undefined
      ? {}
      : { radiator: { ratio: radiator.vap / (box.volume * box.fill), fp: radiator.fp, qmp: radiator.qmp } }),
    lossFrequency: resonanceOf(box),
    leakageQ: box.leakageQ,
    absorptionQ: box.absorptionQ,
    portQ: box.portQ,
    highPass: box.highPass,
  };
}

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
