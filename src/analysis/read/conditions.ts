import { parseQuantity, type ParsedQuantity } from '../../units/parse.ts';
import { bestMatches, wordsOf } from './match.ts';
import { isSame, movable, oneOf, sizeIn } from './cells.ts';
import { readGiven } from './given.ts';
import type { Unread } from './types.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, Result, SetInput } from '../subject/types.ts';

/** A bound on a result. */
export interface Limit {
  readonly result: Result;
  readonly at: 'least' | 'most';
  readonly value: number;
}

/** What a sentence asks beside what is to be best. */
export interface Conditions {
  /** The sentence without them. */
  readonly rest: string;
  /** Inputs set to something else first. */
  readonly given: readonly SetInput[];
  readonly limits: readonly Limit[];
  /** Inputs that may move up to a bound. */
  readonly ranges: readonly { readonly input: Input; readonly range: readonly [number, number] }[];
}

const Q = String.raw`([-+−]?\d[\d.,]*(?: ?(?!(?:by|and|at|that|with|while|for|every|all)\b)[^\s\d,]+)?)`;
/** A few words, none of which begins another condition. */
const PHRASE = String.raw`((?:(?!\b(?:with|while|where|whose|that|and|by|at|for|in|over|moving|from|between|within)\b)[^\d,]|(?<=\p{L})\d)+?)`;
const AT_MOST = 'at most|below|under|less than|(?:no|not) more than|not above|up to|<=?|≤';
const AT_LEAST = 'at least|above|more than|(?:no|not) less than|not below|>=?|≥';
const LINK = String.raw`(?:,? ?\b(?:that|which|and|while|to|it|can|must|still|also|has|have)\b ?)*`;

/** Where one listens is where a sheet says that its level holds. */
const PLACE =
  /\s+(?:at|in|from)\s+(?:(?:the|my|a|your)\s+)?(?:chair|seat|sofa|listening (?:place|position|seat|chair|distance)|(?:1|one) ?m(?:et(?:re|er))?)\b/giu;
const BOUND = new RegExp(
  String.raw`,? ?\b(?:with|while|where|whose|keeping|having|in|and|that has|that keeps)\s+${PHRASE}\s+(?:(?:is|are|stays?|of|be|be kept)\s+)*(${AT_MOST}|${AT_LEAST})\s*${Q}`,
  'iu',
);
const PLAYS = new RegExp(String.raw`${LINK}\bplay(?:s|ing)?\b(?: (?:up to|to|at|at least|loud))* ${Q}`, 'iu');
const REACHES = new RegExp(
  String.raw`${LINK}\b(?:reach(?:es|ing)?|go(?:es|ing)? down to|extend(?:s|ing)? to|down to)(?: (?:down to|to|at least))? ${Q}`,
  'iu',
);
const GIVEN = new RegExp(
  String.raw`\s+(?:at|for|with|when|if)\s+(?:an? |the )?(?:${PHRASE}\s+(?:of |is )?)?${Q}`,
  'iu',
);

/** Takes out of a sentence what it asks beside: `at 106 dB`, `that still plays 106 dB`, `reaching 45 Hz`, `with F3 below 50 Hz`,
 *  `in a box of at most 15 L`, `with Power 100 W`. A level is set where the sheet has one that is aimed at, else it is a bound on
 *  the level that the sheet works out. */
export function readConditions(model: DocumentModel, sentence: string): Conditions | Unread {
  const given: SetInput[] = [];
  const limits: Limit[] = [];
  const ranges: Conditions['ranges'][number][] = [];
  let rest = sentence.replaceAll(PLACE, '');
  const take = (pattern: RegExp, read: (found: readonly string[]) => Unread | undefined): Unread | undefined => {
    for (let found = pattern.exec(rest); found; found = pattern.exec(rest)) {
      const wrong = read(Array.from(found, (each: string | undefined) => each?.trim() ?? ''));
      if (wrong) return wrong;
      rest = rest.slice(0, found.index) + rest.slice(found.index + found[0].length);
    }
    return undefined;
  };
  const limit = (phrase: string, at: Limit['at'], written: string, results: readonly Result[]): Unread | undefined => {
    const quantity = parseQuantity(written);
    if (!quantity) return noQuantity(written);
    const result = oneOf(phrase, fitting(results, quantity), 'result');
    if ('wrong' in result) return result;
    limits.push({ result, at, value: quantity.value });
    return undefined;
  };
  const set = (phrase: string, written: string): Unread | undefined => {
    const read = readGiven(model, `${phrase} ${written}`);
    const isLevel = parseQuantity(written)?.quantity === 'level' && phrase === '';
    if ('wrong' in read) return isLevel ? limit('level', 'least', written, played(model)) : read;
    given.push(read);
    return undefined;
  };
  const numbers = model.subject.results.filter(({ kind }) => kind === 'number');
  const wrong =
    take(BOUND, ([, phrase = '', than = '', written = '']) => {
      const quantity = parseQuantity(written);
      if (!quantity) return noQuantity(written);
      const at = new RegExp(`^(?:${AT_MOST})$`, 'i').test(than) ? 'most' : 'least';
      const input = sizeIn(model, phrase) ?? inputNamed(model, phrase, quantity, numbers);
      if (!input) return limit(phrase, at, written, numbers);
      const [from, to] = input.range;
      ranges.push({
        input,
        range:
          at === 'most'
            ? [Math.min(from, quantity.value), quantity.value]
            : [quantity.value, Math.max(to, quantity.value)],
      });
      return undefined;
    }) ??
    take(PLAYS, ([, written = '']) => set('', written)) ??
    take(REACHES, ([, written = '']) => limit('F3', 'most', written, numbers)) ??
    take(GIVEN, ([, phrase = '', written = '']) => set(phrase, written));
  return wrong ?? { rest: rest.replaceAll(/\s+/g, ' ').trim(), given, limits, ranges };
}

const noQuantity = (written: string): Unread => ({
  wrong: `“${written}” is no quantity: give a number with its unit.`,
  suggestions: [],
});

const fitting = <T extends Input | Result>(cells: readonly T[], quantity: ParsedQuantity): readonly T[] =>
  cells.filter((each) => quantity.unit === '' || isSame(each.quantity, quantity));

/** An input, where the phrase names one better than any result. */
function inputNamed(
  model: DocumentModel,
  phrase: string,
  quantity: ParsedQuantity,
  results: readonly Result[],
): Input | undefined {
  const [named, other] = bestMatches(phrase, [...fitting(movable(model), quantity), ...fitting(results, quantity)]);
  return named && !other && !('kind' in named) ? named : undefined;
}

/** The levels that a sheet works out: what it can play, not how far a curve moves. */
const played = ({ subject }: DocumentModel): readonly Result[] =>
  subject.results.filter(
    ({ kind, quantity, label, name = '' }) =>
      kind === 'number' && quantity === 'level' && wordsOf(`${label} ${name}`).includes('level'),
  );
