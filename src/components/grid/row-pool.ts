import { columnLetters } from '../../formula/address.ts';
import { drawCell, lookKey, type CellLook } from './cell-view.ts';
import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt, GridModel, Selection } from './model.ts';

interface PooledCell {
  readonly element: HTMLElement;
  key: string;
  at: string;
}

interface PooledRow {
  readonly element: HTMLElement;
  readonly head: HTMLElement;
  readonly cells: PooledCell[];
  row: number;
}

/** The rectangle of cells that is in view, a margin included. */
export interface Visible {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** The elements that show the visible cells, used again as the sheet scrolls: row r has slot r modulo the size of the pool.
 *  The row of the active cell is kept even out of view, so that it can always be announced. */
export class RowPool {
  readonly #body: HTMLElement;
  #rows: PooledRow[] = [];
  #size = 0;
  #columns = 0;
  #pinned: PooledRow | undefined;

  constructor(body: HTMLElement) {
    this.#body = body;
  }

  draw(visible: Visible, model: GridModel, geometry: Geometry, selection: Selection): void {
    const size = visible.bottom - visible.top + 1;
    const columns = visible.right - visible.left + 1;
    if (size > this.#size || columns > this.#columns)
      this.#grow(Math.max(size, this.#size), Math.max(columns, this.#columns));
    const last = Math.min(visible.top + this.#size - 1, model.rows - 1);
    for (let row = visible.top; row <= last; row++) {
      const pooled = this.#rows[row % this.#size];
      if (pooled) this.#drawRow(pooled, row, visible, model, geometry, selection);
    }
    for (const pooled of this.#rows) if (pooled.row < visible.top || pooled.row > last) hide(pooled);
    this.#pin(selection.focus, visible, last, model, geometry, selection);
  }

  /** The id of the active cell's element, for aria-activedescendant. */
  static idOf = ({ row, column }: CellAt): string => `cell-${columnLetters(column)}${String(row + 1)}`;

  #pin(
    active: CellAt,
    visible: Visible,
    last: number,
    model: GridModel,
    geometry: Geometry,
    selection: Selection,
  ): void {
    const isSeen = active.row >= visible.top && active.row <= last;
    const isColumnSeen = active.column >= visible.left && active.column <= visible.right;
    if (isSeen && isColumnSeen) {
      if (this.#pinned) hide(this.#pinned);
      return;
    }
    this.#pinned ??= this.#newRow(1);
    if (!this.#pinned.element.isConnected) this.#body.prepend(this.#pinned.element);
    const only = { top: active.row, bottom: active.row, left: active.column, right: active.column };
    this.#drawRow(this.#pinned, active.row, only, model, geometry, selection);
  }

  #drawRow(
    pooled: PooledRow,
    row: number,
    visible: Visible,
    model: GridModel,
    geometry: Geometry,
    selection: Selection,
  ): void {
    const isHeading = model.cell(row, 0)?.look === 'section';
    if (pooled.row !== row) {
      pooled.row = row;
      pooled.element.hidden = false;
      pooled.element.setAttribute('aria-rowindex', String(row + 2));
      pooled.head.textContent = String(row + 1);
    }
    const { style } = pooled.element;
    setStyle(style, 'top', `${String(geometry.top(row))}px`);
    setStyle(style, 'height', `${String(geometry.heightOf(row))}px`);
    setStyle(style, 'width', `${String(HEAD_WIDTH + geometry.width)}px`);
    pooled.element.className = isHeading ? 'row section' : 'row';
    pooled.head.className = row === selection.focus.row ? 'rowhead active' : 'rowhead';
    const count = pooled.cells.length;
    for (let column = visible.left; column < visible.left + count; column++) {
      const cell = pooled.cells[column % count];
      if (!cell) continue;
      if (column > visible.right || column >= model.columns.length) {
        cell.element.hidden = true;
        cell.at = '';
      } else drawInto(cell, row, column, isHeading, model, geometry, selection);
    }
  }

  #grow(size: number, columns: number): void {
    this.#size = size;
    this.#columns = columns;
    this.#rows = Array.from({ length: size }, () => this.#newRow(columns));
    this.#body.replaceChildren(
      ...this.#rows.map(({ element }) => element),
      ...[...this.#body.children].filter((each) => !each.classList.contains('row')),
    );
  }

  #newRow(columns: number): PooledRow {
    const element = document.createElement('div');
    element.className = 'row';
    element.setAttribute('role', 'row');
    const head = document.createElement('div');
    head.className = 'rowhead';
    head.setAttribute('role', 'rowheader');
    head.setAttribute('aria-colindex', '1');
    const cells = Array.from({ length: columns }, (): PooledCell => {
      const cell = document.createElement('div');
      cell.className = 'cell';
      cell.setAttribute('role', 'gridcell');
      return { element: cell, key: '\0', at: '' };
    });
    element.append(head, ...cells.map((cell) => cell.element));
    return { element, head, cells, row: -1 };
  }
}

function drawInto(
  pooled: PooledCell,
  row: number,
  column: number,
  isHeading: boolean,
  model: GridModel,
  geometry: Geometry,
  selection: Selection,
): void {
  const { element } = pooled;
  const id = RowPool.idOf({ row, column });
  if (pooled.at !== id) {
    pooled.at = id;
    element.id = id;
    element.hidden = false;
    element.setAttribute('aria-colindex', String(column + 2));
  }
  setStyle(element.style, 'left', `${String(HEAD_WIDTH + geometry.left(column))}px`);
  setStyle(element.style, 'width', `${String(geometry.widthOf(column))}px`);
  const look: CellLook = {
    cell: model.cell(row, column),
    shown: model.shown(row, column),
    before: model.before?.(row, column),
    finding: model.finding?.(row, column),
    tally: isHeading && column === 0 ? model.tally?.(row) : undefined,
    line: model.columns[column]?.line,
  };
  const key = lookKey(look);
  if (pooled.key !== key) {
    pooled.key = key;
    drawCell(element, look);
  }
  const isSelected = String(within(row, column, selection));
  if (element.getAttribute('aria-selected') !== isSelected) element.setAttribute('aria-selected', isSelected);
}

function hide(pooled: PooledRow): void {
  if (pooled.row === -1) return;
  pooled.row = -1;
  pooled.element.hidden = true;
  for (const cell of pooled.cells) {
    cell.element.removeAttribute('id');
    cell.at = '';
  }
}

function setStyle(style: CSSStyleDeclaration, name: 'left' | 'top' | 'width' | 'height', value: string): void {
  if (style[name] !== value) style[name] = value;
}

const within = (row: number, column: number, { anchor, focus }: Selection): boolean =>
  row >= Math.min(anchor.row, focus.row) &&
  row <= Math.max(anchor.row, focus.row) &&
  column >= Math.min(anchor.column, focus.column) &&
  column <= Math.max(anchor.column, focus.column);
