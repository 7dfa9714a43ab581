import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt, GridModel } from './model.ts';

type Direction = 'up' | 'down' | 'left' | 'right';

/** How an input over a cell was left. */
export interface InlineOutcome {
  readonly at: CellAt;
  /** What is to be written; undefined where nothing was changed or the reader took it back. */
  readonly text: string | undefined;
  /** Where the selection goes on to. */
  readonly step: Direction | undefined;
  /** Left by a key; otherwise the focus has gone elsewhere already. */
  readonly isByKey: boolean;
}

/** The input that lies over a cell while a value is typed into it. Enter and Tab commit and move on, Escape puts back,
 *  leaving it any other way commits: nothing typed is lost. */
export class InlineInput {
  readonly #done: (outcome: InlineOutcome) => void;
  #row: HTMLElement | undefined;
  #input: HTMLInputElement | undefined;
  #at: CellAt = { row: 0, column: 0 };
  #original = '';

  constructor(done: (outcome: InlineOutcome) => void) {
    this.#done = done;
  }

  /** Opens over a cell that holds `original`, showing what was `typed` in its place where something was. */
  open(body: HTMLElement, at: CellAt, geometry: Geometry, original: string, typed?: string): void {
    this.settle();
    const input = document.createElement('input');
    input.className = 'inline';
    input.setAttribute('aria-label', 'Text of the cell');
    input.autocomplete = 'off';
    input.spellcheck = false;
    input.value = typed ?? original;
    input.addEventListener('keydown', (event) => this.#key(event));
    input.addEventListener('blur', () => this.settle());
    for (const name of ['copy', 'cut', 'paste']) input.addEventListener(name, (event) => event.stopPropagation());
    this.#row = rowAround(input, at);
    this.#input = input;
    this.#at = at;
    this.#original = original;
    this.#place(geometry);
    body.append(this.#row);
    input.focus();
    if (typed === undefined) input.select();
    else input.setSelectionRange(typed.length, typed.length);
  }

  /** Commits what is typed and closes. */
  settle(): void {
    this.#finish(this.#input?.value, undefined, false);
  }

  /** Keeps what is being typed where the cell below is still the same, as after an edit elsewhere. */
  follow(model: GridModel, geometry: Geometry): void {
    if (!this.#input) return;
    const { row, column } = this.#at;
    if ((model.cell(row, column)?.text ?? '') === this.#original) this.#place(geometry);
    else this.#close();
  }

  #place(geometry: Geometry): void {
    if (!this.#row) return;
    const { row, column } = this.#at;
    const { style } = this.#row;
    style.left = `${String(HEAD_WIDTH + geometry.left(column))}px`;
    style.top = `${String(geometry.top(row))}px`;
    style.width = `${String(geometry.widthOf(column))}px`;
    style.height = `${String(geometry.heightOf(row))}px`;
  }

  /** Taking the input away makes it lose the focus; then there is nothing to settle any more. */
  #close(): void {
    const row = this.#row;
    this.#input = this.#row = undefined;
    row?.remove();
  }

  #key(event: KeyboardEvent): void {
    event.stopPropagation();
    if (event.isComposing) return;
    if (event.key === 'Escape') {
      event.preventDefault();
      this.#finish(undefined, undefined, true);
      return;
    }
    const [ahead, back] = steps.get(event.key) ?? [];
    if (!ahead) return;
    event.preventDefault();
    this.#finish(this.#input?.value, event.shiftKey ? back : ahead, true);
  }

  #finish(text: string | undefined, step: Direction | undefined, isByKey: boolean): void {
    if (!this.#input) return;
    const outcome = { at: this.#at, text: text === this.#original ? undefined : text, step, isByKey };
    this.#close();
    this.#done(outcome);
  }
}

/** The keys that commit: where they lead, and where with Shift. */
const steps: ReadonlyMap<string, readonly [Direction, Direction]> = new Map([
  ['Enter', ['down', 'up']],
  ['Tab', ['right', 'left']],
] as const);

/** Among rows only a row may stand. */
function rowAround(input: HTMLInputElement, { row, column }: CellAt): HTMLElement {
  const cell = document.createElement('div');
  cell.setAttribute('role', 'gridcell');
  cell.setAttribute('aria-colindex', String(column + 2));
  cell.append(input);
  const around = document.createElement('div');
  around.className = 'editing';
  around.setAttribute('role', 'row');
  around.setAttribute('aria-rowindex', String(row + 2));
  around.append(cell);
  return around;
}
