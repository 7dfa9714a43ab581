import { parseQuantity } from '../../units/parse.ts';
import { bestMatches, NAMED, wordsOf } from './match.ts';
import type { Objective, OptimiseQuestion } from '../optimise/types.ts';
import { movable, oneOf, readInput, sizeIn } from './cells.ts';
import type { Conditions } from './conditions.ts';
import type { ReadQuestion, Unread } from './types.ts';
import type { Place } from '../../engine/types.ts';
import type { DocumentModel } from '../model/document-model.ts';
import { typedInto } from '../subject/typed-into.ts';
import type { Input, Result } from '../subject/types.ts';

const senses = {
  least: 'lowest least smallest shortest lightest narrowest slowest minimum min',
  most: 'highest most largest biggest longest loudest widest greatest maximum max',
  flattest: 'flattest smoothest evenest',
} as const satisfies Record<Exclude<Objective['kind'], 'nearest'>, string>;

const wordsOfAll = Object.values(senses).join(' ').replaceAll(' ', '|');
const BEST = new RegExp(
  String.raw`^(?:(?:what|which|how|find|give|show)\b(?: (?:is|are|me))?(?: (.+?))??(?: (?:gives?|makes?|brings?|gets?|has|have|for|with))? )?(?:the )?(${wordsOfAll}|best) (.+)$`,
  'i',
);
const CHEAPEST =
  /\b(?:cheapest|fewest|least|smallest)\b.*\b(?:changes?|fix(?:es)?|repairs?|way)\b|\bchanges? (?:the )?(?:least|fewest)\b/i;
const KEPT =
  /(?:,? (?:(?:and|while|that|which|with|where) )*)?\b(?:(?:it )?(?:keeps?|keeping|holds?|holding|has|having|leaves?|leaving|makes?) )?(?:every|all|each)(?: of)?(?: the)? verdicts?(?: (?:is|are|stays?|kept))?((?: (?:good|free of failures?|clear(?: of failures?)?|works?|working|pass(?:es|ing)?|hold(?:s|ing)?))?)|,? (?:(?:and|while|with|where) )?(nothing|no verdict) fail(?:s|ing)?\b/i;
/** A quantity with at most one word for its unit, so that what follows is not taken for one. */
const Q = String.raw`([-+−]?[\d.,]+(?: ?[^\s\d,]+)?)`;
const SPAN = new RegExp(String.raw`\s*\b(?:between|from|within) ${Q} (?:and|to) ${Q}`, 'i');
const MOVING = /,? \b(?:by|over|moving|varying|changing|with)\b (?:moving |varying |changing |setting )?/i;

const suggestions = [
  'smallest box that keeps every verdict',
  'flattest response between 50 Hz and 200 Hz by volume and tuning',
  'lowest F3 by volume from 5 L to 20 L',
];

/** Whether a sentence asks for the best or for changes, and not for one value. */
export const mayBeOfMany = (sentence: string): boolean => CHEAPEST.test(sentence) || BEST.test(sentence);

/** Reads `cheapest change that makes every verdict good`, `fewest changes that pass`. Nothing where a sentence asks something else. */
export function readCheapest({ rest, given, limits, ranges }: Conditions): ReadQuestion | undefined {
  if (!CHEAPEST.test(rest)) return undefined;
  const [bound] = [...limits.map(({ result }) => result), ...ranges.map(({ input }) => input)];
  if (bound)
    return {
      wrong: `Changes are judged by the verdicts of the sheet, not by a bound on ${bound.label}: set what the verdicts ask instead, as in “at 106 dB”.`,
      suggestions: ['cheapest change at 106 dB', ...suggestions],
    };
  return {
    kind: 'cheapest',
    cost: /\bcheapest\b/i.test(rest) ? 'money' : 'changes',
    ...(/\b(?:pass|works?|clear|free of|not fail)/i.test(rest) && { orCaution: true as const }),
    given,
  };
}

/** Reads `the lowest F3 by volume from 5 L to 20 L, every verdict good`, `which volume and tuning give the flattest response between
 *  50 Hz and 200 Hz`, `smallest box that keeps every verdict`. Nothing where a sentence asks something else. */
