import type { CellState, Changes, Place } from '../engine/types.ts';

/** The states of all cells that hold something, by sheet and address. */
export class CellStates {
  readonly #sheets = new Map<string, Map<string, CellState>>();
  /** The cells that hold a verdict or should, by their sheets: they are counted after every edit, and are few among thousands. */
  readonly #judged = new Map<string, Set<string>>();

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
      if (isJudged(state)) setIn(this.#judged, sheet).add(cell);
      else this.#judged.get(sheet)?.delete(cell);
      return { place: { sheet, cell }, before };
    });
  }

  /** Forgets the sheets that are no longer there. */
  keep(sheets: ReadonlySet<string>): void {
    for (const held of [this.#sheets, this.#judged]) for (const id of held.keys()) if (!sheets.has(id)) held.delete(id);
  }

  /** The cells of a sheet that hold a verdict or should. */
  judged(sheet: string): Iterable<string> {
    return this.#judged.get(sheet) ?? [];
  }

  copy(): CellStates {
    const copy = new CellStates();
    for (const [id, cells] of this.#sheets) copy.#sheets.set(id, new Map(cells));
    for (const [id, cells] of this.#judged) copy.#judged.set(id, new Set(cells));
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

const isJudged = ({ value, type }: CellState): boolean =>
  (value.kind === 'record' && value.record.kind === 'verdict') || (type.kind === 'record' && type.record === 'verdict');

function setIn(sets: Map<string, Set<string>>, name: string): Set<string> {
  const held = sets.get(name) ?? new Set<string>();
  sets.set(name, held);
  return held;
}
