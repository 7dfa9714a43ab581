import { lossyCoilOf } from '../driver/lossy-coil.ts';
import type { With } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import type { LumpedModel } from './lumped.ts';

/** What every box asks of its driver. */
export const boxFields = ['fs', 'qms', 'qes', 'vas', 're'] as const;

export type BoxDriver = With<(typeof boxFields)[number]>;

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

/** Remembers what was made of the box last asked about: several functions of a sheet ask about one box in turn. */
export function lastOnly<T>(make: (box: Box) => T): (box: Box) => T {
  let last: { readonly box: Box; readonly made: T } | undefined;
  return (box) => {
    if (last?.box !== box) last = { box, made: make(box) };
    return last.made;
  };
}

type BoxModel = LumpedModel & { readonly ratio: number; readonly series: number };

/** The circuit of a box; the driver must carry {@link boxFields}, as every box made here does. */
export const modelOf = lastOnly((box): BoxModel => {
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
});
