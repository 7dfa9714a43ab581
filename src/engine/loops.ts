import type { CellIndex } from './cell-index.ts';

/** The loops of a sheet, each found once however many of its cells ask. Good until the next edit. */
export class Loops {
  readonly #index: CellIndex;
  readonly #known = new Map<string, readonly string[]>();

  constructor(index: CellIndex) {
    this.#index = index;
  }

  forget(): void {
    this.#known.clear();
  }

  /** A loop in which a cell stands, itself first and last; the cell alone where there is none to be found. */
  of(key: string): readonly string[] {
    const known = this.#known.get(key);
    const loop = known ?? this.#index.loopOf(key);
    if (!loop) return [key];
    if (!known) for (const each of loop) if (!this.#known.has(each)) this.#known.set(each, loop);
    const start = loop.indexOf(key);
    return [...loop.slice(start), ...loop.slice(1, start + 1)];
  }
}
