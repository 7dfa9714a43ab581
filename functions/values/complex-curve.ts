import { zeros } from '../numeric/blocks.ts';
import { intoPolar } from '../numeric/polar.ts';
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

/** Levels are cut off here, dB: what is silent has none. */
const silence = -300;

function polarOf(values: ComplexCurve, isLevel: boolean): Required<Pick<Curve, 'y' | 'phase'>> {
  const [y, phase] = [values.re.slice(), values.im.slice()];
  intoPolar(y, phase, isLevel ? 'decibels' : 'size');
  if (isLevel) for (let index = 0; index < y.length; index += 1) y[index] = Math.max(silence, y[index]!);
  return { y, phase };
}

/** A curve of complex values that nobody changes any more. Its magnitudes and phases are worked out when they are first
 *  read: sums and filters take it by {@link complexOf}. */
export function curveOf(
  shown: Pick<Curve, 'title' | 'from' | 'to'> & { readonly quantity: 'level' | 'resistance' },
  values: ComplexCurve,
): Curve {
  let polar: ReturnType<typeof polarOf> | undefined;
  const read = (): ReturnType<typeof polarOf> => (polar ??= polarOf(values, shown.quantity === 'level'));
  const curve: Curve = {
    kind: 'curve',
    ...shown,
    get y() {
      return read().y;
    },
    get phase() {
      return read().phase;
    },
  };
  known.set(curve, values);
  return curve;
}
