import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt } from './model.ts';

type Direction = 'up' | 'down' | 'left' | 'right';

/** The input that lies over a cell while a value is typed into it. Enter and Tab commit and move on, Escape puts back,
 *  leaving it any other way commits: nothing typed is lost. */
export class InlineInput {
  readonly #done: (at: CellAt, text: string | undefined, step: Direction | undefined) => void;
  #input: HTMLInputElement | undefined;
  #at: CellAt | undefined;

  /** `text` is undefined where the reader took it back. */
  constructor(done: (at: CellAt, text: string | undefined, step: Direction | undefined) => void) {
    this.#done = done;
  }

  open(body: HTMLElement, at: CellAt, geometry: Geometry, text: string, isWhole: boolean): void {
    this.settle();
    const input = document.createElement('input');
    input.className = 'inline';
    input.setAttribute('aria-label', 'Text of the cell');
    input.autocomplete = 'off';
    input.value = text;
    input.style.left = `${String(HEAD_WIDTH + geometry.left(at.column))}px`;
    input.style.top = `${String(geometry.top(at.row))}px`;
    input.style.width = `${String(geometry.widthOf(at.column))}px`;
    input.style.height = `${String(geometry.heightOf(at.row))}px`;
    input.addEventListener('keydown', (event) => this.#key(event));
    input.addEventListener('blur', () => this.settle());
    for (const name of ['copy', 'cut', 'paste']) input.addEventListener(name, (event) => event.stopPropagation());
    body.append(input);
    this.#input = input;
    this.#at = at;
    input.focus();
    if (isWhole) input.select();
    else input.setSelectionRange(text.length, text.length);
  }

  /** Commits what is typed and closes. */
  settle(): void {
    this.#finish(this.#input?.value, undefined);
  }

  /** Closes without a word, as when another sheet is shown. */
  close(): void {
    const input = this.#input;
    this.#input = undefined;
    input?.remove();
  }

  #key(event: KeyboardEvent): void {
    event.stopPropagation();
    if (event.isComposing) return;
    const step: Direction | undefined =
      event.key === 'Enter'
        ? event.shiftKey
          ? 'up'
          : 'down'
        : event.key === 'Tab'
          ? event.shiftKey
            ? 'left'
            : 'right'
          : undefined;
    if (step) {
      event.preventDefault();
      this.#finish(this.#input?.value, step);
    } else if (event.key === 'Escape') {
      event.preventDefault();
      this.#finish(undefined, undefined);
    }
  }

  #finish(text: string | undefined, step: Direction | undefined): void {
    const at = this.#at;
    if (!this.#input || !at) return;
    this.close();
    this.#done(at, text, step);
  }
}
