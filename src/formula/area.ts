import { parseAddress } from './address.ts';

/** A rectangle of cells; rows and columns count from 0, both ends are inside. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Reads `B4` or `B4:C18`, corners in any order; gives nothing for any other text. */
export function readRectangle(cells: string): Rectangle | undefined {
  const [first = '', last = first, ...more] = cells.split(':');
  const a = parseAddress(first);
  const b = parseAddress(last);
  if (!a || !b || more.length > 0) return undefined;
  return {
    top: Math.min(a.row, b.row),
    left: Math.min(a.column, b.column),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.column, b.column),
  };
}

export const contains = (rectangle: Rectangle, row: number, column: number): boolean =>
  row >= rectangle.top && row <= rectangle.bottom && column >= rectangle.left && column <= rectangle.right;

/** How many cells there are in it. */
export const sizeOf = ({ top, left, bottom, right }: Rectangle): number => (bottom - top + 1) * (right - left + 1);
