import type { With } from '../driver/need.ts';
import type { Box } from '../values/box.ts';

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