export async function readBest(model: DocumentModel, conditions: Conditions): Promise<ReadQuestion | undefined> {
  const { rest, given, limits, ranges } = conditions;
  const kept = KEPT.exec(rest);
  const asked = (kept ? rest.replace(kept[0], '') : rest).trim();
  const [, before = '', superlative = '', after = ''] = BEST.exec(asked) ?? [];
  if (superlative === '') return undefined;
  const [head = '', ...tail] = after.split(MOVING);
  const objective = readObjective(model, superlative.toLowerCase(), head);
  if ('wrong' in objective) return objective;
  const named = [before, ...tail].flatMap((words) => phrasesIn(words)).filter((words) => wordsOf(words).length > 0);
  const inputs = await readMoved(model, named, objective.read, conditions);
  if ('wrong' in inputs) return inputs;
  return {
    kind: 'best',
    question: {
      document: typedInto(model.document, given),
      inputs: inputs.map((input) => {
        const bound = ranges.find((each) => isAt(each.input, input));
        return bound && !input.range ? { ...input, range: bound.range } : input;
      }),
      objective: objective.asked,
      ...(kept && { keep: /^(?: good)?$/i.test(kept[1] ?? '-') ? ('good' as const) : ('clear' as const) }),
      ...(limits.length > 0 && { limits: limits.map(({ result, ...limit }) => ({ ...placeOf(result), ...limit })) }),
    },
    given,
  };
}

const isAt = (a: Place, b: Place): boolean => a.sheet === b.sheet && a.cell === b.cell;

interface Read {
  readonly asked: Objective;
  readonly read: Result | Input;
}

function readObjective(model: DocumentModel, superlative: string, head: string): Read | Unread {
  const span = SPAN.exec(head);
  const phrase = span ? head.replace(span[0], '') : head;
  const [from, to] = spanOf(span);
  const curves = model.subject.results.filter(({ kind }) => kind === 'curve');
  const numbers = model.subject.results.filter(({ kind }) => kind === 'number');
  const kind = (['least', 'most', 'flattest'] as const).find((each) => senses[each].split(' ').includes(superlative));
  if (kind === 'flattest' || (kind === undefined && !('wrong' in oneOf(phrase, curves, 'curve')))) {
    const curve = oneOf(phrase, curves, 'curve');
    if ('wrong' in curve) return curve;
    if (from === undefined || to === undefined)
      return {
        wrong: `Say between which frequencies ${curve.label} is to be flat, as in “between 50 Hz and 200 Hz”.`,
        suggestions,
      };
    return { asked: { kind: 'flattest', result: placeOf(curve), from, to }, read: curve };
  }
  const [called] = bestMatches(phrase, [...numbers, ...movable(model)], NAMED);
  const cell = called ?? sizeIn(model, phrase) ?? oneOf(phrase, numbers, 'result');
  const other = 'wrong' in cell ? oneOf(phrase, movable(model), 'input') : cell;
  if ('wrong' in other) return 'wrong' in cell ? cell : other;
  if (kind === undefined)
    return { wrong: `Say whether ${other.label} is to be the lowest or the highest.`, suggestions };
  return { asked: { kind, result: placeOf(other) }, read: other };
}

const spanOf = (span: RegExpExecArray | null): readonly (number | undefined)[] =>
  [span?.[1], span?.[2]].map((text) => (text === undefined ? undefined : parseQuantity(text)?.value));

const placeOf = ({ sheet, cell }: Result | Input) => ({ sheet, cell });

/** `volume from 5 L to 20 L and tuning`, taken apart. */
const phrasesIn = (words: string): string[] =>
  words.replaceAll(/\bbetween (\S+(?: [^\s\d]+)?) and /gi, 'from $1 to ').split(/\s*,\s+|\s+and\s+/i);

/** What may move: what is named, what is bounded, and what is itself to be least or most. */
async function readMoved(
  model: DocumentModel,
  named: readonly string[],
  objective: Result | Input,
  { given, limits, ranges }: Conditions,
): Promise<OptimiseQuestion['inputs'] | Unread> {
  const own = model.input(objective);
  const bounded = ranges.map(({ input }) => input).filter((input) => !given.some((each) => isAt(each, input)));
  const all = [...(own ? [own] : []), ...bounded];
  if (named.length === 0 && all.length === 0)
    return { wrong: `Say what may move, as in “${objective.label} by volume and tuning”.`, suggestions };
  const results = own ? [...model.verdicts, ...limits.map(({ result }) => result)] : [objective as Result];
  const inputs: OptimiseQuestion['inputs'][number][] = [];
  for (const words of named) {
    const span = SPAN.exec(words);
    const input = await readInput(model, span ? words.replace(span[0], '') : words, results, [...inputs, ...given]);
    if ('wrong' in input) return input;
    const [from, to] = spanOf(span);
    inputs.push({ ...placeOf(input), ...(from !== undefined && to !== undefined && { range: [from, to] as const }) });
  }
  return [...all.filter((each) => !inputs.some((input) => isAt(input, each))).map(placeOf), ...inputs];
}
