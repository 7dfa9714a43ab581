import type { Driver } from '../../../functions/values/driver.ts';
import { show } from '../../units/show.ts';
import { driverOfCandidate } from './candidate-driver.ts';
import { ceilingOf, floorOf, lacks, mainsFloor, subCeiling, type Side } from './pair-limits.ts';
import { bassOf, heatLevelOf, type Bass } from './reach.ts';
import type { BassLimit, Candidate, Row, ShortlistQuestion } from './types.ts';
import { subFigures } from './sub-figures.ts';
import { boxOf } from './usual-rules.ts';

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
  /** So many are bought. */
  readonly count: number;
  readonly resonance: number;
  /** Of a first member only; NaN where there is none. */
  readonly reach: number;
  /** Of one that does not count, infinity. */
  readonly plays: number;
  /** For 2.83 V, of all that play together in one place. */
  readonly together: number;
  readonly box: Row['box'];
  /** What ends the level of a sub. */
  readonly end?: BassLimit;
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
  const last = question.lists.length - 1;
  return question.lists.map((list, index) => listOf(list, question, index > 0, index < last));
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
  const { rules, subs, limits = {} } = question;
  const { name, level, re, fs, price } = driver;
  const floor = isUpper ? (subs ? mainsFloor(driver, rules, subs) : floorOf(driver, rules)) : NO_SIDE;
  const ceiling = isLower ? (subs ? subCeiling(driver, rules, subs) : ceilingOf(driver, rules)) : NO_SIDE;
  if ('why' in floor) return floor;
  if ('why' in ceiling) return ceiling;
  if (level === undefined || re === undefined || fs === undefined) return { why: lacks(driver, ['level', 're', 'fs']) };
  if (price === undefined && limits.price !== undefined) return { why: lacks(driver, ['price']) };
  const figures = (subs ? figuresBesideSubs : isUpper ? noFigures : firstFigures)(driver, question, isLower);
  if ('why' in figures) return figures;
  return {
    place,
    id,
    name,
    // Only the spacing asks for it, whose limits do not judge one without.
    flange: driver.flange ?? 0,
    level,
    re,
    // Without a price a ranking by price has no number, and the row comes last.
    price: price ?? Number.NaN,
    resonance: fs,
    floor,
    ceiling,
    ...figures,
  };
}

type Figures = Pick<Member, 'count' | 'reach' | 'plays' | 'together' | 'box' | 'end'>;

const noFigures = ({ level = Number.NaN }: Driver, question: ShortlistQuestion): Figures => ({
  count: 2,
  reach: Number.NaN,
  plays: Infinity,
  together: level,
  box: { style: boxOf(question) },
});

const boxWith = (question: ShortlistQuestion, { volume, tuning }: Bass): Row['box'] => ({
  style: boxOf(question),
  ...(volume !== undefined && { volume }),
  ...(tuning !== undefined && { tuning }),
});

/** How low and how loud the lowest of a row goes, or which limit it does not keep. */
function firstFigures(driver: Driver, question: ShortlistQuestion): Figures | Refusal {
  const { rules, limits = {} } = question;
  const box = boxOf(question);
  const bass = bassOf(driver, box, rules);
  const heat = heatLevelOf(driver);
  const plays = typeof heat === 'number' ? heat - rules.makeUp : heat;
  if (limits.reach !== undefined) {
    if ('why' in bass) return { ...bass, isAside: true };
    if (bass.cutoff > limits.reach)
      return {
        why: `${driver.name} reaches ${hertz(bass.cutoff)} in a ${box} box, not ${hertz(limits.reach)}.`,
        isAside: true,
      };
  }
  return (
    tooHot(driver, plays, limits.plays) ?? {
      ...noFigures(driver, question),
      ...('cutoff' in bass && { reach: bass.cutoff, box: boxWith(question, bass) }),
      plays: numberOr(plays),
    }
  );
}

function tooHot({ name }: Driver, plays: number | Refusal, least: number | undefined): Refusal | undefined {
  if (least === undefined) return undefined;
  if (typeof plays !== 'number') return plays;
  if (plays >= least) return undefined;
  return { why: `${name} plays ${decibels(plays)} before it is too hot, not ${decibels(least)}.`, isAside: true };
}

/** Those of subs, as many as are needed, or of mains. */
function figuresBesideSubs(driver: Driver, question: ShortlistQuestion, isSub: boolean): Figures | Refusal {
  const { rules, subs, limits = {} } = question;
  if (!isSub || !subs) {
    const plays = heatLevelOf(driver);
    return tooHot(driver, plays, limits.plays) ?? { ...noFigures(driver, question), plays: numberOr(plays) };
  }
  const note = limits.reach ?? subs.lowest;
  const wanted = rules.target + subs.above;
  const band = { level: wanted, lowest: note, highest: subs.location[0] };
  const found = subFigures(driver, band, boxOf(question), rules);
  if ('why' in found) return found;
  const { count, reach, end, most, level: together, bass } = found;
  if (count > subs.most)
    return {
      why: `It takes ${count} of ${driver.name} to play ${decibels(wanted)} at ${hertz(note)}, not ${subs.most}.`,
      isAside: true,
    };
  return { count, reach, end, plays: most - subs.above, together, box: boxWith(question, bass) };
}

const numberOr = (value: number | Refusal): number => (typeof value === 'number' ? value : Number.NaN);

const spoken = (value: number, quantity: 'frequency' | 'level'): string => {
  const { number, unit } = show(value, { quantity, system: 'metric' });
  return `${number} ${unit}`;
};
const hertz = (value: number): string => spoken(value, 'frequency');
const decibels = (value: number): string => spoken(value, 'level');
