import type { Standing } from '../subject/types.ts';

/** A driver of the shelf: what would be typed beside each label of its datasheet. */
export interface Candidate {
  readonly id: string;
  readonly name: string;
  /** By label, as in `Resonance Fs` -> `38 Hz`. */
  readonly rows: Readonly<Record<string, string>>;
}

/** What the boxes of the bass keep; SI. */
export interface BoxRules {
  /** Of a closed box. */
  readonly qtc: number;
  /** Leakage Q of a vented box. */
  readonly leakage: number;
  /** Net volume and tuning, where they are not to follow the driver. */
  readonly volume?: number;
  readonly tuning?: number;
  /** Area of the ports of each sub, where the air in them counts. */
  readonly port?: number;
  /** So fast the air in a port may be, peak. */
  readonly air: number;
}

/** What ends the level of a sub. */
export type BassLimit = 'travel' | 'heat' | 'port';

/** The two-driver rules; SI. Shares and factors as in the two-driver sheet. */
export interface PairRules extends BoxRules {
  readonly target: number;
  readonly slope: 'LR2' | 'LR4';
  readonly angle: number;
  readonly gap: number;
  readonly makeUp: number;
  readonly comfortable: number;
  /** By the rule, and stretched. */
  readonly resonance: readonly [number, number];
  readonly travel: readonly [number, number];
  readonly narrowing: readonly [number, number];
  readonly breakup: readonly [number, number];
  readonly spacing: readonly [number, number];
}

/** What mains with subs keep besides; SI. The travel, break-up, slope and width that the two-driver rules ask hold for them too. */
export interface SubRules {
  /** 3 dB point of the mains in their closed box over the hand-over, by the rule and stretched. */
  readonly sag: readonly [number, number];
  /** Highest hand-over at which the ear does not tell where the subs stand, by the rule and stretched. */
  readonly location: readonly [number, number];
  /** How much louder than one of the mains the subs must be able to play. */
  readonly above: number;
  /** Where they must still play so, unless the limits say it. */
  readonly lowest: number;
  readonly most: number;
  /** Largest difference of levels for the same volts. */
  readonly match: number;
}

/** The box in which the reach of a first member is counted: closed, or vented as flat as its Qts allows. */
export type BassBox = 'closed' | 'vented';

/** What a row must keep to be listed; SI. */
export interface RowLimits {
  /** Most for the drivers of a pair of cabinets. */
  readonly price?: number;
  /** Highest 3 dB point of the first member in its box. */
  readonly reach?: number;
  /** Least level at 1 m, after make-up, that the heat limit of the first member allows; for mains with subs that of both. */
  readonly plays?: number;
  /** Failures are counted, but not listed. */
  readonly works?: true;
}

export type RowWord = 'Comfortable' | 'Tight' | 'Stretch' | 'Levels apart' | 'No shared window';

/** A pair or a team, judged. */
export interface Row {
  /** Places in the lists of candidates: two for a pair, three for a team. */
  readonly members: readonly number[];
  readonly names: readonly string[];
  readonly status: Standing;
  /** Of the narrower window in a team. */
  readonly word: RowWord;
  /** How many subs it takes; absent for a pair or a team. */
  readonly subs?: number;
  /** What ends their level at the lowest note. */
  readonly end?: BassLimit;
  /** That of the first member, as far as it is known; SI. */
  readonly box: { readonly style: BassBox; readonly volume?: number; readonly tuning?: number };
  /** From low to high; a team has two. */
  readonly windows: readonly {
    readonly low: number;
    readonly high: number;
    readonly octaves: number;
    readonly stretchedOctaves: number;
    readonly floor: string;
    readonly ceiling: string;
  }[];
  /** dB for the second, and third, member; for the subs together over one of the mains. */
  readonly pads: readonly number[];
  /** After make-up; of one of the mains without it. */
  readonly level: number;
  /** Of the members in parallel at worst: a bound from below by their coils. */
  readonly lowestOhms: number;
  /** Of the drivers for a pair of cabinets; NaN where one has no price. */
  readonly price: number;
  readonly resonance: number;
  /** 3 dB point of the first member in its box, NaN where there is no such box; the lowest note of the subs at their level. */
  readonly reach: number;
  /** At 1 m, after make-up, by the heat limit of the first member, NaN where that is not known; also by travel for subs. */
  readonly plays: number;
  /** What the ranking gave. */
  readonly score: number;
  readonly rank: number;
  /** No other row is at least as good in window, level, reach and price, and better in one. */
  readonly isFront: boolean;
  /** Why there is no verdict. */
  readonly problem?: string;
}

export interface ShortlistQuestion {
  /** The candidates for each place, the lowest first: two lists for pairs, three for teams. */
  readonly lists: readonly (readonly Candidate[])[];
  readonly rules: PairRules;
  /** Present where the lists are subs and mains. */
  readonly subs?: SubRules;
  readonly limits?: RowLimits;
  /** Closed for subs and vented for others, where left out. */
  readonly box?: BassBox;
  /** A formula over the names of {@link Row} figures: the larger the better. */
  readonly ranking: string;
  /** So many best rows are given. */
  readonly most: number;
}

export interface Shortlist {
  readonly rows: readonly Row[];
  readonly judged: number;
  /** Set aside because they do not keep the limits, or have one driver in two places. */
  readonly outside: number;
  readonly counts: Readonly<Record<Standing, number>>;
  /** For each member of each list: its best partner's row, or why it has none. */
  readonly partners: readonly (readonly { readonly best?: Row; readonly why?: string }[])[];
  readonly front: readonly Row[];
}
