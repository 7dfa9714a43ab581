import type { CellRecord } from '../../functions/values/record.ts';

/** A handle is a number between these two; a text cut short by a function is none. Typed texts are kept free of them. */
const START = '\uE000';
const END = '\uE001';
const HANDLES = /\uE000\d+\uE001/g;
const REMAINS = /\uE000\d*\uE001?|\uE001/g;

/** Collecting costs a walk over the store, so it waits until at least this many records could be dropped. */
const LEAST_GARBAGE = 256;

/**
 * Records that travel through the engine as short texts. A record is known by what made it (function and arguments), so a
 * handle changes exactly when the content does: the engine stops recalculating where nothing changed.
 */
export class RecordStore {
  readonly #byHandle = new Map<string, CellRecord>();
  readonly #handleOf = new Map<string, string>();
  readonly #keyOf = new Map<string, string>();
  #next = 0;
  #liveAtLastSweep = 0;

  get size(): number {
    return this.#byHandle.size;
  }

  static isHandle(value: unknown): value is string {
    return typeof value === 'string' && value.startsWith(START);
  }

  /** All handles in a text; they may stand among other words. */
  static handlesIn(text: string): readonly string[] {
    return text.match(HANDLES) ?? [];
  }

  /** The handle of a record made earlier in the same way. */
  find(key: string): string | undefined {
    return this.#handleOf.get(key);
  }

  keep(key: string, record: CellRecord): string {
    const handle = `${START}${String(this.#next++)}${END}`;
    this.#byHandle.set(handle, record);
    this.#handleOf.set(key, handle);
    this.#keyOf.set(handle, key);
    return handle;
  }

  record(handle: string): CellRecord | undefined {
    return this.#byHandle.get(handle);
  }

  /** Puts readable words in the place of handles that ended up inside a text. */
  readable(text: string, titleOf: (record: CellRecord) => string): string {
    return text.replaceAll(REMAINS, (handle) => {
      const record = this.#byHandle.get(handle);
      return record ? titleOf(record) : '';
    });
  }

  /** Whether enough may be dropped to be worth a sweep. */
  get isWorthSweeping(): boolean {
    return this.size > 2 * this.#liveAtLastSweep + LEAST_GARBAGE;
  }

  /** Drops what no cell holds; what is dropped is computed again when asked for. */
  sweep(live: ReadonlySet<string>): void {
    for (const handle of this.#byHandle.keys()) {
      if (live.has(handle)) continue;
      this.#byHandle.delete(handle);
      this.#handleOf.delete(this.#keyOf.get(handle) ?? '');
      this.#keyOf.delete(handle);
    }
    this.#liveAtLastSweep = this.size;
  }
}
