import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { Visible } from './pooled-row.ts';

const MARGIN_ROWS = 3;

/** What is seen of the sheet, CSS pixels. */
export type View = Pick<HTMLElement, 'scrollTop' | 'scrollLeft' | 'clientHeight' | 'clientWidth'>;

/** Measures; the page is laid out for it where anything has changed. */
export const viewOf = ({ scrollTop, scrollLeft, clientHeight, clientWidth }: HTMLElement): View => ({
  scrollTop,
  scrollLeft,
  clientHeight,
  clientWidth,
});

/** The cells in a view, a margin included. */
export function visibleIn(
  { scrollTop, scrollLeft, clientHeight, clientWidth }: View,
  geometry: Geometry,
  rows: number,
): Visible {
  return {
    top: Math.max(0, geometry.rowAt(scrollTop) - MARGIN_ROWS),
    bottom: Math.min(rows - 1, geometry.rowAt(scrollTop + clientHeight) + MARGIN_ROWS),
    left: geometry.columnAt(scrollLeft),
    right: geometry.columnAt(scrollLeft + clientWidth),
    width: clientWidth - HEAD_WIDTH,
  };
}
