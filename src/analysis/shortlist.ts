import type { Driver } from '../../functions/values/driver.ts';
import { BestRows, Front } from './best-rows.ts';
import { Breath } from './breathe.ts';
import { driverOfCandidate } from './candidate-driver.ts';
import { ceilingOf, floorOf, spacingCeiling, type Side } from './pair-limits.ts';
import { QuestionError } from './place-error.ts';
import { rankingNames, rankingOf } from './ranking.ts';
import type { Candidate, PairRules, Row, Shortlist, ShortlistQuestion } from './shortlist-types.ts';
import type { Standing, Watch } from './subject-types.ts';

/** A candidate with all that the rules need of it, found out once. */
interface Member {
  readonly place: number;
  readonly name: string;
  readonly flange: number;
  readonly level: number;
  readonly re: number;
  readonly price: number;
  readonly resonance: number;
  /** Without meaning for one that is never the upper, or never the lower, of a pair. */
  readonly floor: Side;
  readonly ceiling: Side;
}

interface List {
  readonly members: readonly Member[];
  /** Why a candidate takes part in no row. */
  readonly why: ReadonlyMap<number, string>;
  readonly size: number;
}

const NO_SIDE: Side = { at: Number.NaN, stretched: Number.NaN, name: '' };
const NO_LIST: List = { members: [], why: new Map(), size: 0 };

/** A team is asked for by a number below the count of teams, so its members are there. */
function memberIn({ members }: List, index: number): Member {
  const member = members[index];
  if (!member) throw new RangeError(`There is no member ${index}.`);
  return member;
}

type Windows = Row['windows'];

/** Pairs judged between two looks at the clock. */
const BATCH = 4096;

/** All pairs, or teams of three, by the two-driver rules. Each window is the one that PAIR.WINDOW gives for the same limits.
 *  @throws An error in words for the reader where the ranking cannot be read. */
export async function shortlist(
  question: ShortlistQuestion,
  watch?: Watch,
  first?: (rows: readonly Row[]) => void,
): Promise<Shortlist> {
  const judge = new Judge(question);
  const breath = new Breath(watch);
  let isTold = first === undefined;
  const of = judge.teams;
  while (judge.judged < of) {
    judge.go(Math.min(of, judge.judged + BATCH));
    if (!isTold) {
      first?.(judge.best());
      isTold = true;
    }
    if (breath.isDue) await breath.take({ done: judge.judged, of });
    else breath.check();
  }
  return judge.result();
}

class Judge {
  readonly #rules: PairRules;
  readonly #lists: readonly List[];
  readonly #rank: (figures: Float64Array) => number;
  readonly #figures = new Float64Array(rankingNames.length);
  readonly #best: BestRows;
  readonly #front = new Front();
  readonly #counts: Record<Standing, number> = { good: 0, caution: 0, fail: 0, problem: 0 };
  /** The best team of each candidate that takes part and comes out no failure, by list. */
  readonly #partner: readonly { readonly score: Float64Array; readonly id: Float64Array }[];
  readonly #partnersFromLast: readonly { readonly score: Float64Array; readonly id: Float64Array }[];
  judged = 0;

