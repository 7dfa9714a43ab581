import { Problem } from '../values/problem.ts';
import { margin, say, type Measured, type Sentence } from '../values/say.ts';
import type { Status, Verdict } from '../values/verdict.ts';

/** A rule of thumb with its two thresholds. */
export interface Rule {
  /** What the value is, as the sentence begins: "Hand-over over resonance". */
  readonly subject: Sentence;
  readonly value: number;
  readonly show: (value: number) => Measured;
  /** 1 when more is better. */
  readonly sense: 1 | -1;
  readonly good: number;
  /** Where caution ends. */
  readonly caution: number;
  /** What a caution and a failure mean, without a full stop. */
  readonly means: { readonly caution: string; readonly fail: string };
}

const words = { good: 'Good', caution: 'Caution', fail: 'Fail' } as const satisfies Record<Status, string>;
const bounds = { 1: ['at least', 'short', 'below'], [-1]: ['at most', 'over', 'above'] } as const;

const verdict = (status: Status, reason: Sentence): Verdict => ({
  kind: 'verdict',
  status,
  word: words[status],
  reason,
});

/** A hair of rounding error never turns a value that just meets its limit into a failure. */
const meets = (rule: Rule, limit: number): boolean => rule.sense * (rule.value - limit) >= -1e-9 * Math.abs(limit);

/** Judges a value by a rule; the reason names value, threshold, margin and what follows. */
export function judge(rule: Rule): Verdict | Problem {
  const { subject, value, show, sense, good, caution, means } = rule;
  const [wanted, short, beyond] = bounds[sense];
  if (sense * (caution - good) > 0)
    return new Problem(
      say`The threshold for caution, ${show(caution)}, is stricter than that for good, ${show(good)}; change one of them.`,
      'caution',
    );
  const start = say`${subject} is ${show(value)}, ${wanted} ${show(good)} wanted:`;
  const { value: off, quantity } = show(Math.abs(value - good));
  const away = margin(off, quantity);
  if (meets(rule, good)) return verdict('good', say`${start} ${away} to spare.`);
  const missed = say`${start} ${away} ${short}`;
  if (meets(rule, caution)) return verdict('caution', say`${missed}; ${means.caution}.`);
  const past = caution === good ? [] : say`, and ${beyond} ${show(caution)}`;
  return verdict('fail', say`${missed}${past}; ${means.fail}.`);
}
