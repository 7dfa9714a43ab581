import type { Suggestion, Suggestions } from './suggestions.ts';

const MOST_SHOWN = 60;
/** Milliseconds in which a list that has just come up takes no key: it was meant for the text. */
const REACTION = 75;

/** What can be written at the caret: what of it fits the letters so far, and which of it is at hand. */
export class Completion {
  options: readonly Suggestion[] = [];
  /** Where the word begins that is completed. */
  from = 0;
  /** The option at hand. */
  at = 0;
  #opened = 0;

  get isOpen(): boolean {
    return this.options.length > 0;
  }

  /** Whether a key that takes an option may be meant for the list. */
  get isTaking(): boolean {
    return this.isOpen && performance.now() - this.#opened > REACTION;
  }

  get chosen(): Suggestion | undefined {
    return this.options[this.at];
  }

  /** @param written - What stands there already of the word. */
  offer(found: Suggestions | undefined, written: string): void {
    if (!this.isOpen) this.#opened = performance.now();
    this.options = found ? fitting(found.options, written) : [];
    this.from = found?.from ?? 0;
    this.at = 0;
  }

  move(by: number): void {
    const last = this.options.length - 1;
    const next = this.at + by;
    // One step past an end comes in at the other; a page stops there.
    this.at = Math.abs(by) === 1 ? (next + last + 1) % (last + 1) : Math.max(0, Math.min(last, next));
  }

  close(): void {
    this.options = [];
  }
}

/** The options with those letters, best first: at their beginning, at the beginning of a part, anywhere. One that is written
 *  out already is none. */
export function fitting(options: readonly Suggestion[], written: string): readonly Suggestion[] {
  const wanted = written.toLowerCase();
  const ranked = options
    .map((option) => ({ option, rank: rankOf(option.label.toLowerCase(), wanted) }))
    .filter(({ rank }) => rank < 3)
    .sort((a, b) => a.rank - b.rank)
    .map(({ option }) => option);
  const [only] = ranked;
  if (ranked.length === 1 && only && (only.insert ?? only.label).toLowerCase() === wanted) return [];
  return ranked.slice(0, MOST_SHOWN);
}

const rankOf = (label: string, wanted: string): number =>
  label.startsWith(wanted) ? 0 : label.includes(`.${wanted}`) ? 1 : label.includes(wanted) ? 2 : 3;
