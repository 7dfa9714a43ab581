import type { QuantityName } from '../../functions/quantities.ts';
import { quantities } from '../../functions/quantities.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { rolesOf, type Role } from '../analysis/roles.ts';
import type { Candidate, ShortlistQuestion } from '../analysis/types.ts';
import { usualRules } from '../analysis/usual-rules.ts';
import type { PlaceChoice, Wanted } from '../components/shortlist/data.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { defaultUnit } from '../units/defaults.ts';
import { sameDimension } from '../units/dimension.ts';
import { parseQuantity } from '../units/parse.ts';
import { unitNamed } from '../units/table.ts';

/** So many of the best are shown. */
const MOST = 200;

export const choiceKey = (place: Role, id: string): string => `${place} ${id}`;

/** The drivers of the shelf by the places of a two-way or a three-way, ticked where they take part. */
export function placesOf(
  entries: readonly DriverEntry[],
  driverOf: (entry: DriverEntry) => Driver | undefined,
  ways: Wanted['ways'],
  said: ReadonlyMap<string, boolean>,
): PlaceChoice[] {
  const places: readonly Role[] = ways === 3 ? ['woofer', 'mid', 'tweeter'] : ['woofer', 'tweeter'];
  return places.map((place) => ({
    place,
    drivers: entries.map((entry) => {
      const driver = driverOf(entry);
      const isTaken = said.get(choiceKey(place, entry.id)) ?? (driver ? rolesOf(driver).includes(place) : false);
      return { id: entry.id, name: entry.name, isTaken };
    }),
  }));
}

/** The question that stands in the form, or what is wrong with it. */
export function shortlistQuestion(
  wanted: Wanted,
  entries: readonly DriverEntry[],
  places: readonly PlaceChoice[],
): ShortlistQuestion | { readonly wrong: string } {
  const price = limitOf(wanted.price, 'price', '300');
  const reach = limitOf(wanted.reach, 'frequency', '45 Hz');
  const plays = limitOf(wanted.plays, 'level', '103 dB');
  for (const each of [price, reach, plays]) if (typeof each === 'object') return each;
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const taken = (place: Role): Candidate[] =>
    (places.find((each) => each.place === place)?.drivers ?? []).flatMap(({ id, isTaken }) => {
      const entry = byId.get(id);
      return isTaken && entry ? [candidateOf(entry)] : [];
    });
  return {
    lists: wanted.ways === 3 ? [taken('woofer'), taken('mid'), taken('tweeter')] : [taken('woofer'), taken('tweeter')],
    rules: { ...usualRules, ...(typeof plays === 'number' && { target: plays }) },
    limits: {
      works: true,
      ...(typeof price === 'number' && { price }),
      ...(typeof reach === 'number' && { reach }),
      ...(typeof plays === 'number' && { plays }),
    },
    box: wanted.box,
    ranking: wanted.ranking,
    most: MOST,
  };
}

const candidateOf = ({ id, name, rows }: DriverEntry): Candidate => ({
  id,
  name,
  // The first of two rows with one label counts, as in a sheet.
  rows: Object.fromEntries(rows.toReversed().map(({ label, text }) => [label, text])),
});

/** A number without a unit is in the unit that is shown. Nothing where nothing was typed. */
function limitOf(
  text: string,
  quantity: QuantityName,
  example: string,
): number | undefined | { readonly wrong: string } {
  if (text === '') return undefined;
  const read = parseQuantity(text);
  const noun = quantities[quantity].noun;
  if (!read) return { wrong: `“${text}” is not ${noun}: write it as in ${example}.` };
  if (read.unit === '') return read.value * (unitNamed(defaultUnit(quantity, 'metric') ?? '')?.si ?? 1);
  if (!sameDimension(quantities[read.quantity].dimension, quantities[quantity].dimension))
    return {
      wrong: `${read.unit} is the unit of ${quantities[read.quantity].noun}, but ${noun} is wanted, as in ${example}.`,
    };
  return read.value;
}
