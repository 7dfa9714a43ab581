import type { CellState, Changes, Place } from '../engine/types.ts';

/** The states of all cells that hold something, by sheet and address. */
export class CellStates {
  readonly #sheets = new Map<string, Map<string, CellState>>();

  get({ sheet, cell }: Place): CellState | undefined {
    return this.#sheets.get(sheet)?.get(cell);
  }

  /** Takes in what changed; gives for each changed cell the state before. */
  take({ cells }: Changes): { readonly place: Place; readonly before: CellState | undefined }[] {
    return cells.map((state) => {
      const { sheet, cell } = state;
      const before = this.#sheets.get(sheet)?.get(cell);
      if (state.value.kind === 'empty' && state.findings.length === 0) this.#sheets.get(sheet)?.delete(cell);
      else this.#sheet(sheet).set(cell, state);
      return { place: { sheet, cell }, before };
    });
  }

  /** Forgets the sheets that are no longer there. */
  keep(sheets: ReadonlySet<string>): void {
    for (const id of this.#sheets.keys()) if (!sheets.has(id)) this.#sheets.delete(id);
  }

  copy(): CellStates {
    const copy = new CellStates();
    for (const [id, cells] of this.#sheets) copy.#sheets.set(id, new Map(cells));
    return copy;
  }

  *[Symbol.iterator](): Generator<CellState> {
    for (const cells of this.#sheets.values()) yield* cells.values();
  }

  #sheet(id: string): Map<string, CellState> {
    const held = this.#sheets.get(id) ?? new Map<string, CellState>();
    this.#sheets.set(id, held);
    return held;
  }
}
