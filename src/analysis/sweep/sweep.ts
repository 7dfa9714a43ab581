import type { CellValue, Place } from '../../engine/types.ts';
import { Breath } from '../breathe.ts';
import { contourLines, roundLevels } from './contours.ts';
import { placeError, QuestionError } from '../subject/place-error.ts';
import type { DocumentModel } from '../model/document-model.ts';
import {
  standingOf,
  standings,
  type Input,
  type Result,
  type Span,
  type Standing,
  type Watch,
} from '../subject/types.ts';
import type { MapQuestion, ResultMap, Sweep, SweepQuestion } from './types.ts';

/** So many points a map has at most. */
const MOST_POINTS = 250_000;

/** One input over a range, everything else as it stands.
 *  @throws An error in words for the reader where a cell is no input or no result, or the range cannot be walked. */
export async function sweep(model: DocumentModel, question: SweepQuestion, watch?: Watch): Promise<Sweep> {
  const input = inputAt(model, question.input);
  const results = question.results.map((place) => resultAt(model, place));
  const values = spanValues(question.input, input);
  const runner = await model.runner([input], [...results, ...model.verdicts]);
  const breath = new Breath(watch);
  const rows: (readonly CellValue[])[] = [];
  for (const value of values) {
    await breath.take({ done: rows.length, of: values.length });
    rows.push(await runner.at([value]));
  }
  return {
    input,
    values,
    columns: results.map((result, index) => ({
      result,
      cells: rows.map((row) => row[index] ?? { kind: 'empty' }),
    })),
    worst: rows.map((row) => worstOf(row.slice(results.length))),
  };
}

/** Two inputs over their ranges: a number as a map with contour lines, and where every verdict is good. */
export async function map(model: DocumentModel, question: MapQuestion, watch?: Watch): Promise<ResultMap> {
  const across = inputAt(model, question.across);
  const up = inputAt(model, question.up);
  if (across === up) throw new QuestionError('A map needs two inputs, but the same one is given twice.');
  const result = resultAt(model, question.result);
  const verdicts = question.verdicts?.map((place) => resultAt(model, place)) ?? model.verdicts;
  const acrossValues = spanValues(question.across, across);
  const upValues = spanValues(question.up, up);
  const of = acrossValues.length * upValues.length;
  if (of > MOST_POINTS)
    throw new QuestionError(`A map has at most ${MOST_POINTS} points, but ${of} are asked for: take fewer steps.`);
  const runner = await model.runner([across, up], [result, ...verdicts]);
  const breath = new Breath(watch);
  const values = new Float64Array(of);
  const worst = new Uint8Array(of);
  let done = 0;
  for (const y of upValues) {
    for (const x of acrossValues) {
      if (breath.isDue) await breath.take({ done, of });
      const settings = [x, y];
      const [number, ...judged] = runner.quick(settings) ?? (await runner.exact(settings));
      values[done] = number?.kind === 'number' ? number.value : Number.NaN;
      worst[done] = standings.indexOf(worstOf(judged));
      done++;
    }
  }
  const field = { across: acrossValues, up: upValues, values };
  const levels = question.levels ?? roundLevels(values);
  const good = { across: acrossValues, up: upValues, values: Float64Array.from(worst, (each) => (each === 0 ? 1 : 0)) };
  return {
    across,
    up,
    acrossValues,
    upValues,
    result,
    values,
    worst,
    contours: levels.map((level) => ({ level, lines: contourLines(field, level) })),
    goodEdge: contourLines(good, 0.5),
    verdicts,
  };
}

export function inputAt(model: DocumentModel, place: Place): Input {
  const input = model.input(place);
  if (!input) throw placeError(model.document, place, 'no input: name a cell with a typed number');
  return input;
}

export function resultAt(model: DocumentModel, place: Place): Result {
  const result = model.result(place);
  if (!result) throw placeError(model.document, place, 'no result: name a cell with a formula');
  return result;
}

/** The worst of some verdicts; good where there are none. */
export const worstOf = (verdicts: readonly CellValue[]): Standing =>
  standings[verdicts.reduce((worst, value) => Math.max(worst, standings.indexOf(standingOf(value))), 0)] ?? 'problem';

function spanValues({ from, to, steps, spacing }: Span, { label, present }: Input): number[] {
  if (typeof present !== 'number') throw new QuestionError(`${label} takes words, and words have no range.`);
  if (!Number.isInteger(steps) || steps < 2 || steps > 10_000)
    throw new QuestionError(`The steps over ${label} must be a whole number from 2 to 10000, but are ${steps}.`);
  if (!Number.isFinite(from) || !Number.isFinite(to) || from === to)
    throw new QuestionError(`The range of ${label} must have two different ends.`);
  if (spacing === 'logarithmic' && !(from > 0 && to > 0))
    throw new QuestionError(`Logarithmic steps over ${label} need both ends above 0: take linear ones.`);
  return Array.from({ length: steps }, (_, index) => {
    const share = index / (steps - 1);
    if (index === 0) return from;
    if (index === steps - 1) return to;
    return spacing === 'logarithmic' ? from * (to / from) ** share : from + (to - from) * share;
  });
}
