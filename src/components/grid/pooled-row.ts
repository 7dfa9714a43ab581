import { columnLetters } from '../../formula/address.ts';
import { setText } from './cell-parts.ts';
import { drawCell, lookAt, lookKey, type CellLook } from './cell-view.ts';
import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { GridModel, Selection } from './model.ts';
import { isWithin } from './pointed.ts';

/** The rectangle of cells that is in view, a margin included. */
export interface Visible {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  /** How much of the sheet's width is seen, CSS pixels. */
  readonly width: number;
}

interface PooledCell {
  readonly element: HTMLElement;
  left: number;
  width: number;
  look: CellLook | undefined;
  /** How it looks, see lookKey. */
  key: string;
  /** What it is filled with, see drawCell. */
  parts: string;
  row: number;
  column: number;
  isSelected: boolean | undefined;
  generation: number;
}

/** The elements of a row, free to show any row. */
export interface PooledRow {
  readonly element: HTMLElement;
  readonly head: HTMLElement;
  /** The number of the row as it is seen: it stands in a column of its own, beside all rows. */
  readonly number: HTMLElement;
  readonly cells: readonly PooledCell[];
  /** The row that it shows, -1 while it is hidden. */
  row: number;
  /** Where it was put last: asking an element for its style costs more than most of what is drawn into it. */
  place: string;
  /** What was drawn into it last. */
  drawn: Sight | undefined;
}

/** All that decides what the cells in view show. The generation rises whenever something other than the view may have
 *  changed. */
export interface Sight extends Visible {
  readonly model: GridModel;
  readonly geometry: Geometry;
  readonly selection: Selection;
  readonly generation: number;
}

/** Beside a number with its unit there is room for the one before it in columns at least as wide, CSS pixels. */
const LEAST_FOR_TWO = 150;
/** A wider column is one of words: a number in it begins where they do. */
const MOST_FOR_NUMBERS = 240;

export const cellId = (row: number, column: number): string => `cell-${columnLetters(column)}${String(row + 1)}`;

export function newRow(columns: number): PooledRow {
  const element = document.createElement('div');
  element.className = 'row';
  element.setAttribute('role', 'row');
  const head = document.createElement('div');
  head.className = 'hidden';
  head.setAttribute('role', 'rowheader');
  head.setAttribute('aria-colindex', '1');
  const number = document.createElement('div');
  number.className = 'rowhead';
  const cells = Array.from({ length: columns }, (): PooledCell => {
    const cell = document.createElement('div');
    cell.className = 'cell';
    cell.setAttribute('role', 'gridcell');
    return {
      element: cell,
      left: Number.NaN,
      width: Number.NaN,
      look: undefined,
      key: '\0',
      parts: '',
      row: -1,
      column: -1,
      isSelected: undefined,
      generation: -1,
    };
  });
  element.append(head, ...cells.map((cell) => cell.element));
  return { element, head, number, cells, row: -1, place: '', drawn: undefined };
}

export function drawRow(pooled: PooledRow, row: number, sight: Sight): void {
  const { drawn } = pooled;
  const isDrawn = pooled.row === row && drawn?.generation === sight.generation;
  if (isDrawn && drawn.left === sight.left && drawn.right === sight.right && drawn.width === sight.width) return;
  pooled.drawn = sight;
  const { model, geometry, selection } = sight;
  const isHeading = model.cell(row, 0)?.look === 'section';
  if (pooled.row !== row) {
    pooled.row = row;
    pooled.element.hidden = pooled.number.hidden = false;
    pooled.element.setAttribute('aria-rowindex', String(row + 2));
    pooled.head.textContent = pooled.number.textContent = String(row + 1);
  }
  if (!isDrawn) {
    place(pooled, geometry.top(row), geometry.heightOf(row), HEAD_WIDTH + geometry.width);
    const kind = isHeading ? ' section' : geometry.heightOf(row) > geometry.rowHeight ? ' tall' : '';
    setText(pooled.element, 'className', `row${kind}`);
    setText(pooled.number, 'className', `rowhead${kind}${row === selection.focus.row ? ' active' : ''}`);
  }
  const count = pooled.cells.length;
  for (let column = sight.left; column < sight.left + count; column++) {
    const cell = pooled.cells[column % count];
    if (!cell) continue;
    if (column > sight.right || column >= model.columns.length) hideCell(cell);
    else {
      if (cell.row !== row || cell.column !== column || cell.generation !== sight.generation)
        drawInto(cell, row, column, isHeading, sight);
      placeCell(cell, sight);
    }
  }
}

export function hide(pooled: PooledRow): void {
  if (pooled.row === -1) return;
  pooled.row = -1;
  pooled.element.hidden = pooled.number.hidden = true;
  // An id must not stay behind on an element that is out of use: another one may show that cell.
  for (const cell of pooled.cells) hideCell(cell);
}

function hideCell(cell: PooledCell): void {
  if (cell.row === -1 && cell.element.hidden) return;
  cell.row = cell.column = -1;
  cell.element.hidden = true;
  cell.element.removeAttribute('id');
}

function drawInto(pooled: PooledCell, row: number, column: number, isHeading: boolean, sight: Sight): void {
  const { model, selection } = sight;
  const { element } = pooled;
  if (pooled.row !== row || pooled.column !== column) {
    if (pooled.row === -1) element.hidden = false;
    if (pooled.column !== column) element.setAttribute('aria-colindex', String(column + 2));
    pooled.row = row;
    pooled.column = column;
    element.id = cellId(row, column);
  }
  pooled.generation = sight.generation;
  const look = lookAt(model, row, column, isHeading);
  const key = pooled.look && isSame(pooled.look, look) ? pooled.key : lookKey(look);
  pooled.look = look;
  if (pooled.key !== key) {
    pooled.key = key;
    pooled.parts = drawCell(element, look, pooled.parts);
  }
  const isSelected = isWithin({ row, column }, selection);
  if (pooled.isSelected === isSelected) return;
  pooled.isSelected = isSelected;
  element.setAttribute('aria-selected', String(isSelected));
}

/** Most cells look as before because all is that was: that is seen without making their keys. */
const isSame = (a: CellLook, b: CellLook): boolean =>
  a.shown === b.shown &&
  a.cell === b.cell &&
  a.before === b.before &&
  a.finding === b.finding &&
  a.line === b.line &&
  a.tally === b.tally;

function placeCell(cell: PooledCell, { geometry, width: view }: Sight): void {
  const from = geometry.left(cell.column);
  const width = geometry.seenWidth(cell.column, view);
  if (cell.left !== from) cell.element.style.left = `${String(HEAD_WIDTH + from)}px`;
  if (cell.width !== width) {
    cell.element.style.width = `${String(width)}px`;
    cell.element.toggleAttribute('data-narrow', width < LEAST_FOR_TWO);
    cell.element.toggleAttribute('data-wide', width > MOST_FOR_NUMBERS);
  }
  cell.left = from;
  cell.width = width;
}

function place(pooled: PooledRow, top: number, height: number, width: number): void {
  const at = `top:${String(top)}px;height:${String(height)}px;`;
  const placed = `${at}width:${String(width)}px`;
  if (pooled.place === placed) return;
  pooled.place = placed;
  pooled.element.style.cssText = placed;
  pooled.number.style.cssText = at;
}
