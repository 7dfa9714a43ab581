import type { DriverEntry } from '../../document/shelf/entry.ts';
import type { OctavoDocument } from '../../document/types.ts';
import type { Place, Writing } from '../../engine/types.ts';
import type { Varied } from '../combine/types.ts';
import type { Result, Standing } from '../subject/types.ts';

/** An input and the values that it may be set to. */
export interface PricedSetting extends Varied {
  /** What one costs: a formula of `value`, the number that is typed in its cell, such as `4 + 0.9 * value`. Nothing where left out. */
  readonly price?: string;
}

export interface CheapestQuestion {
  readonly document: OctavoDocument;
  /** Drivers that may be bought. */
  readonly shelf: readonly DriverEntry[];
  /** The names of the drivers of the sheet that may be changed for one of the shelf. */
  readonly drivers: readonly string[];
  /** Inputs that may be set to these values; for a part those of a shop. */
  readonly settings: readonly PricedSetting[];
  /** What is least: what a pair of cabinets costs more than as the sheet stands, the number of changes, or a number of the sheet itself, such as the total of its basket. Fewer changes decide between equals, and money between equal numbers of them. */
  readonly cost: 'money' | 'changes' | Place;
  /** Most changes at once. */
  readonly changes: number;
  /** Whether a caution is enough for what fails now. */
  readonly orCaution?: true;
}

/** One thing done to the sheet. */
export interface Change {
  /** `Woofer: W-165 A in place of W-130 A`, `Gap: 10 mm in place of 4 mm`. */
  readonly words: string;
  readonly texts: readonly Writing[];
  /** What a pair of cabinets costs more with it, less where negative. */
  readonly money: number;
}

/** A verdict before and after a step. */
export interface Flip {
  readonly verdict: Result;
  readonly from: Standing;
  readonly to: Standing;
  /** What it says afterwards. */
  readonly reason: string;
}

/** A change with what it turned. */
export interface CheapestStep {
  readonly change: Change;
  readonly flips: readonly Flip[];
}

export interface Cheapest {
  /** The verdicts that fail as the sheet stands. */
  readonly failing: readonly Result[];
  /** The least that turns them all and makes no other verdict worse. */
  readonly found?: {
    readonly steps: readonly CheapestStep[];
    readonly money: number;
    readonly changes: number;
    /** The number of the sheet that was to be least, where one was. */
    readonly counted?: number;
  };
  /** The number of the sheet that is to be least, as it stands. */
  readonly counting?: Result;
  /** Of all looked at, the one that leaves the fewest failures, where none turns all. */
  readonly nearest?: { readonly changes: readonly Change[]; readonly left: readonly Result[] };
  /** What has no price, so that it was counted as 0, and drivers of the sheet whose successors were counted whole for that. */
  readonly unpriced: readonly string[];
  readonly whole: readonly string[];
  /** Single changes that could be made, sets of them within the limit, and how many sets were computed. */
  readonly choices: number;
  readonly of: number;
  readonly looked: number;
  /** Whether every set of changes that costs less than what was found, or every set, was computed. */
  readonly isWhole: boolean;
  /** The same in words. */
  readonly said: string;
}
