import { HEAD_HEIGHT, HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt, GridModel, Selection } from './model.ts';

export const same = (a: CellAt, b: CellAt): boolean => a.row === b.row && a.column === b.column;

/** What of the grid a pointer is on: a cell, the head of a column or of a row, or the corner that stands for everything. */
export type Part = 'cell' | 'column' | 'row' | 'all';

export function partOf(target: Element): Part {
  if (target.closest('.corner')) return 'all';
  if (target.closest('.head')) return 'column';
  return target.closest('.rowhead') ? 'row' : 'cell';
}

/** The cell under a pointer; beside the cells, the nearest one. */
export function cellUnder(event: MouseEvent, scroller: HTMLElement, geometry: Geometry): CellAt {
  const box = scroller.getBoundingClientRect();
  return {
    row: geometry.rowAt(event.clientY - box.top - HEAD_HEIGHT + scroller.scrollTop),
    column: geometry.columnAt(event.clientX - box.left - HEAD_WIDTH + scroller.scrollLeft),
  };
}

/** What is selected by pointing at a part of the grid; `isExtending` keeps the far corner of the selection. The active
 *  cell of whole columns and rows is their first. */
export function pointed(
  part: Part,
  at: CellAt,
  { rows, columns }: GridModel,
  { anchor }: Selection,
  isExtending: boolean,
): Selection {
  const last = { row: rows - 1, column: columns.length - 1 };
  switch (part) {
    case 'cell':
      return { anchor: isExtending ? anchor : at, focus: at };
    case 'column':
      return {
        anchor: { row: last.row, column: isExtending ? anchor.column : at.column },
        focus: { row: 0, column: at.column },
      };
    case 'row':
      return {
        anchor: { row: isExtending ? anchor.row : at.row, column: last.column },
        focus: { row: at.row, column: 0 },
      };
    case 'all':
      return { anchor: last, focus: { row: 0, column: 0 } };
  }
}

export const isWithin = ({ row, column }: CellAt, { anchor, focus }: Selection): boolean =>
  row >= Math.min(anchor.row, focus.row) &&
  row <= Math.max(anchor.row, focus.row) &&
  column >= Math.min(anchor.column, focus.column) &&
  column <= Math.max(anchor.column, focus.column);
