import { contains, type Rectangle } from '../formula/area.ts';

/** Cells that a formula refers to together. */
interface Area extends Rectangle {
  readonly key: string;
  readonly sheet: string;
}

/** Who refers to rectangles of cells, by the columns of these: a cell has to ask only those that cross its own. */
export class AreaUsers {
  readonly #columns = new Map<string, Set<Area>>();
  readonly #areas = new Map<string, readonly Area[]>();

  add(key: string, sheet: string, rectangle: Rectangle): void {
    const area: Area = { key, sheet, ...rectangle };
    this.#areas.set(key, [...(this.#areas.get(key) ?? []), area]);
    for (const column of columnsOf(area))
      this.#columns.set(column, (this.#columns.get(column) ?? new Set<Area>()).add(area));
  }

  /** Forgets all rectangles to which a formula refers. */
  forget(key: string): void {
    for (const area of this.#areas.get(key) ?? [])
      for (const column of columnsOf(area)) this.#columns.get(column)?.delete(area);
    this.#areas.delete(key);
  }

  *of(sheet: string, row: number, column: number): Generator<string> {
    for (const area of this.#columns.get(columnKey(sheet, column)) ?? [])
      if (contains(area, row, column)) yield area.key;
  }
}

const columnKey = (sheet: string, column: number): string => `${sheet}!${String(column)}`;

const columnsOf = ({ sheet, left, right }: Area): string[] =>
  Array.from({ length: right - left + 1 }, (_, index) => columnKey(sheet, left + index));
