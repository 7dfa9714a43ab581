import type { CellValue, Writing } from '../engine/types.ts';
import { Breath } from './breathe.ts';
import { alternativesOf, type Alternatives } from './cheapest-changes.ts';
import type { Change, Cheapest, CheapestQuestion, CheapestStep } from './cheapest-types.ts';
import { QuestionError } from './place-error.ts';
import type { SheetModel } from './sheet-model.ts';
import { standingOf, standings, type Result, type Standing, type Watch } from './subject-types.ts';
import { listed, resultWords } from './words.ts';

/** So many sets of changes are put in order, and so many of the cheapest are computed. */
const MOST_SETS = 2_000_000;
const MOST_LOOKS = 20_000;

type Standings = readonly Standing[];

/** Finds the least that turns every failing verdict and makes none worse: all sets of changes within the limit, the cheapest
 *  first, each computed by the sheet itself, so that the first that serves is the least.
 *  @throws An error in words for the reader where something named is not in the sheet, or there are too many sets. */
export async function cheapest(model: SheetModel, question: CheapestQuestion, watch?: Watch): Promise<Cheapest> {
  if (!Number.isInteger(question.changes) || question.changes < 1 || question.changes > 4)
    throw new QuestionError(`From one to four changes at once can be looked for, but ${question.changes} are asked.`);
  const verdicts = model.verdicts;
  const before = verdicts.map(({ present }) => standingOf(present));
  const failing = verdicts.filter((_, index) => isBroken(before[index]));
  const alternatives = alternativesOf(model, question);
  const choices = alternatives.reduce((sum, { length }) => sum + length, 0);
  if (failing.length === 0)
    return { failing, choices, of: 0, looked: 0, isWhole: true, said: 'Nothing fails as the sheet stands.' };
  const sets = setsOf(alternatives, question.changes);
  if (sets.length > MOST_SETS)
    throw new QuestionError(`There are more than ${MOST_SETS} sets of changes: allow fewer at once, or fewer values.`);
  const inOrder = sets.map((set) => ({ set, money: moneyOf(set) })).sort(cheaperBy(question.cost));

  const breath = new Breath(watch);
  const serves = (after: Standings): boolean =>
    after.every((standing, index) => isTurned(before[index], standing, question.orCaution === true));
  let nearest: { readonly set: readonly Change[]; readonly left: readonly Result[] } | undefined;
  let looked = 0;
  for (const { set, money } of inOrder.slice(0, MOST_LOOKS)) {
    await breath.take({ done: looked, of: Math.min(MOST_LOOKS, inOrder.length) });
    const after = await standingsAfter(model, set, verdicts);
    looked++;
    if (serves(after)) {
      const steps = await stepsOf(model, set, verdicts, before);
      const said = `Found: ${listed(set.map(({ words }) => words))}. ${searched(choices, looked, inOrder.length, question, true)}`;
      return {
        failing,
        found: { steps, money, changes: set.length },
        choices,
        of: inOrder.length,
        looked,
        isWhole: true,
        said,
      };
    }
    const left = verdicts.filter((_, index) => isBroken(after[index]));
    const isWorse = after.some((standing, index) => rankOf(standing) > rankOf(before[index]));
    if (!isWorse && (!nearest || left.length < nearest.left.length)) nearest = { set, left };
  }
  const isWhole = inOrder.length <= MOST_LOOKS;
  return {
    failing,
    ...(nearest && { nearest: { changes: nearest.set, left: nearest.left } }),
    choices,
    of: inOrder.length,
    looked,
    isWhole,
    said: `Not found. ${searched(choices, looked, inOrder.length, question, false)}`,
  };
}

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
  (cost: CheapestQuestion['cost']) =>
  (a: Priced, b: Priced): number =>
    cost === 'money'
      ? a.money - b.money || a.set.length - b.set.length
      : a.set.length - b.set.length || a.money - b.money;

/** Every set of up to so many changes, none to the same thing twice. */
function setsOf(alternatives: readonly Alternatives[], most: number): (readonly Change[])[] {
  const sets: (readonly Change[])[] = [];
  const extend = (set: readonly Change[], from: number): void => {
    if (set.length > 0) sets.push(set);
    if (set.length === most || sets.length > MOST_SETS) return;
    for (let index = from; index < alternatives.length; index++)
      for (const change of alternatives[index] ?? []) extend([...set, change], index + 1);
  };
  extend([], 0);
  return sets;
}

const textsOf = (set: readonly Change[]): Writing[] => set.flatMap(({ texts }) => texts);

async function valuesAfter(
  model: SheetModel,
  set: readonly Change[],
  verdicts: readonly Result[],
): Promise<CellValue[]> {
  return model.read(textsOf(set), verdicts);
}

async function standingsAfter(
  model: SheetModel,
  set: readonly Change[],
  verdicts: readonly Result[],
): Promise<Standing[]> {
  return (await valuesAfter(model, set, verdicts)).map(standingOf);
}

/** One change after the other, with the verdicts that each turns. */
async function stepsOf(
  model: SheetModel,
  set: readonly Change[],
  verdicts: readonly Result[],
  before: Standings,
): Promise<CheapestStep[]> {
  const steps: CheapestStep[] = [];
  let present = before;
  for (const [index, change] of set.entries()) {
    const values = await valuesAfter(model, set.slice(0, index + 1), verdicts);
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
function searched(
  choices: number,
  looked: number,
  of: number,
  { cost, changes }: CheapestQuestion,
  isFound: boolean,
): string {
  const by = cost === 'money' ? 'money' : 'number of changes';
  const space = `${of} sets of up to ${changes} ${changes === 1 ? 'change' : 'changes'} out of ${choices}`;
  if (isFound)
    return `${looked} of ${space} were computed, the least ${by} first: within these nothing costs less. Drivers are counted for a pair of cabinets; parts and settings are not priced.`;
  return looked < of
    ? `The ${looked} of least ${by} among ${space} were computed; the dearer ones were not.`
    : `All ${space} were computed.`;
}
