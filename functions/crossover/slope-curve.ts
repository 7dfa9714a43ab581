import { perNeper } from '../numeric/polar.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { sectionsOf } from './slope.ts';

/** Where nothing passes any more, dB. */
const SILENCE = -300;

/** Level, 0 dB in the pass band, and continuous phase of a slope at frequencies over the hand-over. The high-pass mirrors
 *  the low-pass. */
export function slopeOver(name: string, pass: string, ratios: Float64Array): Required<Pick<Curve, 'y' | 'phase'>> {
  const isHigh = pass === 'high';
  const y = new Float64Array(ratios.length);
  const phase = new Float64Array(ratios.length);
  for (const { at, q } of sectionsOf(name))
    for (let index = 0; index < ratios.length; index += 1) {
      const ratio = ratios[index]!;
      const x = (isHigh ? 1 / ratio : ratio) / at;
      const re = q === undefined ? 1 : 1 - x * x;
      const im = q === undefined ? x : x / q;
      const turn = Math.atan2(im, re);
      y[index]! -= perNeper * Math.log(re * re + im * im);
      phase[index]! += isHigh ? turn : -turn;
    }
  for (let index = 0; index < ratios.length; index += 1) y[index] = Math.max(SILENCE, y[index]!);
  return { y, phase };
}

/** A slope over the grid. */
export const slopeCurve = (name: string, pass: string, frequency: number): Curve => ({
  kind: 'curve',
  title: `${name} ${pass}-pass`,
  quantity: 'level',
  ...slopeOver(
    name,
    pass,
    frequencies.map((each) => each / frequency),
  ),
  from: frequencies[0]!,
  to: frequencies.at(-1)!,
});
