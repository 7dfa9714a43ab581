import type { DriverEntry } from '../document/shelf/entry.ts';
import type { OctavoDocument } from '../document/types.ts';
import type { Place, Writing } from '../engine/types.ts';
import type { Series } from '../../functions/electrical/preferred.ts';
import type { Result, Setting, Standing } from './subject-types.ts';

export interface CheapestQuestion {
  readonly document: OctavoDocument;
  /** Drivers that may be bought. */
  readonly shelf: readonly DriverEntry[];
  /** The names of the drivers of the sheet that may be changed for one of the shelf. */
  readonly drivers: readonly string[];
  /** Inputs that take values of a shop series, within their plausible ranges. */
  readonly parts: readonly Place[];
  readonly series: Series;
  /** Inputs that may be set to these values. */
  readonly settings: readonly (Place & { readonly values: readonly Setting[] })[];
  /** What is least: the price of the drivers to be bought for a pair of cabinets, or the number of changes. The other one decides
   *  between equals. Parts and settings have no price. */
  readonly cost: 'money' | 'changes';
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
  readonly found?: { readonly steps: readonly CheapestStep[]; readonly money: number; readonly changes: number };
  /** Of all looked at, the one that leaves the fewest failures, where none turns all. */
  readonly nearest?: { readonly changes: readonly Change[]; readonly left: readonly Result[] };
  /** Single changes that could be made, sets of them within the limit, and how many sets were computed. */
  readonly choices: number;
  readonly of: number;
  readonly looked: number;
  /** Whether every set of changes that costs less than what was found, or every set, was computed. */
  readonly isWhole: boolean;
  /** The same in words. */
  readonly said: string;
}
