import { zeros } from '../numeric/blocks.ts';
import { anglesOf, magnitudesOf } from '../numeric/polar.ts';
import type { Curve } from './curve.ts';
import { ShownCurve, type Shown } from './shown-curve.ts';

/** Complex values, one per frequency of the grid. */
export interface ComplexCurve {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

const pair = (length: number): ComplexCurve => {
  const [re, im] = zeros(2, length);
  return { re, im };
};

/** One over complex values, ohms of siemens and back, in the arrays given, which may be those of the values. */
export function inverseOf({ re, im }: ComplexCurve, to = pair(re.length)): ComplexCurve {
  const { re: real, im: imaginary } = to;
  for (let index = 0; index < re.length; index += 1) {
    const a = re[index]!;
    const b = im[index]!;
    const inverse = 1 / (a * a + b * b);
    real[index] = a * inverse;
    imaginary[index] = -b * inverse;
  }
  return to;
}

/** Levels are cut off here, dB: what is silent has none. */
const silence = -300;

function levelsOf({ re, im }: ComplexCurve): Float64Array {
  const levels = magnitudesOf(re, im, 'decibels');
  for (let index = 0; index < levels.length; index += 1) levels[index] = Math.max(silence, levels[index]!);
  return levels;
}

type Solved = 'level' | 'resistance';

/** A curve by its complex values. Its magnitudes and phases are properties of its own, as those of any curve, so that they
 *  are copied with it; the engine builds all such curves alike, since they share what works them out. */
class SolvedCurve extends ShownCurve<Solved> implements Curve {
  declare readonly y: Float64Array;
  declare readonly phase: Float64Array;
  readonly #values: ComplexCurve;
  #magnitudes: Float64Array | undefined;
  #angles: Float64Array | undefined;

  constructor(shown: Shown<Solved>, values: ComplexCurve) {
    super(shown);
    this.#values = values;
    Object.defineProperty(this, 'y', SolvedCurve.#y);
    Object.defineProperty(this, 'phase', SolvedCurve.#phase);
  }

  static readonly #y = {
    enumerable: true,
    get(this: SolvedCurve): Float64Array {
      const { re, im } = this.#values;
      return (this.#magnitudes ??= this.quantity === 'level' ? levelsOf(this.#values) : magnitudesOf(re, im, 'size'));
    },
  };

  static readonly #phase = {
    enumerable: true,
    get(this: SolvedCurve): Float64Array {
      return (this.#angles ??= anglesOf(this.#values.re, this.#values.im));
    },
  };

  /** The values of a curve that was made of some. */
  static valuesOf(curve: Curve): ComplexCurve | undefined {
    return #values in curve ? curve.#values : undefined;
  }
}

/** A curve of complex values that nobody changes any more. Its magnitudes and its phases are each worked out when they
 *  are first read: sums and filters take it by {@link complexOf}. */
export const curveOf = (shown: Shown<Solved>, values: ComplexCurve): Curve => new SolvedCurve(shown, values);

const known = new WeakMap<Curve, ComplexCurve>();

/** A curve by its real and imaginary part, remembered with the curve: a level as the ratio whose decibels it holds, an
 *  impedance as it is. What has no phase is real. */
export function complexOf(curve: Curve): ComplexCurve {
  const before = SolvedCurve.valuesOf(curve) ?? known.get(curve);
  if (before !== undefined) return before;
  const { quantity, y, phase } = curve;
  const made = pair(y.length);
  const { re, im } = made;
  for (let index = 0; index < y.length; index += 1) {
    const size = quantity === 'level' ? 10 ** (y[index]! / 20) : y[index]!;
    const angle = phase === undefined ? 0 : phase[index]!;
    re[index] = size * Math.cos(angle);
    im[index] = size * Math.sin(angle);
  }
  known.set(curve, made);
  return made;
}
