import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { Held } from './held.ts';
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
  /** Writes what was typed; tells whether that is drawn soon, together with what follows from it. The input then stays until it is. */
  write(at: CellAt, text: string): boolean;
  /** It is being left, the focus still in it where that is by a key. */
  left(leaving: Leaving): void;
  /** Where leaving waits until then. */
  readonly held: Held;
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
  #isWritten = false;

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
    if (this.#isWritten) this.#acts.held.release();
    else this.#finish(this.#input?.value, undefined, false);
  }

  /** Keeps what is being typed where the cell below is still the same, as after an edit elsewhere. */
  follow(model: GridModel, geometry: Geometry): void {
    if (!this.#input || this.#isWritten) return;
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

  #finish(text: string | undefined, step: Direction | undefined, isByKey: boolean): void {
    if (!this.#input) return;
    const leaving = { at: this.#at, step, isByKey };
    const isWritten = text !== undefined && text !== this.#original;
    const isDrawnSoon = isWritten && this.#acts.write(this.#at, text);
    // Whatever else it is left by has its own effect at once.
    if (!isDrawnSoon || !step) return this.#leave(leaving);
    this.#isWritten = true;
    this.#acts.held.hold((isHere) => this.#leave({ ...leaving, isByKey: isHere }));
  }

  #leave(leaving: Leaving): void {
    const row = this.#row;
    this.#input = this.#row = undefined;
    this.#isWritten = false;
    // The focus goes before the input does, so that the page need not be laid out in between.
    this.#acts.left(leaving);
    row?.remove();
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
