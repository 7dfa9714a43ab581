import { Problem } from '../values/problem.ts';
import { margin, say, type Measured, type Sentence } from '../values/say.ts';
import { boundWords, slack, statusWords, type Status, type Verdict } from '../values/verdict.ts';

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

const verdict = (status: Status, reason: Sentence): Verdict => ({
  kind: 'verdict',
  status,
  word: statusWords[status],
  reason,
});

const meets = (rule: Rule, limit: number): boolean => rule.sense * (rule.value - limit) >= -slack(limit);

/** Judges a value by a rule; the reason names value, threshold, margin and what follows. */
export function judge(rule: Rule): Verdict | Problem {
  const { subject, value, show, sense, good, caution, means } = rule;
  const [wanted, short, beyond] = boundWords[sense];
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
