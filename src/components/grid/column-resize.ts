const NARROWEST = 48;
const WIDEST = 900;
/** What a key press adds to the width of a column, CSS pixels. */
const STEP = 8;

/** A width that a column can have, nearest to the one wished for. */
const columnWidth = (wished: number): number => Math.round(Math.min(WIDEST, Math.max(NARROWEST, wished)));

/** Dragging the right edge of a column's head, or moving it by a key. */
export class ColumnResize {
  readonly #resized: (column: number, width: number) => void;
  readonly #widthOf: (column: number) => number;

  constructor(resized: (column: number, width: number) => void, widthOf: (column: number) => number) {
    this.#resized = resized;
    this.#widthOf = widthOf;
  }

  step(column: number, direction: 1 | -1): void {
    const width = this.#widthOf(column);
    const wished = columnWidth(width + direction * STEP);
    if (wished !== width) this.#resized(column, wished);
  }

  /** Whether the press was on a grip; then the drag is followed until it is let go. */
  begin(event: PointerEvent, target: HTMLElement): boolean {
    const grip = target.dataset['grip'];
    if (grip === undefined) return false;
    event.preventDefault();
    const column = Number(grip);
    const start = event.clientX;
    const width = this.#widthOf(column);
    const head = target.parentElement;
    const at = (move: PointerEvent): number => columnWidth(width + move.clientX - start);
    const move = (next: PointerEvent): void => {
      if (head) head.style.width = `${String(at(next))}px`;
    };
    target.setPointerCapture(event.pointerId);
    target.addEventListener('pointermove', move);
    const end = (last: PointerEvent): void => {
      for (const name of ['pointerup', 'pointercancel'] as const) target.removeEventListener(name, end);
      target.removeEventListener('pointermove', move);
      const wished = last.type === 'pointerup' ? at(last) : width;
      if (head) head.style.width = `${String(wished)}px`;
      if (wished !== width) this.#resized(column, wished);
    };
    for (const name of ['pointerup', 'pointercancel'] as const) target.addEventListener(name, end);
    return true;
  }
}
