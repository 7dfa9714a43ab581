/** A text with its caret. */
export interface Written {
  readonly text: string;
  readonly caret: number;
}

const MOST_STEPS = 200;

/** The steps of one edit, to be taken back one after the other. Letters typed in one go are one step, up to the next space. */
export class TextHistory {
  #steps: Written[] = [];
  #at = 0;
  #isTyping = false;

  /** Begins anew from a text. */
  reset(first: Written): void {
    this.#steps = [first];
    this.#at = 0;
    this.#isTyping = false;
  }

  /** @param isTyping - A letter came to what was typed just before. */
  note(next: Written, isTyping: boolean): void {
    const last = this.#steps[this.#at];
    if (last?.text === next.text) return;
    const isMore =
      isTyping && this.#isTyping && next.text.length > (last?.text.length ?? 0) && !last?.text.endsWith(' ');
    this.#steps.splice(isMore ? this.#at : this.#at + 1, Infinity, next);
    this.#steps.splice(0, this.#steps.length - MOST_STEPS);
    this.#at = this.#steps.length - 1;
    this.#isTyping = isTyping;
  }

  /** The text before the last step; nothing where there is none. */
  undo(): Written | undefined {
    this.#isTyping = false;
    return this.#at > 0 ? this.#steps[--this.#at] : undefined;
  }

  redo(): Written | undefined {
    this.#isTyping = false;
    return this.#at < this.#steps.length - 1 ? this.#steps[++this.#at] : undefined;
  }
}
