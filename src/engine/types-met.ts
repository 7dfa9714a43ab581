import { sameType } from '../formula/type-of.ts';
import type { CellType } from '../formula/types.ts';

/** Most sheets hold a dozen. */
const MOST = 64;

/** The types that formulas have. Equal ones are one and the same: they are compared at once, and cross to the page once. */
export class Types {
  #met: CellType[] = [];

  of(type: CellType): CellType {
    const known = this.#met.find((each) => each === type || sameType(each, type));
    if (known) return known;
    if (this.#met.length >= MOST) this.#met = [];
    this.#met.push(type);
    return type;
  }
}
