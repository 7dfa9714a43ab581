import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import type { Driver } from '../values/driver.ts';
import { Problem } from '../values/problem.ts';
import { modelOf } from './circuit-of.ts';

/** Total Q of a driver with a resistance in series: Qes grows by (Re + series)/Re. */
export function seriesQts(driver: Driver, series: number): number | Problem {
  const needed = need(driver, ['qms', 'qes', 're']);
  if (needed instanceof Problem) return needed;
  return 1 / (1 / needed.qms + needed.re / (needed.qes * (needed.re + series)));
}

/** Total Q of a closed box or a baffle; absorption counted exactly, a leak not (it makes the response third order). */
export function totalQ(box: Box): number {
  const { qms, qes, re, series, ratio, absorptionQ = Infinity } = modelOf(box);
  const stiffer = Math.sqrt(1 + ratio);
  return 1 / ((1 / qms + re / (qes * (re + series))) / stiffer + ratio / (1 + ratio) / absorptionQ);
}
