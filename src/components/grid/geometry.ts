import type { GridModel } from './model.ts';

export const HEAD_WIDTH = 44;
export const HEAD_HEIGHT = 30;

/** Heights of rows and left edges of columns. Rows are one height but for headings of sections. */
export class Geometry {
  readonly rowHeight: number;
  readonly #sectionHeight: number;
  /** Rows that head a section, in order. */
  readonly #sections: readonly number[];
  readonly #lefts: readonly number[];
  readonly rows: number;

  constructor(model: GridModel, isTouch: boolean) {
    this.rowHeight = isTouch ? 40 : 28;
    this.#sectionHeight = isTouch ? 44 : 34;
    this.rows = model.rows;
    const sections: number[] = [];
    // Headings stand in the first thousand rows or nowhere: a table of 100 000 rows is one section.
    for (let row = 0; row < Math.min(model.rows, 1000); row++) {
      if (model.cell(row, 0)?.look === 'section') sections.push(row);
    }
    this.#sections = sections;
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

  top(row: number): number {
    return row * this.rowHeight + this.#sectionsBefore(row) * (this.#sectionHeight - this.rowHeight);
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

  #sectionsBefore(row: number): number {
    let low = 0;
    let high = this.#sections.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#sections[middle] ?? 0) < row) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
