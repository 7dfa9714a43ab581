import { zeros } from '../numeric/blocks.ts';
import { anglesOf, magnitudesOf } from '../numeric/polar.ts';
import type { Curve } from './curve.ts';

/** Complex values, one per frequency of the grid. */
export interface ComplexCurve {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

const known = new WeakMap<Curve, ComplexCurve>();

/** A curve by its real and imaginary part, remembered with the curve: a level as the ratio whose decibels it holds, an
 *  impedance as it is. What has no phase is real. */
export function complexOf(curve: Curve): ComplexCurve {
  const before = known.get(curve);
  if (before !== undefined) return before;
  const { quantity, y, phase } = curve;
  const [re, im] = zeros(2, y.length);
  for (let index = 0; index < y.length; index += 1) {
    const size = quantity === 'level' ? 10 ** (y[index]! / 20) : y[index]!;
    const angle = phase === undefined ? 0 : phase[index]!;
    re[index] = size * Math.cos(angle);
    im[index] = size * Math.sin(angle);
  }
  const made = { re, im };
  known.set(curve, made);
  return made;
}

/** One over complex values: ohms of siemens, and back. */
export function inverseOf({ re, im }: ComplexCurve): ComplexCurve {
  const [real, imaginary] = zeros(2, re.length);
  for (let index = 0; index < re.length; index += 1) {
    const inverse = 1 / (re[index]! * re[index]! + im[index]! * im[index]!);
    real[index] = re[index]! * inverse;
    imaginary[index] = -im[index]! * inverse;
  }
  return { re: real, im: imaginary };
}

/** Levels are cut off here, dB: what is silent has none. */
const silence = -300;

function levelsOf({ re, im }: ComplexCurve): Float64Array {
  const levels = magnitudesOf(re, im, 'decibels');
  for (let index = 0; index < levels.length; index += 1) levels[index] = Math.max(silence, levels[index]!);
  return levels;
}

/** A curve of complex values that nobody changes any more. Its magnitudes and its phases are each worked out when they
 *  are first read: sums and filters take it by {@link complexOf}. */
export function curveOf(
  shown: Pick<Curve, 'title' | 'from' | 'to'> & { readonly quantity: 'level' | 'resistance' },
  values: ComplexCurve,
): Curve {
  let magnitudes: Float64Array | undefined;
  let angles: Float64Array | undefined;
  const curve: Curve = {
    kind: 'curve',
    ...shown,
    get y() {
      return (magnitudes ??=
        shown.quantity === 'level' ? levelsOf(values) : magnitudesOf(values.re, values.im, 'size'));
    },
    get phase() {
      return (angles ??= anglesOf(values.re, values.im));
    },
  };
  known.set(curve, values);
  return curve;
}
