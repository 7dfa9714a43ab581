import type { Geometry } from './geometry.ts';
import type { GridModel, Selection } from './model.ts';
import { cellUnder, isWithin, partOf, pointed, type Part } from './pointed.ts';

/** The grid as a pointer finds it. */
export interface Seen {
  readonly model: GridModel;
  readonly selection: Selection;
  readonly geometry: Geometry;
  readonly scroller: HTMLElement;
}

/** What a pointer does in the grid. */
export interface PointerActs {
  /** Nothing before the grid stands. */
  seen(): Seen | undefined;
  /** Takes a press that is no selection, as on the edge of a column's head. */
  isTaken(event: PointerEvent, target: HTMLElement): boolean;
  /** Settles what is being typed. */
  settle(): void;
  /** @param isStill - What is selected is seen where it is. */
  select(selection: Selection, isStill: boolean): void;
  edit(): void;
  menu(at: { readonly x: number; readonly y: number }): void;
}

/** Selecting with a pointer: a cell, whole rows and columns by their heads, all from the corner; a drag extends. */
export class GridPointer {
  readonly #acts: PointerActs;
  #dragging: Part | undefined;

  constructor(acts: PointerActs) {
    this.#acts = acts;
  }

  readonly press = (event: PointerEvent): void => {
    const target = targetOf(event);
    const seen = this.#acts.seen();
    if (!seen || event.button !== 0 || target instanceof HTMLInputElement) return;
    if (this.#acts.isTaken(event, target)) return;
    if (target === seen.scroller) return; // Its scroll bars, or beside the last cell.
    this.#acts.settle();
    this.#dragging = partOf(target);
    this.#point(this.#dragging, event, event.shiftKey);
  };

  readonly drag = (event: PointerEvent): void => {
    if (!this.#dragging || event.buttons === 0) return;
    const before = this.#acts.seen()?.selection;
    this.#point(this.#dragging, event, true);
    const { selection, scroller } = this.#acts.seen() ?? {};
    // Caught once it selects more: a click that is caught would no longer be one on the cell.
    if (selection !== before && event.pointerType === 'mouse') scroller?.setPointerCapture(event.pointerId);
  };

  readonly release = (): void => {
    this.#dragging = undefined;
  };

  readonly double = (event: MouseEvent): void => {
    if (targetOf(event).closest('.cell')) this.#acts.edit();
  };

  readonly context = (event: MouseEvent): void => {
    const target = targetOf(event);
    const seen = this.#acts.seen();
    // The input over a cell keeps the browser's own menu.
    if (!seen || target instanceof HTMLInputElement) return;
    event.preventDefault();
    const part = partOf(target);
    if (part !== 'cell' || !isWithin(cellUnder(event, seen.scroller, seen.geometry), seen.selection))
      this.#point(part, event, false);
    this.#acts.menu({ x: event.clientX, y: event.clientY });
  };

  /** Whole columns and rows are selected where they are, without a jump to their first cell. */
  #point(part: Part, event: MouseEvent, isExtending: boolean): void {
    const seen = this.#acts.seen();
    if (!seen) return;
    const at = cellUnder(event, seen.scroller, seen.geometry);
    this.#acts.select(pointed(part, at, seen.model, seen.selection, isExtending), part !== 'cell');
  }
}

/** Inside of components as well. */
const targetOf = (event: Event): HTMLElement => event.composedPath()[0] as HTMLElement;
