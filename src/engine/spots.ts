import { formatAddress, parseAddress } from '../formula/address.ts';
import { keyOf } from './cell-index.ts';
import type { CellState, Place } from './types.ts';

/** A cell by the engine's own numbers. */
export interface EngineAddress {
  readonly sheet: number;
  readonly row: number;
  readonly col: number;
}

/** A cell that the engine has met, and what was last told of it. */
export interface Spot {
  readonly key: string;
  readonly place: Place;
  readonly address: EngineAddress;
  /** The last state that was reported. */
  told: CellState | undefined;
  /** Whether something was typed there; a column may also spill into a cell. */
  isTyped: boolean;
  /** The records that the cell holds, by their handles. */
  handles: readonly string[];
  /** What is implausible in its formula. */
  doubts: readonly string[];
  /** The calculation in which the doubts arose. */
  doubtedIn: number;
}

const NONE: readonly string[] = [];

/** Cells by the engine's numbers, so that a change of thousands of cells costs no making and reading of addresses. */
export class Spots {
  /** By sheet, column and row: a change mostly runs down a column, so that its rows are found once. */
  readonly #sheets = new Map<number, { readonly id: string; readonly columns: Map<number, Map<number, Spot>> }>();
  /** The column asked for last. */
  #last:
    { readonly sheet: number; readonly col: number; readonly id: string; readonly rows: Map<number, Spot> } | undefined;
  readonly #numbers = new Map<string, number>();

  addSheet(number: number, id: string): void {
    this.#sheets.set(number, { id, columns: new Map() });
    this.#numbers.set(id, number);
  }

  /** Forgets a sheet; gives its cells. */
  dropSheet(id: string): Iterable<Spot> {
    const number = this.#numbers.get(id) ?? -1;
    const dropped = [...(this.#sheets.get(number)?.columns.values() ?? [])].flatMap((rows) => [...rows.values()]);
    this.#last = undefined;
    this.#sheets.delete(number);
    this.#numbers.delete(id);
    return dropped;
  }

  get sheets(): readonly string[] {
    return [...this.#numbers.keys()];
  }

  /** The engine's number of a sheet. */
  numberOf(id: string): number | undefined {
    return this.#numbers.get(id);
  }

  at(address: EngineAddress): Spot | undefined {
    const column = this.#column(address);
    if (!column) return undefined;
    const known = column.rows.get(address.row);
    if (known) return known;
    const place = { sheet: column.id, cell: formatAddress({ row: address.row, column: address.col }) };
    const spot: Spot = {
      key: keyOf(place),
      place,
      address,
      told: undefined,
      isTyped: false,
      handles: NONE,
      doubts: NONE,
      doubtedIn: 0,
    };
    column.rows.set(address.row, spot);
    return spot;
  }

  #column({ sheet, col }: EngineAddress): { readonly id: string; readonly rows: Map<number, Spot> } | undefined {
    if (this.#last?.sheet === sheet && this.#last.col === col) return this.#last;
    const held = this.#sheets.get(sheet);
    if (!held) return undefined;
    const rows = held.columns.get(col) ?? new Map<number, Spot>();
    held.columns.set(col, rows);
    this.#last = { sheet, col, id: held.id, rows };
    return this.#last;
  }

  of({ sheet, cell }: Place): Spot | undefined {
    const number = this.#numbers.get(sheet);
    const at = parseAddress(cell);
    return number === undefined || !at ? undefined : this.at({ sheet: number, row: at.row, col: at.column });
  }

  /** The handles of all records that a cell holds. */
  handles(): Set<string> {
    const all = new Set<string>();
    for (const { columns } of this.#sheets.values()) {
      for (const rows of columns.values())
        for (const { handles } of rows.values()) for (const handle of handles) all.add(handle);
    }
    return all;
  }
}

/** Cells that stand below one another, together. The engine's own record of what to take back grows with the square of the
 *  pieces in which a change is handed to it. */
export function columnRuns(spots: readonly Spot[]): Spot[][] {
  if (spots.length === 1) return [[...spots]];
  const runs: Spot[][] = [];
  let last: EngineAddress | undefined;
  for (const spot of spots.toSorted((a, b) => inColumns(a.address, b.address))) {
    const { sheet, row, col } = spot.address;
    if (last?.sheet === sheet && last.col === col && last.row + 1 === row) runs.at(-1)?.push(spot);
    else runs.push([spot]);
    last = spot.address;
  }
  return runs;
}

const inColumns = (a: EngineAddress, b: EngineAddress): number => a.sheet - b.sheet || a.col - b.col || a.row - b.row;
