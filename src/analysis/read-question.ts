import { sameDimension } from '../units/dimension.ts';
import { parseQuantity, type ParsedQuantity } from '../units/parse.ts';
import { quantities } from '../../functions/quantities.ts';
import { bestMatches, wordsOf } from './match.ts';
import type { ReadQuestion, Target } from './seek-types.ts';
import type { SheetModel } from './sheet-model.ts';
import type { Input, Result, SetInput } from './subject-types.ts';
import { influential } from './influence.ts';

const ASKS =
  /^(?:which|what|how\s+(?:many|much|large|big|high|low|long|wide))\s+(.+?)\s+(?:(?:would|will|does|do|can|could|must|should)\s+)?(?:give|make|bring|get|let|put|lead\s+to|mean)s?\s+(.+?)\s*\??$/i;
const WORKS = /^(.*?)\s*\b(?:works?|pass(?:es)?|good|holds?|fits?|ok)\b\s*(.*)$/i;
const GIVEN = /\s+\b(?:at|with|for|when|if)\b\s+/i;

const examples = ['which litres give Qtc 0.707?', 'which Xmax would make this pair work at 106 dB?'];

interface Wrong {
  readonly wrong: string;
  readonly suggestions: readonly string[];
}

/** Reads a question in plain words against the names, labels and units of a document. Where several cells could be meant, the
 *  ones without any effect on the result are passed over; if more than one is left, it asks back rather than guess. */
export async function readQuestion(model: SheetModel, sentence: string): Promise<ReadQuestion> {
  const [, inputWords, rest] = ASKS.exec(sentence.trim().replaceAll(/\s+/g, ' ')) ?? [];
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
  const input = await readInput(model, inputWords, aim.result, given);
  if ('wrong' in input) return input;
  const { result, target } = aim;
  return {
    document: model.document,
    result: { sheet: result.sheet, cell: result.cell },
    target,
    input: { sheet: input.sheet, cell: input.cell },
    ...(given.length > 0 && { given }),
  };
}

interface Aim {
  readonly result: Result;
  readonly target: Target;
  readonly given: readonly string[];
}

function readAim(model: SheetModel, rest: string): Aim | Wrong {
  const works = WORKS.exec(rest);
  const value = works ? undefined : readValue(rest);
  if (works) {
    const [, subject = '', tail = ''] = works;
    const result = readVerdict(model, subject);
    if ('wrong' in result) return result;
    const isGood = /\bgood\b/i.test(rest);
    return { result, target: { kind: 'good', ...(!isGood && { orCaution: true }) }, given: givenIn(` ${tail}`) };
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
  return 'wrong' in result
    ? result
    : { result, target: { kind: 'number', value: quantity.value }, given: givenIn(tail) };
}

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
  'they them everything all both drivers driver pair pairs team sheet these speaker box'.split(' '),
);

/** The verdict that is named; the first of the sheet, its overall answer, where none is. */
function readVerdict(model: SheetModel, phrase: string): Result | Wrong {
  const { verdicts } = model;
  const [first] = verdicts;
  if (!first) return { wrong: 'No cell of this document holds a verdict: ask for a number instead.', suggestions: [] };
  const named = wordsOf(phrase).filter((word) => !WHOLE.has(word));
  return named.length === 0 ? first : oneOf(named.join(' '), verdicts, 'verdict');
}

/** `106 dB`, `target 106 dB`, `the box at 12 L`. */
function readGiven(model: SheetModel, words: string): SetInput | Wrong {
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

async function readInput(
  model: SheetModel,
  phrase: string,
  result: Result,
  given: readonly SetInput[],
): Promise<Input | Wrong> {
  const behind = model.graph.ancestors([`${result.sheet}!${result.cell}`]);
  const able = model.subject.inputs.filter(({ sheet, cell }) => behind.has(`${sheet}!${cell}`));
  const isFree = ({ sheet, cell }: Input): boolean => !given.some((each) => each.sheet === sheet && each.cell === cell);
  const matching = bestMatches(phrase, able.filter(isFree));
  const working = matching.length > 1 ? await influential(model, matching, result) : matching;
  if (working.length === 1 && working[0]) return working[0];
  return matching.length > 0 ? ambiguous(phrase, working.length > 0 ? working : matching) : none(phrase, able, 'input');
}

function oneOf<T extends Input | Result>(phrase: string, cells: readonly T[], kind: string): T | Wrong {
  const matching = bestMatches(phrase, cells);
  const [first, second] = matching;
  if (first && !second) return first;
  return first ? ambiguous(phrase, matching) : none(phrase, cells, kind);
}

const ambiguous = (phrase: string, cells: readonly (Input | Result)[]): Wrong => ({
  wrong: `“${phrase.trim()}” could be any of several cells: name one of them.`,
  suggestions: cells.map(({ name, label }) => name ?? label),
});

const none = (phrase: string, cells: readonly (Input | Result)[], kind: string): Wrong => ({
  wrong: `No ${kind} that fits is called “${phrase.trim()}”: use a name or a label of the sheet.`,
  suggestions: cells.slice(0, 12).map(({ name, label }) => name ?? label),
});
