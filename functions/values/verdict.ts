import type { Sentence } from './say.ts';

export type Status = 'good' | 'caution' | 'fail';

/** A judgement with its reason. The reason names the limit and the margin. */
export interface Verdict {
  readonly kind: 'verdict';
  readonly status: Status;
  /** One or two words for the chip: "Good", "Tight", "No shared window". */
  readonly word: string;
  readonly reason: Sentence;
  /** A safety caution or a note to show beside the reason. */
  readonly note?: Sentence;
}

/** The word of a judgement that has none of its own. */
export const statusWords = { good: 'Good', caution: 'Caution', fail: 'Fail' } as const satisfies Record<Status, string>;

/** What a bound asks for, what a value that misses it is, and where that lies; 1 where more is better. */
export const boundWords = { 1: ['at least', 'short', 'below'], [-1]: ['at most', 'over', 'above'] } as const;

/** A hair of rounding error never turns a value that just meets its limit into a failure. */
export const slack = (limit: number): number => 1e-9 * Math.abs(limit);
