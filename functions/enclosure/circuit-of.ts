import { lossyCoilOf } from '../driver/lossy-coil.ts';
import type { Box } from '../values/box.ts';
import { complianceRatio, resonanceOf, type BoxDriver } from './box-driver.ts';
import type { LumpedModel } from './lumped.ts';

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
