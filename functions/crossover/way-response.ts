import { commonBand } from '../values/interpolate.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import type { Way } from '../values/way.ts';
import { transferOf, type ComplexCurve } from './ladder.ts';

const driven = new WeakMap<Way, ComplexCurve>();

/** Volts at the driver over volts at the terminals of the loudspeaker: network, active filter, gain, delay, polarity. */
export function driveOf(way: Way): ComplexCurve {
  const known = driven.get(way);
  if (known !== undefined) return known;
  const { re, im } = transferOf(way.network, way.impedance);
  const outRe = new Float64Array(re.length);
  const outIm = new Float64Array(re.length);
  const gain = way.polarity * 10 ** (way.gain / 20);
  const { active, delay } = way;
  const isPlain = active === undefined && delay === 0;
  if (isPlain && gain === 1) {
    driven.set(way, { re, im });
    return { re, im };
  }
  for (let index = 0; index < re.length; index += 1) {
    const size = active === undefined ? gain : gain * 10 ** (active.y[index]! / 20);
    const angle = (active?.phase?.[index] ?? 0) - 2 * Math.PI * frequencies[index]! * delay;
    const cosine = size * Math.cos(angle);
    const sine = size * Math.sin(angle);
    outRe[index] = re[index]! * cosine - im[index]! * sine;
    outIm[index] = re[index]! * sine + im[index]! * cosine;
  }
  const made = { re: outRe, im: outIm };
  driven.set(way, made);
  return made;
}

/** The band in which all that a way is made of holds; never empty, see {@link wayPressure}. */
export function bandOfWay(way: Way): { readonly from: number; readonly to: number } {
  const parts = [way.pressure, way.impedance, ...(way.active === undefined ? [] : [way.active])];
  const band = commonBand(parts);
  return band instanceof Problem ? { from: way.pressure.from, to: way.pressure.to } : band;
}

/** Level in dB and phase of complex pressures over 20 µPa. Levels are cut off at −300 dB. */
export function pressureCurve(title: string, { re, im }: ComplexCurve, from: number, to: number): Curve {
  const y = new Float64Array(re.length);
  const phase = new Float64Array(re.length);
  for (let index = 0; index < y.length; index += 1) {
    const real = re[index]!;
    const imaginary = im[index]!;
    y[index] = Math.max(-300, 10 * Math.log10(real * real + imaginary * imaginary));
    phase[index] = Math.atan2(imaginary, real);
  }
  return { kind: 'curve', title, quantity: 'level', y, phase, from, to };
}

const pressures = new WeakMap<Curve, ComplexCurve>();

/** Keeps the complex values that a level curve was made of, so that they need not be worked out again. */
export const rememberPressure = (curve: Curve, values: ComplexCurve): void => {
  pressures.set(curve, values);
};

/** A level curve with phase as complex pressure over 20 µPa. */
function pressureValues(curve: Curve): ComplexCurve {
  const known = pressures.get(curve);
  if (known !== undefined) return known;
  const { y, phase } = curve;
  const re = new Float64Array(y.length);
  const im = new Float64Array(y.length);
  for (let index = 0; index < y.length; index += 1) {
    const size = 10 ** (y[index]! / 20);
    const angle = phase?.[index] ?? 0;
    re[index] = size * Math.cos(angle);
    im[index] = size * Math.sin(angle);
  }
  const made = { re, im };
  pressures.set(curve, made);
  return made;
}

/** Complex pressure of a way over 20 µPa, at 1 m on its own axis, for 2.83 V at the terminals of the loudspeaker. The
 *  arrays are the caller's own. */
export function wayField(way: Way): ComplexCurve {
  const { re, im } = driveOf(way);
  const { re: ofRe, im: ofIm } = pressureValues(way.pressure);
  const outRe = new Float64Array(re.length);
  const outIm = new Float64Array(re.length);
  for (let index = 0; index < re.length; index += 1) {
    const real = ofRe[index]!;
    const imaginary = ofIm[index]!;
    outRe[index] = re[index]! * real - im[index]! * imaginary;
    outIm[index] = re[index]! * imaginary + im[index]! * real;
  }
  return { re: outRe, im: outIm };
}
