import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt, GridModel } from './model.ts';

type Direction = 'up' | 'down' | 'left' | 'right';

/** How an input over a cell is left. */
export interface Leaving {
  readonly at: CellAt;
  /** Where the selection goes on to. */
  readonly step: Direction | undefined;
  /** Left by a key; otherwise the focus has gone elsewhere already. */
  readonly isByKey: boolean;
}

/** What comes of an input over a cell. */
export interface InlineActs {
  /** Writes what was typed; tells whether that is drawn soon together with what follows from it. The input stays until then: were
   *  it taken away at once, the page would be painted once for that alone, while what follows waits. */
  write(at: CellAt, text: string): boolean;
  /** It is being left, by a key with the focus still in it. */
  left(leaving: Leaving): void;
  /** Acts upon a key that was pressed while it stayed. */
  pass(event: KeyboardEvent): void;
  /** Begins to type where the selection has gone on to. */
  type(text: string): void;
}

/** The input that lies over a cell while a value is typed into it. Enter and Tab commit and move on, arrows too where the
 *  cell is typed over, Escape puts back, leaving it any other way commits: nothing typed is lost. */
export class InlineInput {
  readonly #acts: InlineActs;
  #row: HTMLElement | undefined;
  #input: HTMLInputElement | undefined;
  #at: CellAt = { row: 0, column: 0 };
  #original = '';
  /** The cell is typed over; arrows lead on through the sheet, not through what is typed. */
  #isOver = false;

  /** What it holds is written, and it waits to be closed. */
  #leaving: Leaving | undefined;

  constructor(acts: InlineActs) {
    this.#acts = acts;
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
    input.addEventListener('beforeinput', (event) => this.#insert(event));
    input.addEventListener('blur', () => this.settle());
    input.addEventListener('pointerdown', () => (this.#isOver = false));
    for (const name of ['copy', 'cut', 'paste']) input.addEventListener(name, (event) => event.stopPropagation());
    this.#row = rowAround(input, at);
    this.#input = input;
    this.#at = at;
    this.#original = original;
    this.#isOver = typed !== undefined;
    this.#place(geometry);
    body.append(this.#row);
    input.focus();
    if (typed === undefined) input.select();
    else input.setSelectionRange(typed.length, typed.length);
  }

  /** Commits what is typed and closes. */
  settle(): void {
    if (!this.#leaving) return this.#finish(this.#input?.value, undefined, false);
    this.#leaving = { ...this.#leaving, isByKey: false };
    this.leave();
  }

  /** Closes where it only waits for that. */
  leave(): void {
    const [leaving, row] = [this.#leaving, this.#row];
    if (!leaving) return;
    this.#input = this.#row = this.#leaving = undefined;
    // The focus goes before the input does, so that the page need not be laid out in between.
    this.#acts.left(leaving);
    row?.remove();
  }

  /** Keeps what is being typed where the cell below is still the same, as after an edit elsewhere. */
  follow(model: GridModel, geometry: Geometry): void {
    if (!this.#input || this.#leaving) return;
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
    if (this.#leaving) {
      event.preventDefault();
      event.stopPropagation();
      this.leave();
      this.#acts.pass(event);
      return;
    }
    const { key, shiftKey, altKey, isComposing } = event;
    const isControl = event.ctrlKey || event.metaKey;
    // What is asked of the whole sheet finds what was typed.
    if (isControl && /^[^acvxyz]$/i.test(key)) return this.#finish(this.#input?.value, undefined, true);
    event.stopPropagation();
    if (isComposing) return;
    if (/^(F2|Home|End)$/.test(key)) this.#isOver = false;
    const isPlain = !isControl && !altKey && !shiftKey;
    const arrow = this.#isOver && isPlain && key.startsWith('Arrow') ? key.slice(5).toLowerCase() : undefined;
    const [ahead, back] = steps.get(key) ?? [arrow as Direction | undefined];
    if (key !== 'Escape' && !ahead) return;
    event.preventDefault();
    this.#finish(ahead && this.#input?.value, shiftKey ? back : ahead, true);
  }

  /** What comes by no key, as from a telephone, while it waits to be closed. */
  #insert(event: InputEvent): void {
    if (!this.#leaving || event.data === null) return;
    event.preventDefault();
    this.leave();
    this.#acts.type(event.data);
  }

  #finish(text: string | undefined, step: Direction | undefined, isByKey: boolean): void {
    if (!this.#input) return;
    this.#leaving = { at: this.#at, step, isByKey };
    const isWritten = text !== undefined && text !== this.#original;
    const isDrawnSoon = isWritten && this.#acts.write(this.#at, text);
    // Whatever else it is left by has its own effect at once.
    if (!isDrawnSoon || !step) this.leave();
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
