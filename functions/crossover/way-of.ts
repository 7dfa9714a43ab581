import { standardVolts } from '../air.ts';
import { need } from '../driver/need.ts';
import { impedanceValues } from '../enclosure/impedance-curve.ts';
import { boxFields } from '../enclosure/box-driver.ts';
import { modelOf } from '../enclosure/circuit-of.ts';
import { coilPressureOf, flatLevel, loadOf } from '../enclosure/model.ts';
import { travelAt, travelTimes } from '../enclosure/travel-curve.ts';
import { zeros } from '../numeric/blocks.ts';
import type { Box, HighPass } from '../values/box.ts';
import { curveOf } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { curveWhenRead } from '../values/curve-when-read.ts';
import type { Driver } from '../values/driver.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import type { Way } from '../values/way.ts';
import { slopeCurve } from './slope-curve.ts';

const whole = { from: frequencies[0]!, to: frequencies.at(-1)! } as const;

/** A driver in an endless wall. */
const inWall = (driver: Driver): Box => ({
  kind: 'box',
  style: 'baffle',
  driver,
  volume: Infinity,
  fill: 1,
  seriesResistance: 0,
  leakageQ: Infinity,
  absorptionQ: Infinity,
  portQ: Infinity,
});

/** Level with phase for 2.83 V at the driver's terminals, the coil inductance counted, in the arrays given. */
function levelOf(box: Box, to: readonly [Float64Array, Float64Array]): Curve {
  const scale = standardVolts * 10 ** (flatLevel(box) / 20);
  const { pressureRe: re, pressureIm: im } = coilPressureOf(box, to, scale);
  return curveOf({ title: 'Level at 1 m for 2.83 V', quantity: 'level', ...whole }, { re, im });
}

const highPassCurve = ({ frequency, order }: HighPass): Curve => slopeCurve(`BW${order}`, 'high', frequency);

/** What the drive passes before the amplifier, when the box has such a filter. */
const activeOf = (box: Box): { readonly active?: Curve } =>
  box.highPass === undefined ? {} : { active: highPassCurve(box.highPass) };

type Acoustic = Pick<Way, 'pressure' | 'impedance' | 'sd' | 'travel' | 'driver' | 'box' | 'active' | 'basis'>;

/**
 * The acoustic and electrical side of a way from a model. Curves are those at the driver's own terminals: a series
 * resistance that the box was sized with is left out, because the coils of the network bring it; a high-pass ahead of
 * the box becomes the way's active filter.
 */
export function acousticOf(source: Driver | Box, parameter: string): Acoustic | Problem {
  const box = source.kind === 'box' ? source : inWall(source);
  const driver = need(box.driver, [...boxFields, 'sd'], parameter);
  if (driver instanceof Problem) return driver;
  const { highPass: _, ...rest } = box;
  const bare: Box = { ...rest, seriesResistance: 0 };
  const travel = travelAt(bare, standardVolts);
  if (travel instanceof Problem) return travel;
  const [pressureRe, pressureIm, real, imaginary] = zeros(4, frequencies.length);
  return {
    pressure: levelOf(bare, [pressureRe, pressureIm]),
    impedance: curveOf(
      { title: 'Impedance', quantity: 'resistance', ...whole },
      impedanceValues(modelOf(bare), frequencies, loadOf(bare), [real, imaginary]),
    ),
    sd: driver.sd,
    travel: curveWhenRead({ title: 'Travel', quantity: 'travel', ...whole }, () => travelTimes(bare, travel)),
    driver: box.driver,
    ...(source.kind === 'box' ? { box: bare } : {}),
    ...activeOf(box),
    basis: 'model',
  };
}
