import { parseQuantity, type ParsedQuantity } from '../../units/parse.ts';
import { wordsOf } from './match.ts';
import { mayBeOfMany, readBest, readCheapest } from './best.ts';
import { isSame, oneOf, readInput } from './cells.ts';
import { readConditions } from './conditions.ts';
import { readGiven } from './given.ts';
import type { ReadQuestion, Unread } from './types.ts';
import { EVERY, type SeekQuestion, type Target } from '../seek/types.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Result, SetInput } from '../subject/types.ts';

const ASKS =
  /^(?:which|what|how\s+(?:many|much|large|big|high|low|long|wide))\s+(.+?)\s+(?:(?:would|will|does|do|can|could|must|should)\s+)?(?:give|make|bring|get|let|put|lead\s+to|mean)s?\s+(.+?)\s*\??$/i;
const WORKS = /^(.*?)\s*\b(?:works?|pass(?:es)?|good|holds?|fits?|ok)\b\s*(.*)$/i;
const GIVEN = /\s+\b(?:at|with|for|when|if)\b\s+/i;

const examples = ['which litres give Qtc 0.707?', 'which Xmax would make this pair work at 106 dB?'];

/** Reads a question in plain words against the names, labels and units of a document. Where several cells could be meant, the
 *  ones without any effect on the result are passed over; if more than one is left, it asks back rather than guess. */
export async function readQuestion(model: DocumentModel, sentence: string): Promise<ReadQuestion> {
  const words = sentence
    .trim()
    .replaceAll(/\s+/g, ' ')
    .replace(/\s*[?.!]$/, '');
  if (!mayBeOfMany(words)) return readSeek(model, words);
  const conditions = readConditions(model, words);
  if ('wrong' in conditions) return conditions;
  return readCheapest(conditions) ?? (await readBest(model, conditions)) ?? readSeek(model, words);
}

async function readSeek(model: DocumentModel, sentence: string): Promise<ReadQuestion> {
  const [, inputWords, rest] = ASKS.exec(sentence) ?? [];
  if (inputWords === undefined || rest === undefined)
    return { wrong: `Ask for the value of an input, as in “${examples[0] ?? ''}”.`, suggestions: examples };
  const aim = readAim(model, rest);
  if ('wrong' in aim) return aim;
  const given: SetInput[] = [];
  for (const words of aim.given) {
    const read = readGiven(model, words);
    if ('wrong' in read) return read;
    given.push(read);
  }
  const input = await readInput(model, inputWords, aim.results, given);
  if ('wrong' in input) return input;
  const { result, target } = aim;
  return {
    kind: 'seek',
    question: {
      document: model.document,
      result,
      target,
      input: { sheet: input.sheet, cell: input.cell },
      ...(given.length > 0 && { given }),
    },
  };
}

interface Aim extends Pick<SeekQuestion, 'result'> {
  readonly results: readonly Result[];
  readonly target: Target;
  readonly given: readonly string[];
}

function readAim(model: DocumentModel, rest: string): Aim | Unread {
  const works = WORKS.exec(rest);
  const value = works ? undefined : readValue(rest);
  if (works) {
    const [, subject = '', tail = ''] = works;
    const verdict = readVerdict(model, subject);
    if ('wrong' in verdict) return verdict;
    const isGood = /\bgood\b/i.test(rest);
    return {
      ...verdict,
      target: { kind: 'good', ...(!isGood && { orCaution: true }) },
      given: givenIn(` ${tail}`),
    };
  }
  if (!value)
    return {
      wrong: `No value to reach is found in “${rest}”: name a result and a number, as in Qtc 0.707, or say what shall work.`,
      suggestions: examples,
    };
  const { subject, quantity, tail } = value;
  const fitting = model.subject.results.filter(
    (each) => each.kind === 'number' && (quantity.unit === '' || isSame(each.quantity, quantity)),
  );
  const result = oneOf(subject, fitting, 'result');
  if ('wrong' in result) return result;
  return { ...aimAt(result), target: { kind: 'number', value: quantity.value }, given: givenIn(tail) };
}

const aimAt = (result: Result): Pick<Aim, 'result' | 'results'> => ({
  result: { sheet: result.sheet, cell: result.cell },
  results: [result],
});

/** `Qtc 0.707`, `Qtc of 0.707`, `an F3 of 45 Hz with 6 L`: the name before the number, and what follows it. */
function readValue(rest: string): { subject: string; quantity: ParsedQuantity; tail: string } | undefined {
  const [head = '', ...tails] = rest.split(GIVEN);
  // `Load at 4 ohm`: what follows is the value itself.
  const parts =
    /\d/.test(head.replace(/^\S*/, '')) || tails.length === 0
      ? [head, tails]
      : [`${head} ${tails[0] ?? ''}`, tails.slice(1)];
  const [own, further] = parts as [string, string[]];
  const [, subject, written] = /^(.+?)\s+(?:(?:of|to|be|is|equal to|=)\s+)*([-+−]?[\d.,].*)$/.exec(own) ?? [];
  const quantity = written === undefined ? undefined : parseQuantity(written);
  if (subject === undefined || !quantity) return undefined;
  return { subject, quantity, tail: further.map((each) => ` with ${each}`).join('') };
}

const givenIn = (tail: string): string[] =>
  tail
    .split(GIVEN)
    .slice(1)
    .flatMap((each) => each.split(/\s+and\s+/i))
    .filter((each) => each.trim() !== '');

const WHOLE = new Set(
  'they them every everything all both drivers driver pair pairs team sheet these speaker box'.split(' '),
);

/** The verdict that is named, or all of them; the first of the sheet, its overall answer, where none is. */
function readVerdict(model: DocumentModel, phrase: string): Pick<Aim, 'result' | 'results'> | Unread {
  const { verdicts } = model;
  const [first] = verdicts;
  if (!first) return { wrong: 'No cell of this document holds a verdict: ask for a number instead.', suggestions: [] };
  const named = wordsOf(phrase).filter((word) => !WHOLE.has(word));
  if (named.length === 1 && /^verdicts?$/.test(named[0] ?? '')) return { result: EVERY, results: verdicts };
  const verdict = named.length === 0 ? first : oneOf(named.join(' '), verdicts, 'verdict');
  return 'wrong' in verdict ? verdict : aimAt(verdict);
}
