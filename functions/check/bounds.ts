import { define, type Context } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { margin, measured, say, type Measured, type Sentence } from '../values/say.ts';
import { boundWords, slack, statusWords, type Status, type Verdict } from '../values/verdict.ts';

const judged = (status: Status, reason: Sentence, remedy: string): Verdict => ({
  kind: 'verdict',
  status,
  word: statusWords[status],
  reason: status === 'good' || remedy === '' ? reason : say`${reason} ${remedy}`,
});

const any = { quantity: 'any', min: -1e15, max: 1e15 } as const;
const value = { ...any, summary: 'value to be judged' } as const;
const subject = { text: true, summary: 'what the value is, as the sentence begins: "Pad"' } as const;
const remedy = { text: true, default: '', summary: 'sentence that is added when the value is not good' } as const;
const returns = { record: 'verdict', summary: 'verdict with its reason' } as const;
const source = { source: 'own', at: 'comparison with limits of your own' } as const;

interface Bound {
  readonly subject: string;
  readonly remedy: string;
  /** In the direction of good: 1 when more is better. */
  readonly sense: 1 | -1;
  readonly value: number;
  readonly good: number;
  readonly caution: number | undefined;
}

function bounded(bound: Bound, { quantity, money }: Context): Verdict | Problem {
  const { sense, value: is, good, caution } = bound;
  const [least, short, bad] = boundWords[sense];
  const shown = (limit: number): Measured => measured(limit, quantity, money);
  if (caution !== undefined && sense * (caution - good) > 0)
    return new Problem(
      say`The limit for caution, ${shown(caution)}, is stricter than that for good, ${shown(good)}; change one of them.`,
      'caution',
    );
  const start = say`${bound.subject} ${shown(is)}, ${least} ${shown(good)} wanted:`;
  const spare = sense * (is - good);
  if (spare >= -slack(good))
    return judged('good', say`${start} ${margin(Math.max(0, spare), quantity, money)} to spare.`, bound.remedy);
  const missed = say`${start} ${margin(-spare, quantity, money)} ${short}`;
  if (caution === undefined || caution === good) return judged('fail', say`${missed}.`, bound.remedy);
  return sense * (is - caution) >= -slack(caution)
    ? judged('caution', say`${missed}; it fails only ${bad} ${shown(caution)}.`, bound.remedy)
    : judged('fail', say`${missed}, and ${bad} ${shown(caution)}, where caution ends.`, bound.remedy);
}

export const checkAtLeast = define({
  name: 'CHECK.AT_LEAST',
  summary: 'Judges a value that should be at least a limit.',
  parameters: {
    value,
    good: { ...any, summary: 'least value that is good' },
    caution: { ...any, optional: true, summary: 'least value that is a caution; below it, and without it, a fail' },
    subject,
    remedy,
  },
  returns,
  source,
  example: {
    formula: '=CHECK.AT_LEAST("3 Ω", "3.2 Ω", "2.8 Ω", "Lowest load")',
    gives: { status: 'caution', word: 'Caution' },
  },
  remarks: 'All values must be of one kind. The reason names the limit and the margin in the units of the reader.',
  compute: (given, context) => bounded({ ...given, sense: 1 }, context),
});

export const checkAtMost = define({
  name: 'CHECK.AT_MOST',
  summary: 'Judges a value that should be at most a limit.',
  parameters: {
    value,
    good: { ...any, summary: 'largest value that is good' },
    caution: { ...any, optional: true, summary: 'largest value that is a caution; above it, and without it, a fail' },
    subject,
    remedy,
  },
  returns,
  source,
  example: {
    formula: '=CHECK.AT_MOST("23.3 m/s", "17 m/s", "20 m/s", "Air in the port", "Take a wider port.")',
    gives: { status: 'fail', word: 'Fail' },
  },
  remarks: 'All values must be of one kind. The reason names the limit and the margin in the units of the reader.',
  compute: (given, context) => bounded({ ...given, sense: -1 }, context),
});

export const checkWithin = define({
  name: 'CHECK.WITHIN',
  summary: 'Judges a value that should lie between two limits.',
  parameters: {
    value,
    low: { ...any, summary: 'least value that is good' },
    high: { ...any, summary: 'largest value that is good' },
    margin: { ...any, min: 0, optional: true, summary: 'how far outside is still a caution; without it a fail' },
    subject,
    remedy,
  },
  returns,
  source,
  example: {
    formula: '=CHECK.WITHIN("5.3 dB", "0 dB", "10 dB", "3 dB", "Pad")',
    gives: { status: 'good', word: 'Good' },
  },
  remarks: 'All values must be of one kind. The limits themselves are good.',
  compute(given, { quantity, money }) {
    const [low, high] = [measured(given.low, quantity, money), measured(given.high, quantity, money)];
    if (given.low > given.high)
      return new Problem(say`The lower limit ${low} is above the upper one ${high}; exchange them.`, 'low');
    const below = given.low - given.value;
    const above = given.value - given.high;
    const off = Math.max(below, above);
    const away = margin(Math.abs(off), quantity, money);
    const start = say`${given.subject} ${measured(given.value, quantity, money)}, ${low} to ${high} wanted: ${away}`;
    if (below <= slack(given.low) && above <= slack(given.high))
      return judged('good', say`${start} from the nearer limit.`, given.remedy);
    const near = given.margin !== undefined && off <= given.margin + slack(given.margin);
    return judged(near ? 'caution' : 'fail', say`${start} too ${below > above ? 'little' : 'much'}.`, given.remedy);
  },
});

export const checkNote = define({
  name: 'CHECK.NOTE',
  summary: 'Lets every value pass and shows a note when it is above a limit.',
  parameters: {
    value,
    limit: { ...any, summary: 'above this the note is shown' },
    subject,
    noteText: { text: true, summary: 'the note, a whole sentence' },
  },
  returns,
  source,
  example: {
    formula: '=CHECK.NOTE("112 dB", "110 dB", "Target level", "Check hearing and amplifier.")',
    gives: { status: 'good', word: 'Good' },
  },
  remarks: 'For what is worth knowing but not wrong. Use CHECK.AT_MOST for a limit that decides.',
  compute(given, { quantity, money }) {
    const above = given.value - given.limit;
    const start = say`${given.subject} ${measured(given.value, quantity, money)}`;
    const limit = measured(given.limit, quantity, money);
    if (above <= 0) return judged('good', say`${start} is not above ${limit}.`, '');
    return {
      ...judged('good', say`${start} is ${margin(above, quantity, money)} above ${limit}.`, ''),
      note: [given.noteText],
    };
  },
});
