import { frequencies } from './grid.ts';

/** Rows of a table: frequencies in hertz, rising, and the value at each. */
interface Rows {
  readonly at: readonly number[];
  readonly values: readonly number[];
}

const known = new WeakMap<Float64Array, Rows>();

/** The rows that values over the grid were made of, if they were; they are read from these, not from the grid, so that a
 *  curve has the values of its table at the frequencies of its table. */
export const rowsOf = (y: Float64Array): Rows | undefined => known.get(y);

/** Between rows, straight in log f; beyond the ends the end value. */
export function betweenRows({ at, values }: Rows, frequency: number): number {
  let [low, high] = [0, at.length - 1];
  if (frequency <= at[low]!) return values[low]!;
  if (frequency >= at[high]!) return values[high]!;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at[middle]! <= frequency) low = middle;
    else high = middle;
  }
  const share = Math.log(frequency / at[low]!) / Math.log(at[high]! / at[low]!);
  return values[low]! + share * (values[high]! - values[low]!);
}

/** Rows over the grid, remembered with the values. */
export function overGrid(at: readonly number[], values: readonly number[]): Float64Array {
  const rows = { at, values };
  const y = frequencies.map((frequency) => betweenRows(rows, frequency));
  known.set(y, rows);
  return y;
}
