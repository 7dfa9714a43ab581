import { HEAD_HEIGHT, HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt } from './model.ts';
import { viewOf, type View } from './view.ts';

/** Scrolls just so far that a cell is seen, clear of the heads.
 *  @param view - What is seen now.
 *  @returns Whether it scrolled. */
export function reveal(scroller: HTMLElement, view: View, geometry: Geometry, { row, column }: CellAt): boolean {
  const { scrollTop, scrollLeft } = view;
  const top = geometry.top(row);
  const bottom = top + geometry.heightOf(row);
  const left = geometry.left(column);
  const height = view.clientHeight - HEAD_HEIGHT;
  const width = view.clientWidth - HEAD_WIDTH;
  // What stands in the cell: a column that reaches past the border of the view is no reason to push the labels out of it.
  const right = left + geometry.seenWidth(column, width);
  // Clear of the labels as well, where both have room.
  const labels = Number.parseFloat(scroller.style.scrollPaddingLeft) || 0;
  const clear = column > 0 && right - left <= width - labels ? left - labels : left;
  const y = top < scrollTop ? top : Math.max(scrollTop, bottom - height);
  const x = clear < scrollLeft ? clear : right > scrollLeft + width ? Math.min(left, right - width) : scrollLeft;
  const isSeen = x === scrollLeft && y === scrollTop;
  if (!isSeen) scroller.scrollTo({ left: x, top: y, behavior: 'instant' });
  return !isSeen;
}

/** Keeps a cell in view that was in view, while what stands around the grid takes room from it; once it has the room again,
 *  the sheet stands as before, unless the reader has scrolled since. */
export class KeptInView {
  #width = 0;
  #height = 0;
  /** Where the sheet stood, and where it was scrolled to. */
  #moved: { readonly from: Corner; readonly to: Corner } | undefined;

  follow(scroller: HTMLElement, geometry: Geometry, at: CellAt): void {
    const { clientWidth, clientHeight, scrollLeft, scrollTop } = scroller;
    const x = geometry.left(at.column) - scrollLeft;
    const y = geometry.top(at.row) - scrollTop;
    const right = x + geometry.seenWidth(at.column, this.#width - HEAD_WIDTH);
    const wasSeen = x >= 0 && y >= 0 && right <= this.#width - HEAD_WIDTH && y < this.#height - HEAD_HEIGHT;
    const { from, to } = this.#moved ?? {};
    const isLeftThere =
      to !== undefined &&
      scrollLeft === Math.min(to.left, scroller.scrollWidth - clientWidth) &&
      scrollTop === Math.min(to.top, scroller.scrollHeight - clientHeight);
    if (wasSeen && from && isLeftThere) scroller.scrollTo({ ...from, behavior: 'instant' });
    if (wasSeen) reveal(scroller, viewOf(scroller), geometry, at);
    const here = { left: scroller.scrollLeft, top: scroller.scrollTop };
    const origin = isLeftThere && from ? from : { left: scrollLeft, top: scrollTop };
    const isHome = here.left === origin.left && here.top === origin.top;
    this.#moved = isHome ? undefined : { from: origin, to: here };
    this.#width = clientWidth;
    this.#height = clientHeight;
  }
}

interface Corner {
  readonly left: number;
  readonly top: number;
}
