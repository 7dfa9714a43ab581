import type { WorkbookChange } from '../document/workbook-change.ts';

/** Milliseconds that what was typed waits to be drawn together with what follows from it. */
const PATIENCE = 12;

/** When to draw after an edit: together with what follows from it where the engine answers soon, and no more than once a
 *  frame; layout then happens once, whatever followed. */
export class Pace {
  /** Kept when the engine has answered the last edit, or patience is at its end. */
  #answer: Promise<void> | undefined;
  #answered: (() => void) | undefined;
  /** Kept in the frame after the last draw. */
  #beat: Promise<unknown> | undefined;
  #isEdited = false;
  #due: Promise<void> | undefined;
  #drawn: (() => void) | undefined;

  /** Kept when an edit is drawn; nothing where none waits for that. */
  get due(): Promise<void> | undefined {
    return this.#due;
  }

  hear({ document, timing }: WorkbookChange): void {
    this.#isEdited = true;
    if (timing) this.#answered?.();
    else if (document) {
      this.#answer = new Promise((answered) => setTimeout((this.#answered = answered), PATIENCE));
      this.#due ??= new Promise((drawn) => (this.#drawn = drawn));
    }
  }

  /** Kept when it is time to draw. A page that is not seen has no frames to wait for. */
  async turn(): Promise<void> {
    if (this.#isEdited && !document.hidden) {
      await this.#answer;
      await this.#beat;
      this.#beat = new Promise(requestAnimationFrame);
    }
    this.#isEdited = false;
  }

  /** The page is drawn as it stands. */
  drawn(): void {
    this.#drawn?.();
    this.#due = this.#drawn = undefined;
  }
}
