import { sumAt } from '../crossover/direction.ts';
import type { ComplexCurve } from '../values/complex-curve.ts';
import { sphereField } from '../numeric/sphere.ts';
import { frequencies } from '../values/grid.ts';
import type { Way } from '../values/way.ts';
import { quarter, stepOfAngles } from './angles.ts';
import { middleOfStep } from './edge.ts';
import { remembering } from '../remembering.ts';

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

/** Points an octave, as on the grid of frequencies: a width then only shifts all of them alike. */
const perOctave = 48;

/** The cabinet at one size: the axis, then squared pressures towards each angle over that on the axis. */
type AtSize = Float64Array;

const sizes = new Map<number, AtSize>();

/** At the size ka of 2^(place/48), computed once. */
function atPlace(place: number): AtSize {
  const known = sizes.get(place);
  if (known) return known;
  const { re, im } = sphereField(2 ** (place / perOctave), cosines);
  const square = re[0]! ** 2 + im[0]! ** 2;
  const made = Float64Array.from([re[0]!, im[0]!, ...re.map((real, step) => (real ** 2 + im[step]! ** 2) / square)]);
  sizes.set(place, made);
  return made;
}

/** Between sizes by the cubic through four of them: within a thousandth of a decibel of the series, which ripples
 *  by that much between them high up. */
const inCabinet = remembering((panelWidth: number): Cabinet => {
  const axis = { re: new Float64Array(count), im: new Float64Array(count) };
  const power = cosines.map(() => new Float64Array(count));
  const start = perOctave * Math.log2(cabinetSize(panelWidth, frequencies[0]!));
  const first = Math.floor(start);
  const t = start - first;
  const weights = [
    (-t * (t - 1) * (t - 2)) / 6,
    ((t + 1) * (t - 1) * (t - 2)) / 2,
    (-(t + 1) * t * (t - 2)) / 2,
    ((t + 1) * t * (t - 1)) / 6,
  ] as const;
  for (let index = 0; index < count; index += 1) {
    const a = atPlace(first + index - 1);
    const b = atPlace(first + index);
    const c = atPlace(first + index + 1);
    const d = atPlace(first + index + 2);
    const between = (place: number): number =>
      weights[0] * a[place]! + weights[1] * b[place]! + weights[2] * c[place]! + weights[3] * d[place]!;
    axis.re[index] = between(0);
    axis.im[index] = between(1);
    for (let step = 0; step < cosines.length; step += 1) power[step]![index] = between(step + 2);
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
