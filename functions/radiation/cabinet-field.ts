import { sumAt } from '../crossover/direction.ts';
import type { ComplexCurve } from '../crossover/ladder.ts';
import { sphereField } from '../numeric/sphere.ts';
import { frequencies } from '../values/grid.ts';
import type { Way } from '../values/way.ts';
import { quarter, stepOfAngles } from './angles.ts';
import { middleOfStep } from './edge.ts';
import { remembering } from './remembering.ts';

const count = frequencies.length;

/** The size ka of a sphere where its level on the axis has risen by half of the step, 3.01 dB. */
const middleOfSphere = 0.9920538706;

/** The size ka of the sphere that stands for a cabinet: the one whose step has its middle where the panel has it. */
export const cabinetSize = (panelWidth: number, frequency: number): number =>
  (middleOfSphere * frequency) / middleOfStep(panelWidth);

/** How a cabinet bends sound towards each angle. */
export interface Cabinet {
  /** On the axis, over a wide wall. */
  readonly axis: ComplexCurve;
  /** Squared pressure towards 0°, 10° … 180° over that on the axis. */
  readonly power: readonly Float64Array[];
}

const cosines = Array.from({ length: 2 * quarter + 1 }, (_, step) => Math.cos(step * stepOfAngles));

const inCabinet = remembering((panelWidth): Cabinet => {
  const axis = { re: new Float64Array(count), im: new Float64Array(count) };
  const power = cosines.map(() => new Float64Array(count));
  for (let index = 0; index < count; index += 1) {
    const { re, im } = sphereField(cabinetSize(panelWidth, frequencies[index]!), cosines);
    axis.re[index] = re[0]!;
    axis.im[index] = im[0]!;
    const square = re[0]! ** 2 + im[0]! ** 2;
    for (let step = 0; step < cosines.length; step += 1)
      power[step]![index] = (re[step]! ** 2 + im[step]! ** 2) / square;
  }
  return { axis, power };
});

/** In an endless wall all goes to the front; of the angle along the wall half lies in front. */
const inWall: Cabinet = {
  axis: { re: new Float64Array(count).fill(1), im: new Float64Array(count) },
  power: cosines.map((_, step) => new Float64Array(count).fill(step < quarter ? 1 : step === quarter ? 0.5 : 0)),
};

export const cabinetOf = (panelWidth: number | undefined): Cabinet =>
  panelWidth === undefined ? inWall : inCabinet(panelWidth);

/** A model gives the level in a wide wall, so it gets the step of the cabinet; a measured curve was taken in it. */
export const isWithoutStep = (way: Way): boolean => way.basis === 'model';

/** The ways together towards an angle on one of the two circles, complex, at 1 m for 2.83 V, in their cabinet. */
export function fieldTowards(
  ways: readonly Way[],
  panelWidth: number | undefined,
  plane: 'horizontal' | 'vertical',
  angle: number,
): ComplexCurve {
  const direction = plane === 'vertical' ? { horizontal: 0, vertical: angle } : { horizontal: angle, vertical: 0 };
  if (panelWidth === undefined) return sumAt(ways, direction);
  const models = sumAt(ways.filter(isWithoutStep), direction);
  const measured = sumAt(
    ways.filter((way) => !isWithoutStep(way)),
    direction,
  );
  const sum = { re: new Float64Array(count), im: new Float64Array(count) };
  for (let index = 0; index < count; index += 1) {
    const { re, im } = sphereField(cabinetSize(panelWidth, frequencies[index]!), [Math.cos(angle), 1]);
    const [towardsRe, towardsIm, axisRe, axisIm] = [re[0]!, im[0]!, re[1]!, im[1]!];
    const square = axisRe ** 2 + axisIm ** 2;
    const overRe = (towardsRe * axisRe + towardsIm * axisIm) / square;
    const overIm = (towardsIm * axisRe - towardsRe * axisIm) / square;
    const [aRe, aIm, bRe, bIm] = [models.re[index]!, models.im[index]!, measured.re[index]!, measured.im[index]!];
    sum.re[index] = aRe * towardsRe - aIm * towardsIm + bRe * overRe - bIm * overIm;
    sum.im[index] = aRe * towardsIm + aIm * towardsRe + bRe * overIm + bIm * overRe;
  }
  return sum;
}
