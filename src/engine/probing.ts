import { keyOf } from './cell-index.ts';
import { sameState } from './same-state.ts';
import type { CellState, Writing } from './types.ts';

/** So long the engine waits for the next text to be probed before it puts the cell back, in milliseconds. */
const PATIENCE = 20;

/** Texts that are only tried, one after the other: the cell is put back once, after the last of them. */
export class Probing {
  /** Writes, and gives the states that changed. */
  readonly #write: (writing: Writing) => readonly CellState[];
  /** The cell with the text that belongs there. */
  #back: Writing | undefined;
  /** What was told of cells before the first text was tried. */
  readonly #before = new Map<string, CellState | undefined>();
  readonly #now = new Map<string, CellState>();
  #wait: ReturnType<typeof setTimeout> | undefined;

  constructor(write: (writing: Writing) => readonly CellState[]) {
    this.#write = write;
  }

  /** The verdicts that are other than before with a text.
   *  @param held - The text that stands there now. */
  verdicts(writing: Writing, held: string): CellState[] {
    if (this.#back && keyOf(this.#back) !== keyOf(writing)) this.end();
    this.#back ??= { ...writing, text: held };
    clearTimeout(this.#wait);
    try {
      for (const cell of this.#write(writing)) this.#now.set(keyOf(cell), cell);
    } catch (failure) {
      this.end();
      throw failure;
    }
    this.#wait = setTimeout(() => this.end(), PATIENCE);
    return [...this.#now.values()].filter((cell) => {
      if (cell.value.kind !== 'record' || cell.value.record.kind !== 'verdict') return false;
      const before = this.#before.get(keyOf(cell));
      return !before || !sameState(before, cell);
    });
  }

  /** Hears what was told of a cell that is about to change. */
  hear(key: string, told: CellState | undefined): void {
    if (this.#back && !this.#before.has(key)) this.#before.set(key, told);
  }

  /** Puts the cell back. To be called before anything else is done. */
  end(): void {
    clearTimeout(this.#wait);
    const back = this.#back;
    if (!back) return;
    this.#back = undefined;
    this.#before.clear();
    this.#now.clear();
    this.#write(back);
  }
}