  constructor(question: ShortlistQuestion) {
    const { woofers, mids, tweeters, rules, most } = question;
    if (!Number.isInteger(most) || most < 1) throw new QuestionError('At least one row must be asked for.');
    this.#rules = rules;
    this.#rank = rankingOf(question.ranking);
    this.#best = new BestRows(most);
    const given = mids ? [woofers, mids, tweeters] : [woofers, tweeters];
    this.#lists = given.map((list, index) => listOf(list, rules, index > 0, index < given.length - 1));
    this.#partner = this.#lists.map(({ members }) => ({
      score: new Float64Array(members.length).fill(Number.NaN),
      id: new Float64Array(members.length).fill(-1),
    }));
    this.#partnersFromLast = this.#partner.toReversed();
  }

  get teams(): number {
    return this.#lists.reduce((product, { members }) => product * members.length, 1);
  }

  /** Judges up to a number of the teams. */
  go(until: number): void {
    const figures = this.#figures;
    for (let id = this.judged; id < until; id++) {
      const [low, high, third] = this.#team(id);
      let octaves = this.#octaves(low, high, false);
      let stretched = this.#octaves(low, high, true);
      if (third) {
        octaves = Math.min(octaves, this.#octaves(high, third, false));
        stretched = Math.min(stretched, this.#octaves(high, third, true));
      }
      const standing = standingOf(octaves, stretched, this.#rules.comfortable);
      this.#counts[standing]++;
      const level = low.level - this.#rules.makeUp;
      const price = third ? low.price + high.price + third.price : low.price + high.price;
      figures[0] = octaves;
      figures[1] = level;
      figures[2] = Math.max(high.level, third?.level ?? -Infinity) - level;
      figures[3] = price;
      figures[4] = 1 / (1 / low.re + 1 / high.re + (third ? 1 / third.re : 0));
      figures[5] = low.resonance;
      figures[6] = stretched;
      const score = this.#rank(figures);
      this.#best.offer(score, id);
      if (standing === 'fail') continue;
      // What has no price is beaten by whatever has one.
      this.#front.offer(id, octaves, level, -low.resonance, Number.isNaN(price) ? -Infinity : -price);
      this.#notePartners(id, score);
    }
    this.judged = until;
  }

  #notePartners(id: number, score: number): void {
    let rest = id;
    for (const { score: scores, id: ids } of this.#partnersFromLast) {
      const index = rest % ids.length;
      rest = Math.floor(rest / ids.length);
      if (ids[index] !== -1 && !(score > (scores[index] ?? Number.NaN))) continue;
      scores[index] = score;
      ids[index] = id;
    }
  }

  #team(id: number): readonly [Member, Member, Member?] {
    const [first = NO_LIST, second = NO_LIST, third] = this.#lists;
    const pair = third ? Math.floor(id / third.members.length) : id;
    const size = second.members.length;
    const [low, high] = [memberIn(first, Math.floor(pair / size)), memberIn(second, pair % size)];
    return third ? [low, high, memberIn(third, id % third.members.length)] : [low, high];
  }

  #octaves(lower: Member, upper: Member, isStretched: boolean): number {
    const { gap, spacing } = this.#rules;
    const apart = spacingCeiling(lower.flange + upper.flange, gap, spacing[isStretched ? 1 : 0]);
    const ceiling = isStretched ? lower.ceiling.stretched : lower.ceiling.at;
    const floor = isStretched ? upper.floor.stretched : upper.floor.at;
    return Math.log2(Math.min(ceiling, apart)) - Math.log2(floor);
  }

  #windows(team: readonly Member[]): Windows {
    return team.slice(1).map((upper, index) => {
      const lower = team[index] ?? upper;
      const apart = spacingCeiling(lower.flange + upper.flange, this.#rules.gap, this.#rules.spacing[0]);
      const isApart = apart < lower.ceiling.at;
      return {
        low: upper.floor.at,
        high: isApart ? apart : lower.ceiling.at,
        octaves: this.#octaves(lower, upper, false),
        stretchedOctaves: this.#octaves(lower, upper, true),
        floor: upper.floor.name,
        ceiling: isApart ? 'spacing' : lower.ceiling.name,
      };
    });
  }

  #row(id: number, rank: number, front: ReadonlySet<number>): Row {
    const [first, ...others] = this.#team(id);
    const team = [first, ...others.filter((each) => each !== undefined)];
    const windows = this.#windows(team);
    const octaves = Math.min(...windows.map((each) => each.octaves));
    const stretched = Math.min(...windows.map((each) => each.stretchedOctaves));
    const level = first.level - this.#rules.makeUp;
    return {
      members: team.map(({ place }) => place),
      names: team.map(({ name }) => name),
      status: standingOf(octaves, stretched, this.#rules.comfortable),
      word: wordOf(octaves, stretched, this.#rules.comfortable),
      windows,
      pads: team.slice(1).map((member) => member.level - level),
      level,
      lowestOhms: 1 / team.reduce((sum, { re }) => sum + 1 / re, 0),
      price: team.reduce((sum, { price }) => sum + price, 0),
      resonance: first.resonance,
      rank,
      isFront: front.has(id),
    };
  }

  best(): Row[] {
    const front = new Set(this.#front.ids);
    return this.#best.sorted().map(({ id }, index) => this.#row(id, index + 1, front));
  }

  result(): Shortlist {
    const ids = this.#front.ids.sort((a, b) => a - b);
    const front = new Set(ids);
    const ranks = new Map(this.#best.sorted().map(({ id }, index) => [id, index + 1]));
    const row = (id: number): Row => this.#row(id, ranks.get(id) ?? 0, front);
    const rows = this.best();
    const partners = this.#lists.map(({ members, why, size }, list) => {
      const indexes = new Map(members.map(({ place }, index) => [place, index]));
      return Array.from({ length: size }, (_, place) => {
        const id = this.#partner[list]?.id[indexes.get(place) ?? -1] ?? -1;
        return id >= 0 ? { best: row(id) } : { why: why.get(place) ?? noPartner(list, this.#lists.length) };
      });
    });
    const problems = this.#lists.reduce((product, { size }) => product * size, 1) - this.judged;
    return { rows, judged: this.judged, counts: { ...this.#counts, problem: problems }, partners, front: ids.map(row) };
  }
}

const noPartner = (list: number, lists: number): string =>
  lists > 2
    ? 'No team with it leaves two windows, even with every rule stretched.'
    : `No ${list === 0 ? 'driver above it begins low enough' : 'driver below it reaches high enough'}, even with every rule stretched.`;

function listOf(candidates: readonly Candidate[], rules: PairRules, isUpper: boolean, isLower: boolean): List {
  const members: Member[] = [];
  const why = new Map<number, string>();
  for (const [place, candidate] of candidates.entries()) {
    const driver = driverOfCandidate(candidate);
    const member = 'why' in driver ? driver : memberOf(driver, place, rules, isUpper, isLower);
    if ('why' in member) why.set(place, member.why);
    else members.push(member);
  }
  return { members, why, size: candidates.length };
}

function memberOf(
  driver: Driver,
  place: number,
  rules: PairRules,
  isUpper: boolean,
  isLower: boolean,
): Member | { readonly why: string } {
  const { name, level, re, fs, flange, price } = driver;
  const floor = isUpper ? floorOf(driver, rules) : NO_SIDE;
  const ceiling = isLower ? ceilingOf(driver, rules) : NO_SIDE;
  if ('why' in floor) return floor;
  if ('why' in ceiling) return ceiling;
  if (level === undefined || re === undefined || fs === undefined || flange === undefined)
    return {
      why: `${name} has no ${level === undefined ? 'level' : re === undefined ? 'Re' : 'Fs'}: add it to its rows.`,
    };
  // Without a price a ranking by price has no number, and the row comes last.
  return { place, name, flange, level, re, price: price ?? Number.NaN, resonance: fs, floor, ceiling };
}

const standingOf = (octaves: number, stretched: number, comfortable: number): Standing =>
  octaves >= comfortable && octaves >= 0 ? 'good' : octaves >= 0 || stretched >= 0 ? 'caution' : 'fail';

const wordOf = (octaves: number, stretched: number, comfortable: number): string =>
  octaves >= comfortable && octaves >= 0
    ? 'Comfortable'
    : octaves >= 0
      ? 'Tight'
      : stretched >= 0
        ? 'Stretch'
        : 'No shared band';
