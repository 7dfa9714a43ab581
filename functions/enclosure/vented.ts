import { define } from '../define.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import type { Driver } from '../values/driver.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { qb3 } from './alignment.ts';
import { boxFields } from './box-driver.ts';
import { demoDriver, driver, fill, leakageQ, lossQ, seriesResistance, tuning, volume } from './parameters.ts';
import { seriesQts } from './qtc.ts';

interface FlattestBox {
  readonly volume: number;
  readonly tuning: number;
}

/** Volume and tuning of the quasi-third-order box. */
function flattest(given: Driver, leakage: number, series: number): FlattestBox | Problem {
  const known = need(given, boxFields);
  if (known instanceof Problem) return known;
  const total = seriesQts(known, series);
  if (total instanceof Problem) return total;
  const found = qb3(total, leakage);
  if (found !== undefined) return { volume: known.vas / found.ratio, tuning: known.fs * found.tuning };
  return new Problem(
    say`No quasi-third-order box exists for a Qts of ${measured(total, 'ratio')}${series > 0 ? ' with the series resistance' : ''}: between about 0.05 and 0.6 there is one. A closed box suits a driver of a higher Qts.`,
    'driver',
  );
}

export const ventedVolume = define({
  name: 'VENTED.QB3_VOLUME',
  summary: 'Net volume of the quasi-third-order (QB3) vented box of a driver, by solving its conditions with losses.',
  parameters: { driver, leakageQ, seriesResistance },
  returns: { quantity: 'volume', summary: 'net volume' },
  source: { source: 'small1973vented', at: 'fourth-order response with leakage losses' },
  example: { formula: `=VENTED.QB3_VOLUME(${demoDriver})`, gives: 0.0223 },
  remarks:
    'At one Qts (0.405 for a leakage Q of 7) it is the fourth-order Butterworth box; above it the same conditions continue with a small peak.',
  compute: (given) => {
    const found = flattest(given.driver, given.leakageQ, given.seriesResistance);
    return found instanceof Problem ? found : found.volume;
  },
});

export const ventedTuning = define({
  name: 'VENTED.QB3_TUNING',
  summary: 'Port tuning of the quasi-third-order (QB3) vented box of a driver, by solving its conditions with losses.',
  parameters: { driver, leakageQ, seriesResistance },
  returns: { quantity: 'frequency', summary: 'port tuning' },
  source: { source: 'small1973vented', at: 'fourth-order response with leakage losses' },
  example: { formula: `=VENTED.QB3_TUNING(${demoDriver})`, gives: 39.6 },
  compute: (given) => {
    const found = flattest(given.driver, given.leakageQ, given.seriesResistance);
    return found instanceof Problem ? found : found.tuning;
  },
});

export const ventedBox = define({
  name: 'VENTED.BOX',
  summary: 'A driver in a vented box, with its losses.',
  parameters: {
    driver,
    volume,
    tuning,
    leakageQ,
    seriesResistance,
    fill,
    absorptionQ: lossQ('absorption Q at the tuning; none when left out'),
    portQ: lossQ('port Q at the tuning; none when left out'),
  },
  returns: { record: 'box', summary: 'the box' },
  source: { source: 'small1973vented', at: 'equivalent circuit' },
  example: { formula: `=VENTED.BOX(${demoDriver}, "22.3 L", "39.6 Hz")`, gives: { volume: 0.0223, tuning: 39.6 } },
  remarks:
    'A leakage Q of 7 is usual for a well-built box. The tuning is that of port and apparent volume together: keep filling out of the way to the port. Below the tuning its air no longer holds the cone: see BOX.TRAVEL_LIMIT, and BOX.HIGH_PASS against it.',
  compute: (given): Box | Problem => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    return {
      kind: 'box',
      style: 'vented',
      driver: known,
      volume: given.volume,
      tuning: given.tuning,
      fill: given.fill,
      seriesResistance: given.seriesResistance,
      leakageQ: given.leakageQ,
      absorptionQ: given.absorptionQ ?? Infinity,
      portQ: given.portQ ?? Infinity,
    };
  },
});
