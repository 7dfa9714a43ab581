import { BestRows, Front } from '../best-rows.ts';
import { Breath } from '../breathe.ts';
import { spacingCeiling } from './pair-limits.ts';
import { QuestionError } from '../subject/place-error.ts';
import { rankingNames, rankingOf } from './ranking.ts';
import { standingOf, wordApart, wordOf } from './row-word.ts';
import { listsOf, NO_LIST, type List, type Member } from './members.ts';
import type { PairRules, Row, RowWord, Shortlist, ShortlistQuestion, SubRules } from './types.ts';
import type { Standing, Watch } from '../subject/types.ts';

/** A team is asked for by a number below the count of teams, so its members are there. */
function memberIn({ members }: List, index: number): Member {
  const member = members[index];
  if (!member) throw new RangeError(`There is no member ${index}.`);
  return member;
}

type Windows = Row['windows'];

/** Pairs judged between two looks at the clock. */
const BATCH = 4096;
/** Candidates of a list that are looked at before all the others. */
const FEW = 24;

/** All pairs, or teams of three, by the two-driver rules. Each window is the one that PAIR.WINDOW gives for the same limits.
 *  @throws An error in words for the reader where the ranking cannot be read. */
export async function shortlist(
  question: ShortlistQuestion,
  watch?: Watch,
  first?: (rows: readonly Row[]) => void,
): Promise<Shortlist> {
  const breath = new Breath(watch);
  first?.(taste(question));
  await breath.take();
  const judge = new Judge(question);
  const of = judge.teams;
  while (judge.judged < of) {
    judge.go(Math.min(of, judge.judged + BATCH));
    if (breath.isDue) await breath.take({ done: judge.judged, of });
    else breath.check();
  }
  return judge.result();
}

/** The best rows of the first few candidates of each list, to be seen while all are looked at. */
function taste(question: ShortlistQuestion): Row[] {
  const few = question.lists.length > 2 ? FEW / 2 : FEW;
  const judge = new Judge({ ...question, lists: question.lists.map((list) => list.slice(0, few)) });
  judge.go(judge.teams);
  return judge.best();
}

class Judge {
  readonly #rules: PairRules;
  readonly #subs: SubRules | undefined;
  /** Subs stand apart from the mains. */
  readonly #spacing: readonly [number, number];
  readonly #lists: readonly List[];
  readonly #rank: (figures: Float64Array) => number;
  readonly #figures = new Float64Array(rankingNames.length);
  readonly #best: BestRows;
  readonly #front = new Front();
  readonly #counts: Record<Standing, number> = { good: 0, caution: 0, fail: 0, problem: 0 };
  /** The best team of each candidate that takes part and comes out no failure, by list. */
  readonly #partner: readonly { readonly score: Float64Array; readonly id: Float64Array }[];
  readonly #partnersFromLast: readonly { readonly score: Float64Array; readonly id: Float64Array }[];
  /** Most for the drivers of a pair of cabinets. */
  readonly #dearest: number;
  readonly #worksOnly: boolean;
  /** Whether some team of a candidate costs no more than that, by list. */
  readonly #isAffordable: readonly Uint8Array[];
  #outside = 0;
  judged = 0;

