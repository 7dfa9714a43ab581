import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { measured, say, type Sentence } from '../values/say.ts';
import type { Status, Verdict } from '../values/verdict.ts';
import type { Limit, Window } from '../values/window.ts';
import { stretchedEnds } from './window.ts';

const named = (limit: Limit): Sentence => say`${limit.name} at ${measured(limit.at, 'frequency')}`;
/** The same where a sentence begins with it. */
const begun = (limit: Limit): Sentence =>
  named({ ...limit, name: limit.name.charAt(0).toUpperCase() + limit.name.slice(1) });
const stretchedName = (limit: Limit): Sentence => say`${limit.name} at ${measured(limit.stretched, 'frequency')}`;

const verdict = (status: Status, word: string, reason: Sentence): Verdict => ({
  kind: 'verdict',
  status,
  word,
  reason,
});

function judged(pair: Window, comfortable: number): Verdict {
  const { low, high, octaves } = pair;
  const width = measured(octaves, 'octaves');
  const wanted = measured(comfortable, 'octaves');
  // Two decimals are shown: 0.50 of 0.50 would look like enough.
  const isClose = comfortable - octaves < 0.01;
  if (octaves >= comfortable && octaves >= 0)
    return verdict(
      'good',
      'Comfortable',
      say`Between ${named(low)} and ${named(high)} lie ${width}, no less than ${wanted}.`,
    );
  if (octaves >= 0)
    return verdict(
      'caution',
      'Tight',
      say`${begun(low)} and ${named(high)} nearly meet: ${isClose ? 'a hair less than' : say`${width} of`} the ${wanted} wanted.`,
    );
  const gap = measured(-octaves, 'octaves');
  const ends = stretchedEnds(pair);
  if (pair.stretchedOctaves >= 0)
    return verdict(
      'caution',
      'Stretch',
      say`${begun(low)} and ${named(high)} miss each other by ${gap}; stretched, the rules leave ${measured(pair.stretchedOctaves, 'octaves')}. Pick which rule to bend.`,
    );
  return verdict(
    'fail',
    'No shared window',
    say`${begun(low)} and ${named(high)} miss each other by ${gap}, and even stretched, ${stretchedName(ends.low)} and ${stretchedName(ends.high)}, by ${measured(-pair.stretchedOctaves, 'octaves')}. Choose another partner.`,
  );
}

const window = { record: 'window', summary: 'window of the pair' } as const;
const exampleWindow = 'PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)';

export const pairVerdict = define({
  name: 'PAIR.VERDICT',
  summary: 'Whether two drivers can work together, and which limits decide it.',
  parameters: {
    window,
    comfortable: { quantity: 'octaves', min: 0, max: 10, default: 0.5, summary: 'width that counts as comfortable' },
  },
  returns: { record: 'verdict', summary: 'Comfortable, Tight, Stretch or No shared window' },
  source: { source: 'practice', at: 'half an octave to choose the hand-over in' },
  example: { formula: `=PAIR.VERDICT(${exampleWindow})`, gives: { status: 'caution', word: 'Tight' } },
  remarks: 'Judged on the exact width: 0.495 oct is not comfortable when 0.5 oct is asked for.',
  compute: (given) => judged(given.window, given.comfortable),
});

interface Broken {
  readonly limit: Limit;
  readonly octaves: number;
  readonly bent: boolean;
}

const beyond = (limit: Limit, frequency: number, side: 1 | -1): Broken => ({
  limit,
  octaves: side * Math.log2(limit.at / frequency),
  bent: side * (limit.stretched - frequency) <= 0,
});

export const pairHandoverVerdict = define({
  name: 'PAIR.HANDOVER_VERDICT',
  summary: 'Whether a hand-over lies inside the window, and which limit it breaks if not.',
  parameters: { frequency: { ...usual.frequency, summary: 'hand-over' }, window },
  returns: { record: 'verdict', summary: 'good inside, caution within the stretched limits, fail beyond' },
  source: { source: 'practice', at: 'hand-over between the floors of one driver and the ceilings of the other' },
  example: {
    formula: `=PAIR.HANDOVER_VERDICT("1808 Hz", ${exampleWindow})`,
    gives: { status: 'good', word: 'Good' },
  },
  remarks: 'Every broken limit counts; the reason names the one that decides.',
  compute(given) {
    const { frequency } = given;
    const { floors, ceilings, low, high } = given.window;
    const broken = [
      ...floors.map((limit) => beyond(limit, frequency, 1)),
      ...ceilings.map((limit) => beyond(limit, frequency, -1)),
    ].filter((each) => each.octaves > 0);
    const at = measured(frequency, 'frequency');
    if (broken.length === 0)
      return verdict('good', 'Good', say`Hand-over ${at} lies between ${named(low)} and ${named(high)}.`);
    const worst = broken.reduce((one, other) => {
      if (one.bent !== other.bent) return one.bent ? other : one;
      return other.octaves > one.octaves ? other : one;
    });
    const by = say`Hand-over ${at} is now limited by ${named(worst.limit)}, broken by ${measured(worst.octaves, 'octaves')}`;
    return worst.bent
      ? verdict(
          'caution',
          'Stretch',
          say`${by}, still within its stretched ${measured(worst.limit.stretched, 'frequency')}.`,
        )
      : verdict(
          'fail',
          'Fail',
          say`${by}, beyond even its stretched ${measured(worst.limit.stretched, 'frequency')}. Move the hand-over.`,
        );
  },
});
