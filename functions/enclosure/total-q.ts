import type { Box } from '../values/box.ts';
import { complianceRatio, type BoxDriver } from './box-driver.ts';

/** Total Q of a closed box or a baffle; absorption counted exactly, a leak not (it makes the response third order). */
export function totalQ(box: Box): number {
  const driver = box.driver as BoxDriver;
  const { qms, qes, re } = driver;
  const ratio = complianceRatio(driver, box);
  const electrical = re / (qes * (re + box.seriesResistance));
  return 1 / ((1 / qms + electrical) / Math.sqrt(1 + ratio) + ratio / (1 + ratio) / box.absorptionQ);
}
