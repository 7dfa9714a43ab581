/** A curve is drawn in a few plots at most, each of one size at a time. */
const MOST = 8;

/** Keeps what follows from a thing as long as the thing lives: a cell that stays as it is keeps its curve, so that it need not be
 *  worked out for every picture. */
export class Kept<Thing extends object, Result> {
  readonly #known = new WeakMap<Thing, Map<string, Result>>();

  /** @param key - What else the result depends on. */
  get(thing: Thing, key: string, make: () => Result): Result {
    const known = this.#known.get(thing) ?? new Map<string, Result>();
    const held = known.get(key);
    if (held !== undefined) return held;
    if (known.size >= MOST) known.clear();
    const made = make();
    this.#known.set(thing, known.set(key, made));
    return made;
  }
}
