import { HEAD_HEIGHT, HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt } from './model.ts';

/** Scrolls just so far that a cell is seen, clear of the heads. */
export function reveal(scroller: HTMLElement, geometry: Geometry, { row, column }: CellAt): void {
  const top = geometry.top(row);
  const bottom = top + geometry.heightOf(row);
  const left = geometry.left(column);
  const right = left + geometry.widthOf(column);
  const height = scroller.clientHeight - HEAD_HEIGHT;
  const width = scroller.clientWidth - HEAD_WIDTH;
  if (top < scroller.scrollTop) scroller.scrollTop = top;
  else if (bottom > scroller.scrollTop + height) scroller.scrollTop = bottom - height;
  if (left < scroller.scrollLeft) scroller.scrollLeft = left;
  else if (right > scroller.scrollLeft + width) scroller.scrollLeft = Math.min(left, right - width);
}
