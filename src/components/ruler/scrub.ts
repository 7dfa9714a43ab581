/** What a scrub tells: `input` while it goes on, then `change`, or `cancel` when it was put back. */
export interface ScrubEvents {
  input(value: number): void;
  change(value: number): void;
  cancel(origin: number): void;
}

/** Milliseconds after the last key press at which the value counts as chosen. */
const KEYS_REST = 900;

/** One scrub of a value from grabbing to letting go. Tells of at most one value a frame, always the newest. */
export class Scrub {
  readonly #events: ScrubEvents;
  #origin: number | undefined;
  #live = 0;
  #frame = 0;
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor(events: ScrubEvents) {
    this.#events = events;
  }

  /** The value while the scrub goes on. */
  get live(): number | undefined {
    return this.#origin === undefined ? undefined : this.#live;
  }

  /** Moves on to a value; the first move begins the scrub at `from`. */
  move(from: number, value: number): void {
    clearTimeout(this.#rest);
    if (this.#origin === undefined) [this.#origin, this.#live] = [from, from];
    if (value === this.#live) return;
    this.#live = value;
    this.#frame ||= requestAnimationFrame(() => {
      this.#frame = 0;
      this.#events.input(this.#live);
    });
  }

  /** Settles by itself when no further move comes: keys have no letting go. */
  settleSoon(): void {
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.settle(), KEYS_REST);
  }

  settle(): void {
    const origin = this.#end();
    if (origin !== undefined && origin !== this.#live) this.#events.change(this.#live);
    else if (origin !== undefined) this.#events.cancel(origin);
  }

  cancel(): void {
    const origin = this.#end();
    if (origin !== undefined) this.#events.cancel(origin);
  }

  #end(): number | undefined {
    clearTimeout(this.#rest);
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    const origin = this.#origin;
    this.#origin = undefined;
    return origin;
  }
}
