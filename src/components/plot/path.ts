import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies, placeOf } from '../../../functions/values/grid.ts';
import type { Frame } from './frame.ts';

/** Pixels beyond the drawing at which a path is cut off; the part outside is clipped anyway. */
const OVERHANG = 40;

const tenth = (pixels: number): number => Math.round(pixels * 10) / 10;

/** Where a path may have points, as text: they are the same for all curves in frames of a size. */
interface Pencil {
  /** Places in the grid of frequencies, no two within a pixel. */
  readonly places: readonly number[];
  readonly xs: readonly string[];
}

const pencils = new Map<string, Pencil>();
/** A window has a few sizes of plots at a time; those of sizes passed on the way to one are let go. */
const MOST_PENCILS = 16;

function pencilFor(frame: Frame): Pencil {
  const key = `${frame.width} ${frame.horizontal.join(' ')}`;
  const held = pencils.get(key);
  if (held) return held;
  if (pencils.size >= MOST_PENCILS) pencils.clear();
  const [low, high] = frame.horizontal;
  const places: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const [place, frequency] of frequencies.entries()) {
    const x = frame.x(frequency);
    if (frequency < low / 1.02 || frequency > high * 1.02 || x - last < 1) continue;
    places.push(place);
    last = x;
  }
  const pencil = { places, xs: places.map((place) => `${tenth(frame.x(frequencies[place] ?? 0))},`) };
  pencils.set(key, pencil);
  return pencil;
}

/** The `d` of a curve: only where it holds, broken where it has no value. */
export function pathOf(curve: Curve, frame: Frame, unit: (si: number) => number): string {
  const { places, xs } = pencilFor(frame);
  const bottom = frame.height + OVERHANG;
  let path = '';
  let pen = 'M';
  for (let index = 0; index < places.length; index++) {
    const place = places[index] ?? 0;
    const frequency = frequencies[place] ?? 0;
    const value = unit(curve.y[place] ?? Number.NaN);
    if (frequency < curve.from || frequency > curve.to || Number.isNaN(value)) {
      pen = 'M';
      continue;
    }
    const y = frame.y(value);
    path += pen + xs[index] + (y < -OVERHANG ? -OVERHANG : y > bottom ? bottom : Math.round(y * 10) / 10);
    pen = 'L';
  }
  return path;
}

/** Heights of a curve in pixels at every `stride` pixels, NaN where it does not hold: what labels keep clear of. */
export function heightsOf(curve: Curve, frame: Frame, unit: (si: number) => number, stride: number): Float64Array {
  const count = Math.floor(frame.width / stride) + 1;
  const heights = new Float64Array(count);
  for (let column = 0; column < count; column++) {
    const hertz = frame.hertz(column * stride);
    heights[column] = hertz < curve.from || hertz > curve.to ? Number.NaN : frame.y(unit(valueAt(curve, hertz)));
  }
  return heights;
}

/** The curve's SI value at a frequency, interpolated along the logarithm; NaN off the grid. */
export function valueAt(curve: Curve, hertz: number): number {
  const place = placeOf(hertz);
  const index = Math.min(Math.max(Math.floor(place), 0), frequencies.length - 2);
  const below = curve.y[index] ?? Number.NaN;
  const above = curve.y[index + 1] ?? Number.NaN;
  return place < -1e-6 || place > frequencies.length - 1 + 1e-6
    ? Number.NaN
    : below + (above - below) * (place - index);
}
