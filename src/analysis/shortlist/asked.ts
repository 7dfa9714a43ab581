import type { DriverEntry } from '../../document/shelf/entry.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { rulesTyped, type RuleTexts } from './rule-fields.ts';
import type { Ways } from './places.ts';
import type { BassBox, Candidate, ShortlistQuestion } from './types.ts';
import { typedValue } from '../subject/typed-value.ts';

/** What is asked of a shortlist, as it was typed; an empty text asks nothing. */
export interface Asked {
  readonly ways: Ways;
  readonly price: string;
  readonly reach: string;
  readonly plays: string;
  /** The usual one where left out. */
  readonly box?: BassBox | undefined;
  readonly ranking: string;
  readonly rules: RuleTexts;
}

export const nothingAsked: Asked = {
  ways: 2,
  price: '',
  reach: '',
  plays: '',
  ranking: 'window*10-price/100',
  rules: {},
};

const wanted = [
  ['price', 'price', 'Price'],
  ['reach', 'frequency', 'Reach'],
  ['plays', 'level', 'Level'],
] as const;

/** The question that was typed, about candidates for each place.
 *  @throws A {@link QuestionError} that says what was typed wrong. */
export function askedQuestion(asked: Asked, lists: ShortlistQuestion['lists'], most: number): ShortlistQuestion {
  const limits: { -readonly [Name in (typeof wanted)[number][0]]?: number } = {};
  for (const [name, quantity, label] of wanted) {
    const text = asked[name].trim();
    if (text !== '') limits[name] = typedValue(text, { label, quantity, unit: defaultUnit(quantity, 'metric') });
  }
  const { box, ranking } = asked;
  return { lists, ...rulesTyped(asked.ways, asked.rules, limits.plays), limits, ...(box && { box }), ranking, most };
}

/** A driver of the shelf as it takes part. */
export const candidateOf = ({ id, name, rows }: Pick<DriverEntry, 'id' | 'name' | 'rows'>): Candidate => ({
  id,
  name,
  // The first of two rows with one label counts, as in a sheet.
  rows: Object.fromEntries(rows.toReversed().map(({ label, text }) => [label, text])),
});
