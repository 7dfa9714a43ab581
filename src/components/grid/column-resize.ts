const NARROWEST = 48;
const WIDEST = 900;

/** Dragging the right edge of a column's head. */
export class ColumnResize {
  readonly #resized: (column: number, width: number) => void;
  readonly #widthOf: (column: number) => number;

  constructor(resized: (column: number, width: number) => void, widthOf: (column: number) => number) {
    this.#resized = resized;
    this.#widthOf = widthOf;
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
    const at = (move: PointerEvent): number =>
      Math.round(Math.min(WIDEST, Math.max(NARROWEST, width + move.clientX - start)));
    const move = (next: PointerEvent): void => {
      if (head) head.style.width = `${String(at(next))}px`;
    };
    target.setPointerCapture(event.pointerId);
    target.addEventListener('pointermove', move);
    target.addEventListener(
      'pointerup',
      (last) => {
        target.removeEventListener('pointermove', move);
        this.#resized(column, at(last));
      },
      { once: true },
    );
    return true;
  }
}
