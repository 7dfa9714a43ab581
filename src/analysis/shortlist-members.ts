import type { Driver } from '../../functions/values/driver.ts';
import { show } from '../units/show.ts';
import { driverOfCandidate } from './candidate-driver.ts';
import { ceilingOf, floorOf, type Side } from './pair-limits.ts';
import { heatLevelOf, reachOf } from './reach.ts';
import type { Candidate, ShortlistQuestion } from './shortlist-types.ts';

/** A candidate with all that the rules need of it, found out once. */
export interface Member {
  readonly place: number;
  readonly id: string;
  readonly name: string;
  readonly flange: number;
  readonly level: number;
  readonly re: number;
  /** NaN without one. */
  readonly price: number;
  readonly resonance: number;
  /** Of a first member only; NaN where there is none. */
  readonly reach: number;
  readonly plays: number;
  /** Without meaning for one that is never the upper, or never the lower, of a pair. */
  readonly floor: Side;
  readonly ceiling: Side;
}

export interface List {
  readonly members: readonly Member[];
  /** Why a candidate takes part in no row. */
  readonly why: ReadonlyMap<number, string>;
  /** How many of those could be judged, but do not keep the limits. */
  readonly aside: number;
  readonly size: number;
}

export const NO_LIST: List = { members: [], why: new Map(), aside: 0, size: 0 };

const NO_SIDE: Side = { at: Number.NaN, stretched: Number.NaN, name: '' };

interface Refusal {
  readonly why: string;
  readonly isAside?: true;
}

/** The candidates of each list that can take part, and why the others cannot. */
export function listsOf(question: ShortlistQuestion): List[] {
  const { woofers, mids, tweeters } = question;
  const given = mids ? [woofers, mids, tweeters] : [woofers, tweeters];
  return given.map((list, index) => listOf(list, question, index > 0, index < given.length - 1));
}

function listOf(candidates: readonly Candidate[], question: ShortlistQuestion, isUpper: boolean, isLower: boolean) {
  const members: Member[] = [];
  const why = new Map<number, string>();
  let aside = 0;
  for (const [place, candidate] of candidates.entries()) {
    const driver = driverOfCandidate(candidate);
    const member = 'why' in driver ? driver : memberOf(driver, candidate.id, place, question, isUpper, isLower);
    if ('floor' in member) members.push(member);
    else {
      why.set(place, member.why);
      if ('isAside' in member) aside++;
    }
  }
  return { members, why, aside, size: candidates.length } satisfies List;
}

function memberOf(
  driver: Driver,
  id: string,
  place: number,
  question: ShortlistQuestion,
  isUpper: boolean,
  isLower: boolean,
): Member | Refusal {
  const { rules, limits = {} } = question;
  const { name, level, re, fs, flange, price } = driver;
  const floor = isUpper ? floorOf(driver, rules) : NO_SIDE;
  const ceiling = isLower ? ceilingOf(driver, rules) : NO_SIDE;
  if ('why' in floor) return floor;
  if ('why' in ceiling) return ceiling;
  if (level === undefined || re === undefined || fs === undefined || flange === undefined)
    return lacking(name, level === undefined ? 'level' : re === undefined ? 'Re' : 'Fs');
  if (price === undefined && limits.price !== undefined) return lacking(name, 'price');
  const first = isUpper ? NO_FIRST : firstFigures(driver, question);
  if ('why' in first) return first;
  // Without a price a ranking by price has no number, and the row comes last.
  return { place, id, name, flange, level, re, price: price ?? Number.NaN, resonance: fs, ...first, floor, ceiling };
}

const lacking = (name: string, what: string): Refusal => ({ why: `${name} has no ${what}: add it to its rows.` });

const NO_FIRST = { reach: Number.NaN, plays: Number.NaN };

/** How low and how loud the lowest of a row goes, or which limit it does not keep. */
function firstFigures(
  driver: Driver,
  { rules, limits = {}, box = 'vented' }: ShortlistQuestion,
): { readonly reach: number; readonly plays: number } | Refusal {
  const reach = reachOf(driver, box);
  const heat = heatLevelOf(driver);
  const plays = typeof heat === 'number' ? heat - rules.makeUp : heat;
  const { name } = driver;
  if (limits.reach !== undefined) {
    if (typeof reach !== 'number') return { ...reach, isAside: true };
    if (reach > limits.reach)
      return {
        why: `${name} reaches ${hertz(reach)} in a ${box} box, not ${hertz(limits.reach)}.`,
        isAside: true,
      };
  }
  if (limits.plays !== undefined) {
    if (typeof plays !== 'number') return plays;
    if (plays < limits.plays)
      return {
        why: `${name} plays ${decibels(plays)} before it is too hot, not ${decibels(limits.plays)}.`,
        isAside: true,
      };
  }
  return { reach: numberOr(reach), plays: numberOr(plays) };
}

const numberOr = (value: number | Refusal): number => (typeof value === 'number' ? value : Number.NaN);

const spoken = (value: number, quantity: 'frequency' | 'level'): string => {
  const { number, unit } = show(value, { quantity, system: 'metric' });
  return `${number} ${unit}`;
};
const hertz = (value: number): string => spoken(value, 'frequency');
const decibels = (value: number): string => spoken(value, 'level');
