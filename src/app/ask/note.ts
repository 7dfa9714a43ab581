import { EVERY } from '../../analysis/seek/types.ts';
import type { SetInput } from '../../analysis/subject/types.ts';
import { aims, kinds, variedIn, type Wish } from '../../components/ask/data.ts';
import type { Asking } from './question.ts';
import { inputOf, resultOf } from './wish.ts';

/** What was asked with all its settings, so that it can be asked again. */
export function noteOf({ document, subject, wish }: Asking, given: readonly SetInput[]): string {
  const labelOf = (id: string): string =>
    id === EVERY ? EVERY : (resultOf(subject, id)?.label ?? inputOf(subject, id)?.label ?? id);
  const result = labelOf(wish.result);
  const range = ({ id, from, to }: Wish['input']): string =>
    from === '' ? labelOf(id) : `${labelOf(id)} from ${from} to ${to}`;
  const values = wish[variedIn(wish.kind)].map(({ label, values: typed, price = '' }) =>
    [`${label}: ${typed}`, ...(price.trim() === '' ? [] : [`one costs ${price}`])].join(', '),
  );
  const set = given.map(({ label, text }) => `${label} ${text}`);
  const limits = wish.limits.map(({ label, at, text }) => `${label} at ${at} ${text}`);
  const kept = { good: 'every verdict good', clear: 'no verdict failing', any: 'verdicts left aside' }[wish.keep];
  const aim = {
    least: [],
    most: [],
    nearest: [wish.target],
    flattest: [`between ${wish.band.join(' and ')}`],
  }[wish.aim];
  const parts: Readonly<Record<Wish['kind'], readonly string[]>> = {
    seek: [`${result} to ${wish.target || 'good'}`, range(wish.input), ...set],
    best: [`${result}: ${[aims[wish.aim], ...aim].join(' ')}`, ...wish.varied.map(range), ...limits, kept, ...set],
    combine: [...values, `${result}, ${wish.order} first`, `${wish.rows} rows`, kept],
    cheapest: [
      ...wish.drivers,
      ...values,
      `least of ${labelOf(wish.cost)}`,
      `up to ${wish.changes} changes`,
      wish.isOwnShelf ? 'own drivers' : 'the whole shelf',
      wish.keep === 'clear' ? 'clear of failure' : 'good',
      ...set,
    ],
    sweep: [result, range(wish.input), `${wish.steps} values`],
    map: [result, range(wish.input), range(wish.second), `${wish.steps} points each way`],
    scatter: [
      result,
      `${wish.runs} runs`,
      `seed ${wish.seed}`,
      ...wish.spreads.map(
        ({ label, texts }) => `${label} ${texts.map((each) => `${each.label} ${each.text}`).join(', ')}`,
      ),
    ],
    drives: [result],
    follows: [range({ ...wish.input, from: '', to: '' })],
  };
  return `${kinds[wish.kind]}, asked of “${document.title}”: ${parts[wish.kind].join('; ')}. Everything else as the sheet stood.`;
}
