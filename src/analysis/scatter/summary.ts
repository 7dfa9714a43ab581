import { percentiles } from '../../../functions/numeric/percentile.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Breath } from '../breathe.ts';
import type { RunColumn, ScatterRuns } from './runs.ts';
import type { Cause, Scattered } from './types.ts';
import type { Result, Watch } from '../subject/types.ts';

/** So many frequencies are taken together. */
const BLOCK = 32;
const SHARES = [0.05, 0.5, 0.95] as const;

/** Bands, odds and shares from the runs, however they were shared out. */
export async function summarised({ of, runs }: ScatterRuns, watch?: Watch): Promise<readonly Scattered[]> {
  const breath = new Breath(watch);
  const results: Scattered[] = [];
  for (const { result, columns, causes } of of) {
    results.push(await summaryOf(result, columns, causes, runs, breath));
    await breath.take();
  }
  return results;
}

async function summaryOf(
  result: Result,
  columns: readonly RunColumn[],
  causes: readonly Cause[],
  runs: number,
  breath: Breath,
): Promise<Scattered> {
  const [first] = columns;
  if (first?.kind === 'curve') return bandsOf(result, columns, runs, breath);
  if (first?.kind === 'verdict') {
    const counts = [0, 0, 0, 0];
    for (const { values } of columns) for (const value of values) counts[value] = (counts[value] ?? 0) + 1;
    const [good = 0, caution = 0, fail = 0, problem = 0] = counts.map((count) => count / runs);
    return { kind: 'verdict', result, odds: { good, caution, fail, problem } };
  }
  const values = new Float64Array(runs);
  let at = 0;
  for (const column of columns) {
    values.set(column.values, at);
    at += column.values.length;
  }
  const [low = Number.NaN, middle = Number.NaN, high = Number.NaN] = percentiles(values, SHARES);
  const { mean, deviation } = momentsOf(values);
  return { kind: 'number', result, values, percentiles: { low, middle, high }, mean, deviation, causes };
}

async function bandsOf(
  result: Result,
  columns: readonly RunColumn[],
  runs: number,
  breath: Breath,
): Promise<Scattered> {
  const [low, middle, high] = SHARES.map(() => new Float64Array(frequencies.length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const curves = columns.filter((column) => column.kind === 'curve');
  for (let first = 0; first < frequencies.length; first += BLOCK) {
    if (breath.isDue) await breath.take();
    for (const [offset, values] of blockOf(curves, first, runs).entries()) {
      const [lowest] = values;
      const shares = isConstant(values) ? [lowest, lowest, lowest] : percentiles(values, SHARES);
      [low, middle, high].forEach((band, index) => {
        band[first + offset] = shares[index] ?? Number.NaN;
      });
    }
  }
  const from = Math.max(...curves.map((column) => column.from));
  const to = Math.min(...curves.map((column) => column.to));
  return { kind: 'curve', result, low, middle, high, from, to };
}

/** The values of all runs at some neighbouring frequencies: memory is read a run at a time. */
function blockOf(curves: readonly { readonly values: Float64Array }[], first: number, runs: number): Float64Array[] {
  const points = Math.min(BLOCK, frequencies.length - first);
  const block = Array.from({ length: points }, () => new Float64Array(runs));
  let before = 0;
  for (const { values } of curves) {
    const own = values.length / frequencies.length;
    for (const [point, runsOf] of block.entries()) {
      let at = first + point;
      for (let run = before; run < before + own; run++, at += frequencies.length)
        runsOf[run] = values[at] ?? Number.NaN;
    }
    before += own;
  }
  return block;
}

const isConstant = (values: Float64Array): boolean => {
  const [first] = values;
  return values.every((value) => value === first);
};

function momentsOf(values: Float64Array): { mean: number; deviation: number } {
  let [count, mean, squares] = [0, 0, 0];
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    count++;
    const away = value - mean;
    mean += away / count;
    squares += away * (value - mean);
  }
  return count === 0
    ? { mean: Number.NaN, deviation: Number.NaN }
    : { mean, deviation: count > 1 ? Math.sqrt(squares / (count - 1)) : 0 };
}
