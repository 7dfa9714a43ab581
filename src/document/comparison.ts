import type { CellState, Place } from '../engine/types.ts';
import type { Answer } from './engine-link.ts';
import { keyOf } from './preview.ts';
import type { Cell } from './types.ts';

/** A cell at one moment: what was typed there and what came of it. */
export interface Moment {
  readonly state: CellState | undefined;
  readonly cell: Cell | undefined;
}

/** A cell and how it was before. */
export interface Before {
  readonly place: Place;
  readonly moment: Moment;
}

/** The cells that one edit touched, each as it was before the edit. A drag is one edit, however many texts it tries. */
export class Comparison {
  readonly causes: ReadonlySet<string>;
  readonly #before = new Map<string, Before>();

  constructor(causes: readonly Place[]) {
    this.causes = new Set(causes.map(keyOf));
  }

  /** Takes in an answer; only the first change of a cell says what it was before. */
  take({ cells }: Answer, cellBefore: (place: Place) => Cell | undefined): void {
    for (const { place, before } of cells) {
      const key = keyOf(place);
      if (!this.#before.has(key)) this.#before.set(key, { place, moment: { state: before, cell: cellBefore(place) } });
    }
  }

  [Symbol.iterator](): Iterator<Before> {
    return this.#before.values();
  }
}
