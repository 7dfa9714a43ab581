import type { Place } from '../../engine/types.ts';
import { QuestionError } from '../subject/place-error.ts';
import { scatterRuns, type ScatterPart } from './runs.ts';
import { summarised } from './summary.ts';
import type { Cause, Scatter, ScatterQuestion, ScatterShare } from './types.ts';
import { DocumentModel, type Runner } from '../model/document-model.ts';
import { spreadDocument, type Drawn } from './spread-document.ts';
import type { Result, Watch } from '../subject/types.ts';
import { resultAt } from '../sweep/sweep.ts';

const MOST_RUNS = 20_000;

/** A scatter made ready. */
interface ScatterPlan {
  readonly model: DocumentModel;
  readonly runner: Runner;
  readonly drawn: readonly Drawn[];
  readonly results: readonly Result[];
}

/** @throws An error in words for the reader where something asked for cannot be spread or watched. */
async function planScatter(model: DocumentModel, question: ScatterQuestion): Promise<ScatterPlan> {
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
  const spread = await DocumentModel.open(document);
  return { model: spread, runner: await spread.runner(drawn, results), drawn, results };
}

function spreadable(result: Result): Result {
  if (result.kind !== 'other') return result;
  throw new QuestionError(
    `${result.label} is no number, curve or verdict, so it has no percentiles and no odds: name a cell that reads one from it.`,
  );
}

/** Runs a sheet many times with its causes spread; the same seed gives the same runs. */
export async function scatter(model: DocumentModel, question: ScatterQuestion, watch?: Watch): Promise<Scatter> {
  const { runs, seed } = question;
  const { of, isCompiled } = await scatterPart(model, { ...question, from: 0, to: runs }, watch);
  return { runs, seed, results: await summarised({ of, runs }, watch), isCompiled };
}

/** Some of the runs of a scatter; together with the others they are what one thread alone draws. */
export async function scatterPart(model: DocumentModel, share: ScatterShare, watch?: Watch): Promise<ScatterPart> {
  const plan = await planScatter(model, share);
  try {
    const { runner, drawn, results } = plan;
    const columns = await scatterRuns(runner, drawn, results, share.seed, [share.from, share.to], watch);
    const causes = await causesOf(plan);
    return {
      of: results.map((result, index) => ({
        result,
        columns: columns.slice(index, index + 1),
        causes: causes[index] ?? [],
      })),
      isCompiled: runner.isCompiled,
    };
  } finally {
    plan.model.dispose();
  }
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
