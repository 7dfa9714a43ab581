import type { CellValue } from '../../engine/types.ts';
import { Breath } from '../breathe.ts';
import { alternativesOf, type Alternatives } from './changes.ts';
import { Look, textsOf } from './look.ts';
import type { Change, Cheapest, CheapestQuestion, CheapestStep } from './types.ts';
import { placeError, QuestionError } from '../subject/place-error.ts';
import type { DocumentModel } from '../model/document-model.ts';
import { standingOf, standings, type Result, type Standing, type Watch } from '../subject/types.ts';
import { resultAt } from '../sweep/sweep.ts';
import { listed, resultWords } from '../subject/words.ts';

/** So many sets of changes are put in order, and so many of the cheapest are computed. */
const MOST_SETS = 2_000_000;
const MOST_LOOKS = 20_000;

type Standings = readonly Standing[];

/** Finds the least that turns every failing verdict and makes none worse: all sets of changes within the limit, the cheapest
 *  first, each computed by the sheet itself, so that the first that serves and has nothing in it that is not needed is the least; where
 *  a number of the sheet is to be least, the least of all that serve.
 *  @throws An error in words for the reader where something named is not in the sheet, or there are too many sets. */
export async function cheapest(model: DocumentModel, question: CheapestQuestion, watch?: Watch): Promise<Cheapest> {
  const { changes, cost } = question;
  if (!Number.isInteger(changes) || changes < 1 || changes > 4)
    throw new QuestionError(`From one to four changes at once can be looked for, but ${changes} are asked.`);
  const { verdicts, document } = model;
  const counting = typeof cost === 'string' ? undefined : resultAt(model, cost);
  if (counting && counting.kind !== 'number')
    throw placeError(document, counting, 'no number: name a result that is one, such as a price');
  const before = verdicts.map(({ present }) => standingOf(present));
  const failing = verdicts.filter((_, index) => isBroken(before[index]));
  const alternatives = alternativesOf(model, question);
  const choices = alternatives.reduce((sum, { changes: own }) => sum + own.length, 0);
  const lacking = (what: Alternatives['lacks']): string[] =>
    alternatives.filter(({ lacks }) => lacks === what).map(({ label }) => label);
  const [unpriced, whole] = [lacking('price'), lacking('present price')];
  if (failing.length === 0)
    return {
      failing,
      unpriced,
      whole,
      choices,
      of: 0,
      looked: 0,
      isWhole: true,
      said: 'Nothing fails as the sheet stands.',
    };
  const sets = setsOf(alternatives, changes);
  if (sets.length > MOST_SETS)
    throw new QuestionError(`There are more than ${MOST_SETS} sets of changes: allow fewer at once, or fewer values.`);
  const inOrder = sets.map((set) => ({ set, money: moneyOf(set) })).sort(cheaperBy(cost === 'money'));
  const isWhole = inOrder.length <= MOST_LOOKS;

  const breath = new Breath(watch);
  const serves = (after: Standings): boolean =>
    after.every((standing, index) => isTurned(before[index], standing, question.orCaution === true));
  const look = await Look.over(
    model,
    alternatives.flatMap((each) => each.changes),
    counting ? [...verdicts, counting] : verdicts,
  );
  const standingsIn = (values: readonly CellValue[]): Standings => values.slice(0, verdicts.length).map(standingOf);
  const leftIn = (after: Standings): readonly Result[] => verdicts.filter((_, index) => isBroken(after[index]));
  /** What is given as found has been typed into the sheet. */
  const standingsWith = async (set: readonly Change[]) => {
    const quick = look.quick(set);
    const values = quick && !serves(standingsIn(quick)) ? quick : await look.exact(set);
    return { values, standings: standingsIn(values) };
  };
  /** Whether each change is of use: one that only saves money is no part of what turns the failures. */
  const isNeeded = async (set: readonly Change[]): Promise<boolean> => {
    if (set.length < 2) return true;
    for (const each of set)
      if (serves((await standingsWith(set.filter((other) => other !== each))).standings)) return false;
    return true;
  };
  let nearest: { readonly set: readonly Change[]; readonly left: number } | undefined;
  let best: (Priced & { readonly counted: number }) | undefined;
  let looked = 0;
  for (const each of inOrder.slice(0, MOST_LOOKS)) {
    await breath.take({ done: looked, of: Math.min(MOST_LOOKS, inOrder.length) });
    const after = await standingsWith(each.set);
    looked++;
    if (serves(after.standings) && (cost !== 'money' || (await isNeeded(each.set)))) {
      const counted = countedIn(counting ? after.values.at(-1) : undefined);
      if (!best || counted < best.counted) best = { ...each, counted };
      if (!counting) break;
    }
    const left = leftIn(after.standings).length;
    const isWorse = after.standings.some((standing, index) => rankOf(standing) > rankOf(before[index]));
    if (!isWorse && (!nearest || left < nearest.left)) nearest = { set: each.set, left };
  }
  const shared = { failing, unpriced, whole, ...(counting && { counting }), choices, of: inOrder.length, looked };
  const searched = searchedWords(shared, question, best !== undefined);
  if (!best) {
    const left = nearest && leftIn(standingsIn(await look.exact(nearest.set)));
    return {
      ...shared,
      ...(nearest && left && { nearest: { changes: nearest.set, left } }),
      isWhole,
      said: `Not found. ${searched}`,
    };
  }
  const { set, money, counted } = best;
  return {
    ...shared,
    found: {
      steps: await stepsOf(model, set, before),
      money,
      changes: set.length,
      ...(Number.isFinite(counted) && { counted }),
    },
    isWhole: isWhole || !counting,
    said: `Found: ${listed(set.map(({ words }) => words))}. ${searched}`,
  };
}

