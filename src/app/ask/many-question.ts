import { QuestionError } from '../../analysis/subject/place-error.ts';
import { unitOf } from '../../analysis/subject/unit-of.ts';
import type { Bound, Objective } from '../../analysis/optimise/types.ts';
import { typedValue, typedValues } from '../../analysis/subject/typed-value.ts';
import type { CheapestQuestion, CombineQuestion, OptimiseQuestion } from '../../analysis/types.ts';
import type { LimitWish, Varied } from '../../components/ask/data.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { placeOf } from '../../engine/cell-index.ts';
import { rangeOf, targetOf, whole, type Asking } from './question.ts';
import { inputOf, resultOf } from './wish.ts';

export function bestQuestion(asking: Asking): OptimiseQuestion {
  const { document, wish } = asking;
  return {
    document,
    inputs: wish.varied.map((varied) => {
      const range = rangeOf(asking, varied);
      return { ...placeOf(varied.id), ...(range && { range }) };
    }),
    objective: objectiveOf(asking),
    ...(wish.limits.length > 0 && { limits: wish.limits.map((limit) => limitOf(asking, limit)) }),
    ...(wish.keep !== 'any' && { keep: wish.keep }),
  };
}

function limitOf({ document, subject }: Asking, { id, at, text }: LimitWish): Bound {
  const result = resultOf(subject, id);
  if (!result) throw new QuestionError('Choose a result: a cell with a formula.');
  return { ...placeOf(id), at, value: typedValue(text, { ...result, unit: unitOf(result, document) }) };
}

function objectiveOf(asking: Asking): Objective {
  const { subject, wish } = asking;
  const chosen = resultOf(subject, wish.result) ?? inputOf(subject, wish.result);
  if (!chosen) throw new QuestionError('Choose a result: a cell with a formula.');
  const result = placeOf(wish.result);
  switch (wish.aim) {
    case 'least':
    case 'most':
      return { kind: wish.aim, result };
    case 'nearest':
      return { kind: 'nearest', result, target: targetOf(asking, chosen) };
    case 'flattest': {
      const [from = 0, to = 0] = wish.band.map((text) =>
        typedValue(text, { label: 'The band', quantity: 'frequency', unit: 'Hz' }),
      );
      if (from < to) return { kind: 'flattest', result, from, to };
      throw new QuestionError(`The band must begin below its end, but goes from ${wish.band.join(' to ')}.`);
    }
  }
}

export const combineQuestion = (asking: Asking): CombineQuestion => {
  const { document, wish } = asking;
  const { result, listed, order, keep } = wish;
  return {
    document,
    inputs: wish.varied.map((varied) => valuesOf(asking, varied)),
    results: [result, ...listed.filter((id) => id !== result)].map(placeOf),
    ...(order !== 'typed' && { order: { result: placeOf(result), by: order } }),
    ...(keep !== 'any' && { works: true as const }),
    most: whole('Rows', wish.rows),
  };
};

export const cheapestQuestion = (asking: Asking, shelf: readonly DriverEntry[]): CheapestQuestion => {
  const { document, wish } = asking;
  const { cost, drivers, keep } = wish;
  return {
    document,
    shelf,
    drivers,
    settings: wish.settings.map((varied) => {
      const price = varied.price?.trim() ?? '';
      return { ...valuesOf(asking, varied), ...(price !== '' && { price }) };
    }),
    cost: cost === 'money' || cost === 'changes' ? cost : placeOf(cost),
    changes: whole('Changes at once', wish.changes),
    ...(keep === 'clear' && { orCaution: true as const }),
  };
};

function valuesOf({ subject }: Asking, { id, values }: Varied) {
  const input = inputOf(subject, id);
  if (!input) throw new QuestionError('Choose an input: a cell with a typed number.');
  return { ...placeOf(id), values: typedValues(values, input) };
}
