import type { Driver } from '../values/driver.ts';

/** The physical causes behind the parameters of a driver and its box, each as a factor on its nominal value. */
export interface Causes {
  readonly cms: number;
  readonly bl: number;
  readonly mms: number;
  readonly re: number;
  readonly volume: number;
}

export const causeNames = {
  cms: 'Compliance Cms',
  bl: 'Force factor Bl',
  mms: 'Moving mass Mms',
  re: 'Coil resistance Re',
  volume: 'Box volume',
} as const satisfies Record<keyof Causes, string>;

export const nominal: Causes = { cms: 1, bl: 1, mms: 1, re: 1, volume: 1 };

const times = (value: number | undefined, factor: number): number | undefined =>
  value === undefined ? undefined : value * factor;

/** The driver after its causes have moved: all that depends on them moves with them. Rms and Sd stay. */
export function drifted(driver: Driver, { cms, bl, mms, re }: Omit<Causes, 'volume'>): Driver {
  const slower = Math.sqrt(mms * cms);
  const firmer = Math.sqrt(mms / cms);
  const qms = times(driver.qms, firmer);
  const qes = times(driver.qes, (firmer * re) / bl ** 2);
  const moved = {
    fs: times(driver.fs, 1 / slower),
    qms,
    qes,
    qts: qms !== undefined && qes !== undefined ? (qms * qes) / (qms + qes) : undefined,
    vas: times(driver.vas, cms),
    re: times(driver.re, re),
    mms: times(driver.mms, mms),
    cms: times(driver.cms, cms),
    bl: times(driver.bl, bl),
    level: driver.level === undefined ? undefined : driver.level + 20 * Math.log10(bl / (mms * re)),
  };
  const given = Object.entries(moved).filter(([, value]) => value !== undefined);
  return { ...driver, ...Object.fromEntries(given) };
}
