import type { GridModel } from './model.ts';

export const HEAD_WIDTH = 44;
export const HEAD_HEIGHT = 30;

/** Headings and rows of their own height stand in the first thousand rows or nowhere: a table of 100 000 rows is one section. */
const DISTINCT_ROWS = 1000;
/** Where less of a column than this is seen, it is scrolled to: words are not broken into crumbs. */
const LEAST_SEEN = 150;

/** Heights of rows and left edges of columns. Rows are one height but for headings of sections, and for those whose words
 *  need more than a line. */
export class Geometry {
  readonly rowHeight: number;
  /** Of the first rows, and of the one after them. */
  readonly #tops: readonly number[];
  readonly #lefts: readonly number[];
  readonly rows: number;

  /** @param heights - Of the rows that need more than a line. */
  constructor(model: GridModel, isTouch: boolean, heights?: ReadonlyMap<number, number>) {
    this.rowHeight = isTouch ? 40 : 28;
    this.rows = model.rows;
    const tops = [0];
    for (let row = 0; row < Math.min(model.rows, DISTINCT_ROWS); row++) {
      const isSection = model.cell(row, 0)?.look === 'section';
      tops.push((tops[row] ?? 0) + (isSection ? (isTouch ? 44 : 34) : (heights?.get(row) ?? this.rowHeight)));
    }
    this.#tops = tops;
    const lefts = [0];
    for (const { width } of model.columns) lefts.push((lefts.at(-1) ?? 0) + width);
    this.#lefts = lefts;
  }

  get width(): number {
    return this.#lefts.at(-1) ?? 0;
  }

  get height(): number {
    return this.top(this.rows);
  }

  left(column: number): number {
    return this.#lefts[column] ?? this.width;
  }

  widthOf(column: number): number {
    return this.left(column + 1) - this.left(column);
  }

  /** How much of a column there is for what stands in it, in a view of this width: what lies before its border is read
   *  without scrolling. The same when scrolled, so that words stay in their lines. */
  seenWidth(column: number, view: number): number {
    const seen = view - this.left(column);
    return Math.min(this.widthOf(column), seen < LEAST_SEEN ? view : seen);
  }

  top(row: number): number {
    const last = this.#tops.length - 1;
    return this.#tops[row] ?? (this.#tops[last] ?? 0) + (row - last) * this.rowHeight;
  }

  heightOf(row: number): number {
    return this.top(row + 1) - this.top(row);
  }

  rowAt(y: number): number {
    let low = 0;
    let high = Math.max(0, this.rows - 1);
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.top(middle) <= y) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  columnAt(x: number): number {
    let low = 0;
    let high = Math.max(0, this.#lefts.length - 2);
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.left(middle) <= x) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