  constructor(question: ShortlistQuestion) {
    const { rules, most, limits } = question;
    if (!Number.isInteger(most) || most < 1) throw new QuestionError('At least one row must be asked for.');
    this.#rules = rules;
    this.#subs = question.subs;
    this.#spacing = question.subs ? [Infinity, Infinity] : rules.spacing;
    this.#rank = rankingOf(question.ranking);
    this.#best = new BestRows(most);
    this.#dearest = limits?.price ?? Infinity;
    this.#worksOnly = limits?.works === true;
    this.#lists = listsOf(question);
    this.#isAffordable = this.#lists.map(({ members }) => new Uint8Array(members.length));
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
      const score = this.#measure(low, high, third);
      // By index: taking the array apart is slow.
      const price = figures[3] ?? Number.NaN;
      if (price > this.#dearest) {
        this.#outside++;
        continue;
      }
      if (this.#dearest < Infinity) this.#noteAffordable(id);
      // One driver in two places is no team.
      if (low.id === high.id || high.id === third?.id) {
        this.#outside++;
        continue;
      }
      const octaves = figures[0] ?? Number.NaN;
      const standing = standingOf[this.#word(octaves, figures[6] ?? Number.NaN, figures[2] ?? Number.NaN)];
      this.#counts[standing]++;
      if (standing !== 'fail' || !this.#worksOnly) this.#best.offer(score, id);
      if (standing === 'fail') continue;
      this.#front.offer(id, octaves, figures[1] ?? Number.NaN, orLast(-low.reach), orLast(-price));
      this.#notePartners(id, score);
    }
    this.judged = until;
  }

  /** Works out what can be ranked, and ranks it. */
  #measure(low: Member, high: Member, third?: Member): number {
    const figures = this.#figures;
    let octaves = this.#octaves(low, high, false);
    let stretched = this.#octaves(low, high, true);
    if (third) {
      octaves = Math.min(octaves, this.#octaves(high, third, false));
      stretched = Math.min(stretched, this.#octaves(high, third, true));
    }
    const level = this.#subs ? high.level : low.level - this.#rules.makeUp;
    figures[0] = octaves;
    figures[1] = level;
    figures[2] = this.#subs ? low.together - level : Math.max(high.level, third?.level ?? -Infinity) - level;
    figures[3] = low.count * low.price + high.count * high.price + (third ? third.count * third.price : 0);
    // Subs have amplifiers of their own.
    figures[4] = this.#subs ? Math.min(low.re, high.re) : 1 / (1 / low.re + 1 / high.re + (third ? 1 / third.re : 0));
    figures[5] = low.resonance;
    figures[6] = stretched;
    figures[7] = low.reach;
    figures[8] = Math.min(low.plays, high.plays);
    return this.#rank(figures);
  }

  #word(octaves: number, stretched: number, pad: number): RowWord {
    const word = wordOf(octaves, stretched, this.#rules.comfortable);
    return this.#subs && Math.abs(pad) > this.#subs.match ? wordApart(word) : word;
  }

  #noteAffordable(id: number): void {
    let rest = id;
    for (const marks of this.#isAffordable.toReversed()) {
      marks[rest % marks.length] = 1;
      rest = Math.floor(rest / marks.length);
    }
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
    const apart = spacingCeiling(lower.flange + upper.flange, this.#rules.gap, this.#spacing[isStretched ? 1 : 0]);
    const ceiling = isStretched ? lower.ceiling.stretched : lower.ceiling.at;
    const floor = isStretched ? upper.floor.stretched : upper.floor.at;
    return Math.log2(Math.min(ceiling, apart)) - Math.log2(floor);
  }

  #windows(team: readonly Member[]): Windows {
    return team.slice(1).map((upper, index) => {
      const lower = team[index] ?? upper;
      const apart = spacingCeiling(lower.flange + upper.flange, this.#rules.gap, this.#spacing[0]);
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
    const [first, second, third] = this.#team(id);
    const score = this.#measure(first, second, third);
    const [
      octaves = 0,
      level = 0,
      pad = 0,
      price = 0,
      lowestOhms = 0,
      resonance = 0,
      stretched = 0,
      reach = 0,
      plays = 0,
    ] = this.#figures;
    const team = third ? [first, second, third] : [first, second];
    const word = this.#word(octaves, stretched, pad);
    return {
      members: team.map(({ place }) => place),
      names: team.map(({ name }) => name),
      status: standingOf[word],
      word,
      ...(this.#subs && { subs: first.count }),
      ...(first.end && { end: first.end }),
      box: first.box,
      windows: this.#windows(team),
      pads: this.#subs ? [pad] : team.slice(1).map((member) => member.level - level),
      level,
      lowestOhms,
      price,
      resonance,
      reach,
      plays,
      score,
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
    const partners = this.#lists.map(({ members, why, size }, list) => {
      const indexes = new Map(members.map(({ place }, index) => [place, index]));
      return Array.from({ length: size }, (_, place) => {
        const index = indexes.get(place) ?? -1;
        const id = this.#partner[list]?.id[index] ?? -1;
        return id >= 0 ? { best: row(id) } : { why: why.get(place) ?? this.#noPartner(list, index) };
      });
    });
    const product = (of: (list: List) => number): number => this.#lists.reduce((all, list) => all * of(list), 1);
    const judgeable = product(({ members, aside }) => members.length + aside);
    const outside = judgeable - this.judged + this.#outside;
    return {
      rows: this.best(),
      judged: this.judged - this.#outside,
      outside,
      counts: { ...this.#counts, problem: product(({ size }) => size) - judgeable },
      partners,
      front: ids.map(row),
    };
  }

  #noPartner(list: number, index: number): string {
    if (this.teams === 0) return NOBODY;
    if (this.#dearest < Infinity && this.#isAffordable[list]?.[index] === 0) return TOO_DEAR;
    if (this.#lists.length > 2) return 'No team with it leaves two windows, even with every rule stretched.';
    return `No ${list === 0 ? 'driver above it begins low enough' : 'driver below it reaches high enough'}, even with every rule stretched.`;
  }
}

/** Why a candidate has no partner where its windows were not even looked at. */
export const NOBODY = 'No driver is left to go with it.';
export const TOO_DEAR = 'Every choice with it costs more than the limit.';

/** What is not known is beaten by whatever is. */
export const orLast = (value: number): number => (Number.isNaN(value) ? -Infinity : value);
