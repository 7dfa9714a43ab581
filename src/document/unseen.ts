/** Cells whose new text the engine has not seen yet. A cell edited twice is unseen until both edits were. */
export class Unseen {
  readonly #counts = new Map<string, number>();

  add(cells: readonly string[]): void {
    for (const cell of cells) this.#counts.set(cell, (this.#counts.get(cell) ?? 0) + 1);
  }

  remove(cells: readonly string[]): void {
    for (const cell of cells) {
      const left = (this.#counts.get(cell) ?? 1) - 1;
      if (left === 0) this.#counts.delete(cell);
      else this.#counts.set(cell, left);
    }
  }

  has(cell: string): boolean {
    return this.#counts.has(cell);
  }
}
