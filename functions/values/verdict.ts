import type { Sentence } from './say.ts';

export type Status = 'good' | 'caution' | 'fail';

/** A judgement with its reason. The reason names the limit and the margin. */
export interface Verdict {
  readonly kind: 'verdict';
  readonly status: Status;
  /** One or two words for the chip: "Good", "Tight", "No shared band". */
  readonly word: string;
  readonly reason: Sentence;
  /** A safety caution or a note to show beside the reason. */
  readonly note?: Sentence;
}
