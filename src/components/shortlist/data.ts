import type { Status } from '../../../functions/values/verdict.ts';

/** A pair or a team as the list shows it; SI. */
export interface ListedRow {
  readonly members: readonly number[];
  readonly names: readonly string[];
  readonly status: Status | 'problem';
  readonly word: string;
  readonly windows: readonly {
    readonly low: number;
    readonly high: number;
    readonly octaves: number;
    readonly floor: string;
    readonly ceiling: string;
  }[];
  readonly pads: readonly number[];
  readonly level: number;
  readonly lowestOhms: number;
  /** For a pair of cabinets; NaN where it is not known, as below. */
  readonly price: number;
  readonly reach: number;
  readonly plays: number;
  readonly rank: number;
  readonly isFront: boolean;
}

/** A candidate without a row, and why. */
export interface Alone {
  readonly name: string;
  readonly why: string;
}

/** The drivers that may take one place. */
export interface PlaceChoice {
  readonly place: 'woofer' | 'mid' | 'tweeter';
  readonly drivers: readonly { readonly id: string; readonly name: string; readonly isTaken: boolean }[];
}

/** What is asked, as it was typed. */
export interface Wanted {
  readonly ways: 2 | 3;
  readonly price: string;
  readonly reach: string;
  readonly box: 'vented' | 'closed';
  readonly plays: string;
  readonly ranking: string;
}

/** What was found, or is being looked for. */
export interface Finding {
  readonly rows: readonly ListedRow[];
  readonly front: readonly ListedRow[];
  readonly alone: readonly { readonly place: PlaceChoice['place']; readonly drivers: readonly Alone[] }[];
  /** One sentence on how many there were. */
  readonly said: string;
  /** What was asked in a way that cannot be answered. */
  readonly wrong?: string;
  /** From 0 to 1 while it is looked for. */
  readonly progress?: number;
}
