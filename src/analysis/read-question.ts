import { sameDimension } from '../units/dimension.ts';
import { parseQuantity, type ParsedQuantity } from '../units/parse.ts';
import { quantities } from '../../functions/quantities.ts';
import { wordsOf } from './match.ts';
import { readBest, readCheapest } from './read-best.ts';
import { oneOf, readInput } from './read-cells.ts';
import type { ReadQuestion, Unread } from './read-types.ts';
import { EVERY, type SeekQuestion, type Target } from './seek-types.ts';
import type { SheetModel } from './sheet-model.ts';
import type { Input, Result, SetInput } from './subject-types.ts';

const ASKS =
  /^(?:which|what|how\s+(?:many|much|large|big|high|low|long|wide))\s+(.+?)\s+(?:(?:would|will|does|do|can|could|must|should)\s+)?(?:give|make|bring|get|let|put|lead\s+to|mean)s?\s+(.+?)\s*\??$/i;
const WORKS = /^(.*?)\s*\b(?:works?|pass(?:es)?|good|holds?|fits?|ok)\b\s*(.*)$/i;
const GIVEN = /\s+\b(?:at|with|for|when|if)\b\s+/i;

const examples = ['which litres give Qtc 0.707?', 'which Xmax would make this pair work at 106 dB?'];

/** Reads a question in plain words against the names, labels and units of a document. Where several cells could be meant, the
 *  ones without any effect on the result are passed over; if more than one is left, it asks back rather than guess. */
export async function readQuestion(model: SheetModel, sentence: string): Promise<ReadQuestion> {
  const words = sentence
    .trim()
    .replaceAll(/\s+/g, ' ')
    .replace(/\s*[?.!]$/, '');
  return readCheapest(words) ?? (await readBest(model, words)) ?? readSeek(model, words);
}

async function readSeek(model: SheetModel, sentence: string): Promise<ReadQuestion> {
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

function readAim(model: SheetModel, rest: string): Aim | Unread {
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

const isSame = (own: Result['quantity'], { quantity }: ParsedQuantity): boolean =>
  own !== undefined && sameDimension(quantities[own].dimension, quantities[quantity].dimension);

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
function readVerdict(model: SheetModel, phrase: string): Pick<Aim, 'result' | 'results'> | Unread {
  const { verdicts } = model;
  const [first] = verdicts;
  if (!first) return { wrong: 'No cell of this document holds a verdict: ask for a number instead.', suggestions: [] };
  const named = wordsOf(phrase).filter((word) => !WHOLE.has(word));
  if (named.length === 1 && /^verdicts?$/.test(named[0] ?? '')) return { result: EVERY, results: verdicts };
  const verdict = named.length === 0 ? first : oneOf(named.join(' '), verdicts, 'verdict');
  return 'wrong' in verdict ? verdict : aimAt(verdict);
}

/** `106 dB`, `target 106 dB`, `the box at 12 L`. */
function readGiven(model: SheetModel, words: string): SetInput | Unread {
  const [, phrase = '', written = ''] = /^(.*?)\s*([-+−]?[\d.,].*)$/.exec(words.trim()) ?? [];
  const quantity = parseQuantity(written);
  if (!quantity)
    return {
      wrong: `“${words.trim()}” is no quantity that could be set: give a number with its unit.`,
      suggestions: [],
    };
  const fitting = model.subject.inputs.filter(
    (each) => typeof each.present === 'number' && isSame(each.quantity, quantity),
  );
  const isNamed = wordsOf(phrase).length > 0;
  const input = (isNamed ? undefined : aimedAt(fitting)) ?? oneOf(isNamed ? phrase : written, fitting, 'input');
  if ('wrong' in input) return input;
  return { sheet: input.sheet, cell: input.cell, label: input.label, value: quantity.value, text: written.trim() };
}

/** A level given without a name is the one aimed at: of several with that label the one that has a name or a range. */
function aimedAt(inputs: readonly Input[]): Input | undefined {
  const aimed = inputs.filter(({ label, name }) => wordsOf(`${label} ${name ?? ''}`).includes('target'));
  const set = aimed.filter(({ name, isRangeGiven }) => name !== undefined || isRangeGiven);
  return set.length > 0 ? set[0] : aimed[0];
}
