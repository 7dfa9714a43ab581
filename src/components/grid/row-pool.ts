import type { Geometry } from './geometry.ts';
import type { CellAt, GridModel, Selection } from './model.ts';
import { cellId, drawRow, hide, newRow, type PooledRow, type Sight, type Visible } from './pooled-row.ts';

/** A pool a little larger than asked for is not built anew for the row or column more that scrolling brings into view. */
const SPARE_ROWS = 2;
const SPARE_COLUMNS = 2;
/** Milliseconds without scrolling after which the rows are put in order: moving them costs as much as a whole new view. */
const REST = 200;

/** The elements that show the visible cells, used again as the sheet scrolls: row r has slot r modulo the size of the pool.
 *  The active cell is kept even out of view, so that it can always be announced. */
export class RowPool {
  readonly #body: HTMLElement;
  /** The numbers of the rows, in one column that stays where it is: were they held each in its row, the browser would keep
   *  every row as a picture of its own, and each frame would cost twice as much. */
  readonly #numbers = document.createElement('div');
  #rows: PooledRow[] = [];
  #columns = 0;
  #pinned: PooledRow | undefined;
  #generation = 0;
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor(body: HTMLElement) {
    this.#body = body;
    this.#numbers.className = 'numbers';
    this.#numbers.ariaHidden = 'true';
    body.append(this.#numbers);
  }

  /** Draws what is in view. After mere scrolling (`isFresh` false) cells that are drawn already are left alone. */
  draw(visible: Visible, model: GridModel, geometry: Geometry, selection: Selection, isFresh: boolean): void {
    if (isFresh) this.#generation++;
    const size = visible.bottom - visible.top + 1;
    const columns = visible.right - visible.left + 1;
    if (size > this.#rows.length || columns > this.#columns) this.#grow(size, columns);
    const sight: Sight = { ...visible, model, geometry, selection, generation: this.#generation };
    const last = Math.min(visible.top + this.#rows.length - 1, model.rows - 1);
    for (let row = visible.top; row <= last; row++) {
      const pooled = this.#rows[row % this.#rows.length];
      if (pooled) drawRow(pooled, row, sight);
    }
    for (const pooled of this.#rows) if (pooled.row < visible.top || pooled.row > last) hide(pooled);
    this.#pin(selection.focus, last, sight);
  }

  /** Puts the rows in the order in which they are read once scrolling rests; it leaves them in the order of their slots. */
  orderSoon(): void {
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#order(), REST);
  }

  #order(): void {
    const shown = this.#rows.filter(({ row }) => row >= 0).sort((a, b) => a.row - b.row);
    const isOrdered = shown.every(({ element }, index) => {
      const next = shown[index + 1]?.element;
      return !next || element.compareDocumentPosition(next) === Node.DOCUMENT_POSITION_FOLLOWING;
    });
    if (!isOrdered) this.#body.prepend(...shown.map(({ element }) => element));
  }

  /** The id of the active cell's element, for aria-activedescendant. */
  static idOf = (at: CellAt): string => cellId(at.row, at.column);

  #pin(active: CellAt, last: number, sight: Sight): void {
    const isRowSeen = active.row >= sight.top && active.row <= last;
    const isColumnSeen = active.column >= sight.left && active.column <= sight.right;
    if (isRowSeen && isColumnSeen) {
      if (this.#pinned) hide(this.#pinned);
      return;
    }
    this.#pinned ??= this.#newPinned();
    if (!this.#pinned.element.isConnected) this.#body.prepend(this.#pinned.element);
    drawRow(this.#pinned, active.row, {
      ...sight,
      top: active.row,
      bottom: active.row,
      left: active.column,
      right: active.column,
    });
  }

  #newPinned(): PooledRow {
    const pinned = newRow(1);
    // Its own row may be in view, and must be reached below it.
    pinned.element.dataset['pinned'] = '';
    return pinned;
  }

  #grow(size: number, columns: number): void {
    this.#columns = Math.max(columns + SPARE_COLUMNS, this.#columns);
    for (const { element, number } of this.#rows) {
      element.remove();
      number.remove();
    }
    const rows = Math.max(size + SPARE_ROWS, this.#rows.length);
    this.#rows = Array.from({ length: rows }, () => newRow(this.#columns));
    this.#body.prepend(...this.#rows.map(({ element }) => element));
    this.#numbers.append(...this.#rows.map(({ number }) => number));
  }
}
