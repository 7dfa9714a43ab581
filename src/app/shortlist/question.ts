import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { ruleFields, slopes, usualTexts } from '../../analysis/shortlist/rule-fields.ts';
import { askedQuestion, candidateOf } from '../../analysis/shortlist/asked.ts';
import { mayTake, placesFor, type PlaceName } from '../../analysis/shortlist/places.ts';
import type { ShortlistQuestion } from '../../analysis/types.ts';
import type { PlaceChoice, RuleShown, Wanted } from '../../components/shortlist/data.ts';
import { driverOf } from '../../document/shelf/driver-of.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import type { UnitSystem } from '../../document/types.ts';

/** So many of the best are shown. */
const MOST = 200;

export const choiceKey = (place: PlaceName, id: string): string => `${place} ${id}`;

const known = new WeakMap<DriverEntry, Driver>();

/** The driver that an entry makes, worked out once; one without numbers where it makes none. */
function driverIn(entry: DriverEntry): Driver {
  const held = known.get(entry);
  if (held) return held;
  const read = driverOf(entry);
  const driver: Driver = read instanceof Problem ? { kind: 'driver', name: entry.name, derived: [], doubts: [] } : read;
  known.set(entry, driver);
  return driver;
}

/** The drivers of the shelf by the places of what is put together, ticked where they take part. */
export const placesOf = (
  entries: readonly DriverEntry[],
  ways: Wanted['ways'],
  said: ReadonlyMap<string, boolean>,
): PlaceChoice[] =>
  placesFor[ways].map((place) => ({
    place,
    drivers: entries.map((entry) => {
      const isTaken = said.get(choiceKey(place, entry.id)) ?? mayTake(place, driverIn(entry));
      return { id: entry.id, name: entry.name, isTaken };
    }),
  }));

/** The question that stands in the form.
 *  @throws A QuestionError that says what was typed wrong. */
export function shortlistQuestion(
  wanted: Wanted,
  entries: readonly DriverEntry[],
  places: readonly PlaceChoice[],
): ShortlistQuestion {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const lists = places.map(({ drivers }) =>
    drivers.flatMap(({ id, isTaken }) => {
      const entry = byId.get(id);
      return isTaken && entry ? [candidateOf(entry)] : [];
    }),
  );
  const question = askedQuestion(wanted, lists, MOST);
  return { ...question, limits: { ...question.limits, works: true } };
}

/** The rules that count for what is put together, as they can be set; the level asked is that of the travel too. */
export const rulesShown = ({ ways, plays }: Wanted, system: UnitSystem): RuleShown[] => {
  const shown = ruleFields(ways).map((field) => ({ ...field, usual: usualTexts(field, system) }));
  const [target, ...others] = shown.map((rule) =>
    rule.name === 'target' && plays !== '' ? { ...rule, usual: [plays] } : rule,
  );
  const slope = { name: 'slope', label: 'Acoustic slope', usual: slopes.slice(0, 1), choices: slopes };
  return [...(target ? [target] : []), slope, ...others];
};
