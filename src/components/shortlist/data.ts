import type { Status } from '../../../functions/values/verdict.ts';

/** A pair or a team as the list shows it; SI. */
export interface ListedRow {
  readonly members: readonly number[];
  readonly names: readonly string[];
  /** How many subs it takes; absent for a pair or a team. */
  readonly subs?: number;
  /** Net volume of the box of the first member, where it is known. */
  readonly box?: { readonly volume?: number };
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
  readonly place: 'woofer' | 'mid' | 'tweeter' | 'sub' | 'mains';
  readonly drivers: readonly { readonly id: string; readonly name: string; readonly isTaken: boolean }[];
}

/** What is asked, as it was typed. */
export interface Wanted {
  readonly ways: 2 | 3 | 'subs';
  readonly price: string;
  readonly reach: string;
  /** Closed for subs and vented for others, where nothing else was said. */
  readonly box?: 'vented' | 'closed' | undefined;
  readonly plays: string;
  readonly ranking: string;
  /** What was typed over the usual rules, by their names. */
  readonly rules: Readonly<Record<string, readonly string[]>>;
}

/** A rule as it can be set: its usual texts, by the rule and stretched where there are two. */
export interface RuleShown {
  readonly name: string;
  readonly label: string;
  readonly usual: readonly string[];
  /** What it means that nothing is typed, where there is no usual text. */
  readonly blank?: string;
  /** What it can only be. */
  readonly choices?: readonly string[];
}

/** How a wish in plain words was taken. */
export interface WishShown {
  readonly understood: readonly { readonly words: string; readonly means: string }[];
  readonly left: readonly string[];
}

/** What was found, or is being looked for. */
export interface Finding {
  readonly rows: readonly ListedRow[];
  /** The first few rows and why each stands where it does. */
  readonly best: readonly { readonly row: ListedRow; readonly why: readonly string[] }[];
  readonly front: readonly ListedRow[];
  readonly alone: readonly { readonly place: PlaceChoice['place']; readonly drivers: readonly Alone[] }[];
  /** One sentence on how many there were. */
  readonly said: string;
  /** Where there were none: what comes nearest to each of the limits. */
  readonly nearest?: readonly string[];
  /** What was asked in a way that cannot be answered. */
  readonly wrong?: string;
  /** From 0 to 1 while it is looked for. */
  readonly progress?: number;
}
