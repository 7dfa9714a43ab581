import { soundSpeed } from '../air.ts';
import { pistonFactor } from '../numeric/bessel.ts';
import { zeros } from '../numeric/blocks.ts';
import { complexOf, type ComplexCurve } from '../values/complex-curve.ts';
import { commonBand } from '../values/interpolate.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import type { Way } from '../values/way.ts';
import { transferOf } from './ladder.ts';

/** Pressures over the grid to add to. */
export function silence(): ComplexCurve {
  const [re, im] = zeros(2, frequencies.length);
  return { re, im };
}

const driven = new WeakMap<Way, ComplexCurve>();

/** Volts at the driver over volts at the terminals of the loudspeaker: network, active filter, gain, delay, polarity. */
export function driveOf(way: Way): ComplexCurve {
  const known = driven.get(way);
  if (known !== undefined) return known;
  const { re, im } = transferOf(way.network, way.impedance);
  const gain = way.polarity * 10 ** (way.gain / 20);
  const { active, delay } = way;
  const isPlain = active === undefined && delay === 0;
  if (isPlain && gain === 1) {
    driven.set(way, { re, im });
    return { re, im };
  }
  const { re: outRe, im: outIm } = silence();
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

/** Where one is, as a way is seen from there: how much nearer it is, metres, and the size k·a·sin of the piston over the
 *  wave number, metres. */
export interface Seen {
  readonly nearer: number;
  readonly size: number;
}

/** Adds the product of two curves to a third. */
function addProduct(one: ComplexCurve, other: ComplexCurve, to: ComplexCurve): void {
  const { re: aRe, im: aIm } = one;
  const { re: bRe, im: bIm } = other;
  const { re, im } = to;
  for (let index = 0; index < re.length; index += 1) {
    re[index] = re[index]! + aRe[index]! * bRe[index]! - aIm[index]! * bIm[index]!;
    im[index] = im[index]! + aRe[index]! * bIm[index]! + aIm[index]! * bRe[index]!;
  }
}

/** Adds the complex pressure of a way over 20 µPa, for 2.83 V at the terminals of the loudspeaker, far away and referred to
 *  1 m: with the phase of being nearer and the directivity of a piston. */
export function addWay(way: Way, { nearer, size }: Seen, { re, im }: ComplexCurve): void {
  const drive = driveOf(way);
  const own = complexOf(way.pressure);
  if (nearer === 0 && size === 0) {
    addProduct(drive, own, { re, im });
    return;
  }
  for (let index = 0; index < re.length; index += 1) {
    const driveRe = drive.re[index]!;
    const driveIm = drive.im[index]!;
    const ownRe = own.re[index]!;
    const ownIm = own.im[index]!;
    const real = driveRe * ownRe - driveIm * ownIm;
    const imaginary = driveRe * ownIm + driveIm * ownRe;
    const wave = (2 * Math.PI * frequencies[index]!) / soundSpeed;
    const factor = size === 0 ? 1 : pistonFactor(wave * size);
    const cosine = factor * Math.cos(wave * nearer);
    const sine = factor * Math.sin(wave * nearer);
    re[index] = re[index]! + real * cosine - imaginary * sine;
    im[index] = im[index]! + real * sine + imaginary * cosine;
  }
}

/** Complex pressure of a way over 20 µPa, at 1 m on its own axis. The arrays are the caller's own. */
export function wayField(way: Way): ComplexCurve {
  const field = silence();
  addWay(way, { nearer: 0, size: 0 }, field);
  return field;
}