/** Beyond all numbers where there is none. */
const countedIn = (value: CellValue | undefined): number => (value?.kind === 'number' ? value.value : Infinity);

const isBroken = (standing: Standing | undefined): boolean => standing === 'fail' || standing === 'problem';
const rankOf = (standing: Standing | undefined): number => standings.indexOf(standing ?? 'problem');

/** What failed is good, or a caution where that is enough; what did not fail is no worse. */
function isTurned(before: Standing | undefined, after: Standing, orCaution: boolean): boolean {
  if (isBroken(before)) return after === 'good' || (orCaution && after === 'caution');
  return rankOf(after) <= rankOf(before);
}

const moneyOf = (set: readonly Change[]): number => set.reduce((sum, { money }) => sum + money, 0);

interface Priced {
  readonly set: readonly Change[];
  readonly money: number;
}

const cheaperBy =
  (isMoney: boolean) =>
  (a: Priced, b: Priced): number =>
    isMoney ? a.money - b.money || a.set.length - b.set.length : a.set.length - b.set.length || a.money - b.money;

/** Every set of up to so many changes, none to the same thing twice. */
function setsOf(alternatives: readonly Alternatives[], most: number): (readonly Change[])[] {
  const sets: (readonly Change[])[] = [];
  const extend = (set: readonly Change[], from: number): void => {
    if (set.length > 0) sets.push(set);
    if (set.length === most || sets.length > MOST_SETS) return;
    for (let index = from; index < alternatives.length; index++)
      for (const change of alternatives[index]?.changes ?? []) extend([...set, change], index + 1);
  };
  extend([], 0);
  return sets;
}

/** One change after the other, with the verdicts that each turns. */
async function stepsOf(model: DocumentModel, set: readonly Change[], before: Standings): Promise<CheapestStep[]> {
  const { verdicts } = model;
  const steps: CheapestStep[] = [];
  let present = before;
  for (const [index, change] of set.entries()) {
    const values = await model.read(textsOf(set.slice(0, index + 1)), verdicts);
    const after = values.map(standingOf);
    const was = present;
    const flips = verdicts.flatMap((verdict, at) => {
      const [from = 'problem', to = 'problem'] = [was[at], after[at]];
      const reason = resultWords(verdict, values[at] ?? { kind: 'empty' }, model.document.system);
      return from === to ? [] : [{ verdict, from, to, reason }];
    });
    steps.push({ change, flips });
    present = after;
  }
  return steps;
}

/** What was looked at, so that nobody takes it for more. */
function searchedWords(
  searched: Pick<Cheapest, 'choices' | 'looked' | 'of' | 'counting' | 'unpriced' | 'whole'>,
  { cost, changes }: CheapestQuestion,
  isFound: boolean,
): string {
  const { choices, looked, of, counting } = searched;
  const by = counting?.label ?? (cost === 'money' ? 'money' : 'number of changes');
  const space = `${of} sets of up to ${changes} ${changes === 1 ? 'change' : 'changes'} out of ${choices}`;
  if (!isFound)
    return looked < of
      ? `The ${looked} of least ${counting ? 'changes' : by} among ${space} were computed; the dearer ones were not.`
      : `All ${space} were computed.`;
  if (counting)
    return `${looked < of ? `${looked} of` : 'All'} ${space} were computed: of those that serve, this has the least ${by}.`;
  return [
    `${looked} of ${space} were computed, the least ${by} first: within these nothing costs less in which every change is needed.`,
    ...(cost === 'money' ? countedWords(searched) : []),
  ].join(' ');
}

/** What money stands for. */
const countedWords = ({ unpriced, whole }: Pick<Cheapest, 'unpriced' | 'whole'>): string[] => [
  'Counted is what a pair of cabinets costs more than as the sheet stands.',
  ...(unpriced.length > 0 ? [`${listed(unpriced)} counted as 0: no price is given.`] : []),
  ...(whole.length > 0
    ? [`What takes the place of ${listed(whole)} counts whole, for that has no price in the sheet.`]
    : []),
];
