import { QuestionError } from '../../analysis/subject/place-error.ts';
import { unitOf } from '../../analysis/subject/unit-of.ts';
import { EVERY } from '../../analysis/seek/types.ts';
import type { Input, Result, Span, Subject } from '../../analysis/subject/types.ts';
import { typedValue } from '../../analysis/subject/typed-value.ts';
import type {
  CauseName,
  MapQuestion,
  ScatterQuestion,
  SeekQuestion,
  Spread,
  SweepQuestion,
} from '../../analysis/types.ts';
import type { Moved, SpreadWish, Wish } from '../../components/ask/data.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { placeOf } from '../../engine/cell-index.ts';
import type { Place } from '../../engine/types.ts';
import { inputOf, resultOf } from './wish.ts';

/** Everything a question is made of. */
export interface Asking {
  readonly document: OctavoDocument;
  readonly subject: Subject;
  readonly wish: Wish;
}

export const whole = (label: string, text: string): number => {
  const number = Number(text.replaceAll(/\s/g, ''));
  if (Number.isInteger(number)) return number;
  throw new QuestionError(`${label}: “${text}” is no whole number.`);
};

export const rangeOf = ({ subject }: Asking, { id, from, to }: Moved): readonly [number, number] | undefined => {
  const input = inputOf(subject, id);
  if (!input) throw new QuestionError('Choose an input: a cell with a typed number.');
  if (typeof input.present !== 'number') return undefined;
  const [low, high] = [typedValue(from, input), typedValue(to, input)];
  if (low < high) return [low, high];
  throw new QuestionError(`${input.label}: the range must begin below its end, but goes from ${from} to ${to}.`);
};

/** Over more than a decade equal ratios tell more than equal steps. */
const isWide = ([from, to]: readonly [number, number]): boolean => from > 0 && to / from > 10;

export function spanOf(asking: Asking, moved: Moved): Span {
  const range = rangeOf(asking, moved);
  if (!range) throw new QuestionError('An input that takes words cannot be moved over a range: choose a number.');
  const steps = whole('Values', asking.wish.steps);
  return {
    ...placeOf(moved.id),
    from: range[0],
    to: range[1],
    steps,
    spacing: isWide(range) ? 'logarithmic' : 'linear',
  };
}

/** The target that is typed for a result. */
export const targetOf = ({ document, wish }: Asking, { label, quantity, unit }: Result | Input): number =>
  typedValue(wish.target, {
    label,
    unit: unitOf({ ...(quantity && { quantity }), ...(unit !== undefined && { unit }) }, document),
    ...(quantity && { quantity }),
  });

export function seekQuestion(asking: Asking, given: SeekQuestion['given'] = []): SeekQuestion {
  const { document, subject, wish } = asking;
  const result = resultOf(subject, wish.result);
  if (!result && wish.result !== EVERY) throw new QuestionError('Choose a result: a cell with a formula.');
  const range = rangeOf(asking, wish.input);
  return {
    document,
    result: wish.result === EVERY ? EVERY : placeOf(wish.result),
    input: placeOf(wish.input.id),
    target:
      !result || result.kind === 'verdict'
        ? { kind: 'good', ...(wish.target === 'clear' && { orCaution: true }) }
        : { kind: 'number', value: targetOf(asking, result) },
    ...(range && { range }),
    ...(given.length > 0 && { given }),
  };
}

export function sweepQuestion(asking: Asking): SweepQuestion {
  const { document, subject, wish } = asking;
  const sheet = placeOf(wish.result).sheet;
  const others = subject.results.filter((each) => each.sheet === sheet && each.kind === 'number');
  const places: Place[] = [placeOf(wish.result)];
  if (wish.isWhole)
    places.push(...others.filter(({ cell }) => cell !== places[0]?.cell).map(({ cell }) => ({ sheet, cell })));
  return { document, input: spanOf(asking, wish.input), results: places };
}

export const mapQuestion = (asking: Asking): MapQuestion => ({
  document: asking.document,
  across: spanOf(asking, asking.wish.input),
  up: spanOf(asking, asking.wish.second),
  result: placeOf(asking.wish.result),
});

/** Watches the chosen result and every verdict. */
export function scatterQuestion(asking: Asking): ScatterQuestion {
  const { document, subject, wish } = asking;
  const verdicts = subject.results.filter(({ kind }) => kind === 'verdict').map(({ sheet, cell }) => ({ sheet, cell }));
  const chosen = placeOf(wish.result);
  return {
    document,
    spreads: wish.spreads.map((spread) => spreadIn(asking, spread)),
    results: [chosen, ...verdicts.filter(({ sheet, cell }) => sheet !== chosen.sheet || cell !== chosen.cell)],
    runs: whole('Runs', wish.runs),
    seed: whole('Seed', wish.seed),
  };
}

function spreadIn({ subject }: Asking, { id, label, texts }: SpreadWish): Spread {
  const at = placeOf(id);
  const input = inputOf(subject, id);
  if (input) {
    const text = texts[0]?.text ?? '';
    if (isShare(text)) return { kind: 'share', at, deviation: shareOf(label, text) };
    return { kind: 'amount', at, deviation: typedValue(text, input) };
  }
  const causes = texts.map((each) => [each.name, shareOf(`${label}, ${each.label}`, each.text)] as const);
  return { kind: 'driver', at, causes: Object.fromEntries(causes) as Partial<Record<CauseName, number>> };
}

const isShare = (text: string): boolean => /%\s*$/.test(text) || /^\s*[\d.,]+\s*$/.test(text);

/** `3 %`; a number alone is in per cent. */
function shareOf(label: string, text: string): number {
  const number = Number(text.replace('%', '').replace(',', '.').trim());
  if (Number.isFinite(number) && number >= 0 && text.trim() !== '') return number / 100;
  throw new QuestionError(`${label}: “${text}” is no spread; type a share, as in 3 %.`);
}
