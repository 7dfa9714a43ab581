import { createAnalyst } from '../analysis/analyst.ts';
import { explainedRow } from '../analysis/shortlist/explained-row.ts';
import { nearestRows } from '../analysis/shortlist/nearest-rows.ts';
import { QuestionError } from '../analysis/subject/place-error.ts';
import { ruleFields, type RuleTexts } from '../analysis/shortlist/rule-fields.ts';
import { askedQuestion, candidateOf, nothingAsked, type Asked } from '../analysis/shortlist/asked.ts';
import { mayTake, placesFor, type PlaceName } from '../analysis/shortlist/places.ts';
import type { BassBox } from '../analysis/shortlist/types.ts';
import type { Candidate, Shortlist, ShortlistQuestion } from '../analysis/types.ts';
import { readWish } from '../analysis/shortlist/wish.ts';
import { driverOf } from '../document/shelf/driver-of.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { Problem } from '../../functions/values/problem.ts';
import { namedPart, type Flags } from './ask-flags.ts';

/** The drivers of a shelf that go together, the best three with their reasons.
 *  @throws A {@link QuestionError} in words for the reader. */
export async function askShortlist(
  flags: Flags,
  shelf: readonly DriverEntry[],
): Promise<Shortlist & { readonly nearest?: readonly string[] }> {
  const question = shortlistQuestion(flags, shelf);
  const { shortlist } = createAnalyst();
  const found = await shortlist(question);
  if (found.rows.length === 0) return { ...found, nearest: await nearestRows(question, shortlist, 'metric') };
  const rows = found.rows.map((row, index) =>
    index < 3 ? { ...row, why: explainedRow(row, question, 'metric', found.rows[index + 1]) } : row,
  );
  return { ...found, rows };
}

function shortlistQuestion(flags: Flags, shelf: readonly DriverEntry[]): ShortlistQuestion {
  if (shelf.length === 0) throw new QuestionError('There is no driver on this shelf.');
  const { wish, left } = readWish(flags.text('wish', ''));
  if (left.length > 0) throw new QuestionError(`In the wish this is not understood: ${left.join('; ')}.`);
  const base = { ...nothingAsked, ...wish };
  const ways = flags.has('ways') ? flags.choice('ways', ['2', '3', 'subs']) : String(base.ways);
  const asked: Asked = {
    ways: ways === 'subs' ? ways : ways === '3' ? 3 : 2,
    price: flags.text('price', base.price),
    reach: flags.text('reach', base.reach),
    plays: flags.text('plays', base.plays),
    box: flags.has('box') ? flags.choice<BassBox>('box', ['vented', 'closed']) : base.box,
    ranking: flags.text('ranking', base.ranking),
    rules: rulesOf(flags),
  };
  const drivers = shelf.map((entry) => [entry, driverOf(entry)] as const);
  const taken = (place: PlaceName): Candidate[] =>
    drivers.flatMap(([entry, driver]) =>
      driver instanceof Problem || !mayTake(place, driver) ? [] : [candidateOf(entry)],
    );
  const question = askedQuestion(asked, placesFor[asked.ways].map(taken), flags.number('rows', 20));
  return { ...question, limits: { ...question.limits, ...(flags.has('works') && { works: true as const }) } };
}

/** `travel=0.6, 1`: a rule by its name, and stretched where it has two. */
function rulesOf(flags: Flags): RuleTexts {
  const names = [...ruleFields(2), ...ruleFields('subs')].map(({ name }) => name);
  return Object.fromEntries(
    flags.all('rule').map((text) => {
      const [name, what] = namedPart(text, 'rule', "NAME=RULE, STRETCHED, as in 'travel=0.6, 1'");
      if (name !== 'slope' && !names.some((each) => each === name))
        throw new QuestionError(`--rule knows slope, ${[...new Set(names)].join(', ')}, but not “${name}”.`);
      return [name, what.split(/(?<!\d),|,(?!\d)/).map((part) => part.trim())];
    }),
  );
}
