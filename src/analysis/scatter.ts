import { percentiles } from '../../functions/numeric/percentile.ts';
import { frequencies } from '../../functions/values/grid.ts';
import type { Place } from '../engine/types.ts';
import { Breath } from './breathe.ts';
import { QuestionError } from './place-error.ts';
import { scatterRuns, type RunColumn, type RunPart } from './scatter-runs.ts';
import type { Cause, Scatter, Scattered, ScatterQuestion } from './scatter-types.ts';
import { SheetModel, type Runner } from './sheet-model.ts';
import { spreadDocument, type Drawn } from './spread-document.ts';
import type { Result, Watch } from './subject-types.ts';
import { resultAt } from './sweep.ts';

const MOST_RUNS = 20_000;
/** So many frequencies are taken together. */
const BLOCK = 32;
const SHARES = [0.05, 0.5, 0.95] as const;

/** A scatter made ready: its runs can be done here or shared out. */
export interface ScatterPlan {
  readonly model: SheetModel;
  readonly runner: Runner;
  readonly drawn: readonly Drawn[];
  readonly results: readonly Result[];
}

/** @throws An error in words for the reader where something asked for cannot be spread or watched. */
export async function planScatter(model: SheetModel, question: ScatterQuestion): Promise<ScatterPlan> {
  const { runs, seed, spreads } = question;
  if (!Number.isInteger(runs) || runs < 10 || runs > MOST_RUNS)
    throw new QuestionError(`The runs must be a whole number from 10 to ${MOST_RUNS}, but are ${runs}.`);
  if (!Number.isInteger(seed)) throw new QuestionError(`The seed must be a whole number, but is ${seed}.`);
  if (spreads.length === 0) throw new QuestionError('Nothing spreads: give at least one driver or input a spread.');
  const results = question.results.map((place) => spreadable(resultAt(model, place)));
  const numberAt = (place: Place): number | undefined => {
    const present = model.input(place)?.present;
    return typeof present === 'number' ? present : undefined;
  };
  const { document, drawn } = spreadDocument(model.document, spreads, numberAt);
  const spread = await SheetModel.open(document);
  return { model: spread, runner: await spread.runner(drawn, results), drawn, results };
}

function spreadable(result: Result): Result {
  if (result.kind !== 'other') return result;
  throw new QuestionError(
    `${result.label} is no number, curve or verdict, so it has no percentiles and no odds: name a cell that reads one from it.`,
  );
}

/** Runs a sheet many times with its causes spread; the same seed gives the same runs. */
export async function scatter(model: SheetModel, question: ScatterQuestion, watch?: Watch): Promise<Scatter> {
  const plan = await planScatter(model, question);
  try {
    const { runner, drawn, results } = plan;
    const part = await scatterRuns(runner, drawn, results, question.seed, [0, question.runs], watch);
    return await summarise(plan, question, [part], watch);
  } finally {
    plan.model.dispose();
  }
}

/** Bands, odds and shares from the runs, however they were shared out. */
export async function summarise(
  plan: ScatterPlan,
  { runs, seed }: ScatterQuestion,
  parts: readonly RunPart[],
  watch?: Watch,
): Promise<Scatter> {
  const breath = new Breath(watch);
  const causes = await causesOf(plan);
  const results: Scattered[] = [];
  for (const [index, result] of plan.results.entries()) {
    const columns = parts.flatMap(({ columns: all }) => all[index] ?? []);
    results.push(await summaryOf(result, columns, causes[index] ?? [], runs, breath));
    await breath.take();
  }
  return { runs, seed, results, isCompiled: plan.runner.isCompiled };
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

/** A small part of a standard deviation, by which a cause is moved to see what it does. */
const STEP = 0.01;

/** First-order propagation: what one standard deviation of each cause does alone, and its share of the variance. */
async function causesOf({ runner, drawn, results }: ScatterPlan): Promise<readonly (readonly Cause[])[]> {
  const centres = drawn.map(({ centre }) => centre);
  const effects: number[][] = [];
  for (const [index, { centre, deviation, shape }] of drawn.entries()) {
    const step = STEP * deviation * (shape === 'normal' ? 1 : Math.abs(centre));
    if (step === 0) {
      effects.push(results.map(() => 0));
      continue;
    }
    const up = await runner.at(centres.with(index, centre + step));
    const down = await runner.at(centres.with(index, centre - step));
    effects.push(
      results.map((_, each) => {
        const [a, b] = [up[each], down[each]];
        return a?.kind === 'number' && b?.kind === 'number' ? (a.value - b.value) / (2 * STEP) : 0;
      }),
    );
  }
  return results.map((_, each) => {
    const variance = effects.reduce((sum, effect) => sum + (effect[each] ?? 0) ** 2, 0);
    return drawn
      .map(({ label }, index) => {
        const effect = effects[index]?.[each] ?? 0;
        return { label, effect, share: variance === 0 ? 0 : effect ** 2 / variance };
      })
      .sort((a, b) => b.share - a.share);
  });
}
