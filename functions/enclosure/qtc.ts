import { need } from '../driver/need.ts';
import type { Driver } from '../values/driver.ts';
import { Problem } from '../values/problem.ts';

/** Total Q of a driver with a resistance in series: Qes grows by (Re + series)/Re. */
export function seriesQts(driver: Driver, series: number): number | Problem {
  const needed = need(driver, ['qms', 'qes', 're']);
  if (needed instanceof Problem) return needed;
  return 1 / (1 / needed.qms + needed.re / (needed.qes * (needed.re + series)));
}
