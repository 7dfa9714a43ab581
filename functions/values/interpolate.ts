import type { Curve } from './curve.ts';
import { frequencies, placeOf } from './grid.ts';
import { Problem } from './problem.ts';
import { betweenRows, rowsOf } from './resampled.ts';
import { measured, say } from './say.ts';

/** A frequency band in hertz, not empty. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

const slack = 1e-9;
const bottom = frequencies[0]!;
const top = frequencies[frequencies.length - 1]!;

/** A place between points of the grid, or of the table that the values came from, straight in log f. Beyond the ends the
 *  end value. */
export function readAt(y: Float64Array, frequency: number): number {
  const rows = rowsOf(y);
  if (rows !== undefined) return betweenRows(rows, frequency);
  const place = Math.min(Math.max(placeOf(frequency), 0), y.length - 1);
  const index = Math.min(Math.floor(place), y.length - 2);
  const share = place - index;
  return y[index]! + (y[index + 1]! - y[index]!) * share;
}

/** The part of a band in which a curve holds, or why there is none. */
export function bandOf(curve: Curve, from: number, to: number): Band | Problem {
  if (from >= to)
    return new Problem(
      say`The band runs from ${measured(from, 'frequency')} to ${measured(to, 'frequency')}; put the lower end first.`,
      'from',
    );
  const band = { from: Math.max(from, curve.from, bottom), to: Math.min(to, curve.to, top) };
  if (band.from < band.to) return band;
  return new Problem(
    say`“${curve.title}” holds from ${measured(curve.from, 'frequency')} to ${measured(curve.to, 'frequency')}, outside the band asked for; choose a band inside it.`,
    'from',
  );
}

/** The band in which all the curves hold, or why there is none. */
export function commonBand(curves: readonly Band[], parameter = 'curves'): Band | Problem {
  const from = Math.max(...curves.map((curve) => curve.from));
  const to = Math.min(...curves.map((curve) => curve.to));
  if (from < to) return { from, to };
  return new Problem(
    say`The curves hold in bands that do not meet: one begins at ${measured(from, 'frequency')}, another ends at ${measured(to, 'frequency')}.`,
    parameter,
  );
}

/** Refuses to read a curve where it is not meant to hold. */
export function outsideOf(curve: Curve, frequency: number): Problem | undefined {
  const inside = frequency >= Math.max(curve.from, bottom) * (1 - slack);
  if (inside && frequency <= Math.min(curve.to, top) * (1 + slack)) return undefined;
  return new Problem(
    say`${measured(frequency, 'frequency')} lies outside the band in which “${curve.title}” holds, ${measured(curve.from, 'frequency')} to ${measured(curve.to, 'frequency')}; choose a frequency inside it.`,
    'frequency',
  );
}

export interface Extreme {
  readonly frequency: number;
  readonly value: number;
}

/** The highest (`sense` 1) or lowest (−1) place of a curve in a band: a row of its table, or between grid points by a
 *  parabola in log f. */
export function extremeIn(curve: Curve, band: Band, sense: 1 | -1): Extreme {
  const y = curve.y;
  const rows = (rowsOf(y)?.at ?? []).filter((frequency) => frequency > band.from && frequency < band.to);
  const fixed = [band.from, band.to, ...rows].map((frequency) => ({ frequency, value: readAt(y, frequency) }));
  let best = fixed.reduce((one, other) => (sense * other.value > sense * one.value ? other : one));
  if (rowsOf(y) !== undefined) return best;
  let at = -1;
  const first = Math.ceil(placeOf(band.from) - slack);
  const last = Math.floor(placeOf(band.to) + slack);
  for (let index = Math.max(first, 0); index <= Math.min(last, y.length - 1); index += 1) {
    if (sense * y[index]! <= sense * best.value) continue;
    best = { frequency: frequencies[index]!, value: y[index]! };
    at = index;
  }
  if (at <= first || at >= last) return best;
  const [before, here, after] = [y[at - 1]!, y[at]!, y[at + 1]!];
  const bend = before - 2 * here + after;
  if (bend === 0) return best;
  const shift = (before - after) / (2 * bend);
  return { frequency: best.frequency * 2 ** (shift / 48), value: here - ((before - after) * shift) / 4 };
}

/** Where a curve passes a value in a band, ascending; `direction` as the frequency rises. */
export function crossingsIn(curve: Curve, band: Band, value: number, direction: 'upwards' | 'downwards'): number[] {
  const sense = direction === 'upwards' ? 1 : -1;
  const found: number[] = [];
  let place = band.from;
  let before = sense * (readAt(curve.y, place) - value);
  const goOn = (next: number, height: number): void => {
    const after = sense * (height - value);
    if (before < 0 && after >= 0) found.push(place * (next / place) ** (before / (before - after)));
    place = next;
    before = after;
  };
  const { at, values } = rowsOf(curve.y) ?? { at: frequencies, values: curve.y };
  for (let index = 0; index < at.length && at[index]! < band.to; index += 1)
    if (at[index]! > band.from) goOn(at[index]!, values[index]!);
  goOn(band.to, readAt(curve.y, band.to));
  return found;
}
