import { define } from '../define.ts';
import type { Box } from '../values/box.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { whole } from './box-curves.ts';
import { loadOf, travelOf } from './model.ts';
import { box, demoRadiator, demoVented, volts } from './parameters.ts';
import { styleNames } from './style-names.ts';
import { travelAt } from './travel-curve.ts';
import { usual } from '../usual.ts';

const nothing = new Float64Array(0);

/** Peak volume in cubic metres that port or radiators displace over the grid for volts rms, times `factor` and, for a
 *  speed, the frequency. */
function displacedCurve(of: Box, drive: number, factor: number, speed: boolean): Float64Array | Problem {
  const scale = travelAt(of, drive);
  if (scale instanceof Problem) return scale;
  const { flowRe = nothing, flowIm = nothing } = loadOf(of);
  const travel = travelOf(of);
  const swept = scale * of.driver.sd! * factor;
  const count = travel.length;
  const y = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const uRe = flowRe[index]!;
    const uIm = flowIm[index]!;
    y[index] = swept * travel[index]! * Math.sqrt(uRe * uRe + uIm * uIm);
  }
  const at = frequencies;
  if (speed) for (let index = 0; index < count; index += 1) y[index] = y[index]! * at[index]!;
  return y;
}

/** Peak speed of the air in a port over the grid for volts rms; a Problem for a box without a port. */
export function portSpeedCurve(of: Box, area: number, drive: number): Float64Array | Problem {
  if (of.style !== 'vented' && of.style !== 'bandpass') {
    return new Problem(say`${styleNames[of.style]}: there is no port. Give a vented or a band-pass box.`, 'box');
  }
  return displacedCurve(of, drive, (2 * Math.PI) / area, true);
}

/** One-way peak travel of each passive radiator over the grid for volts rms; a Problem for a box without one. */
export function radiatorTravelCurve(of: Box, drive: number): Float64Array | Problem {
  const area = of.radiator?.area;
  if (area === undefined) {
    return new Problem(
      say`${styleNames[of.style]}: there is no passive radiator. Give a box made by RADIATOR.BOX.`,
      'box',
    );
  }
  return displacedCurve(of, drive, 1 / area, false);
}

export const boxPortSpeed = define({
  name: 'BOX.PORT_SPEED',
  summary: 'Peak speed of the air in the port for a sine of a drive voltage.',
  parameters: {
    box,
    portArea: { ...usual.area, typical: [5e-4, 0.1], summary: 'total area of the ports' },
    volts,
  },
  returns: { record: 'curve', of: 'speed', summary: 'peak speed' },
  source: { source: 'own', at: 'port volume velocity of the lumped circuit' },
  example: { formula: `=BOX.PORT_SPEED(${demoVented}, "36.3 cm2", "20 V")`, gives: { maximum: 23.3 } },
  remarks:
    'Common practice, no source: below 5 % of the speed of sound (17 m/s) a port stays quiet, above 10 % it chuffs.',
  compute: (given): Curve | Problem => {
    const y = portSpeedCurve(given.box, given.portArea, given.volts);
    return y instanceof Problem ? y : { kind: 'curve', title: 'Port speed', quantity: 'speed', y, ...whole };
  },
});

export const boxRadiatorTravel = define({
  name: 'BOX.RADIATOR_TRAVEL',
  summary: 'One-way peak travel of each passive radiator for a sine of a drive voltage.',
  parameters: { box, volts },
  returns: { record: 'curve', of: 'travel', summary: 'one-way peak travel' },
  source: { source: 'small1974radiator', at: 'passive-radiator displacement function' },
  example: { formula: `=BOX.RADIATOR_TRAVEL(${demoRadiator}, "20 V")`, gives: { title: 'Radiator travel' } },
  remarks: 'The voltage is rms, the travel peak. It is largest near the tuning, where the cone moves least.',
  compute: (given): Curve | Problem => {
    const y = radiatorTravelCurve(given.box, given.volts);
    return y instanceof Problem ? y : { kind: 'curve', title: 'Radiator travel', quantity: 'travel', y, ...whole };
  },
});
