import { isRefusal, type Refusal } from '../document/command.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { openStore, settled, type Store } from './database.ts';

/** What a shelf holds, and why a driver on it cannot be read, where there is such a one. It stays where it is. */
export interface Kept {
  readonly entries: readonly DriverEntry[];
  readonly refused: readonly string[];
}

/** How a driver becomes something that can be stored, and back. */
export interface EntryCodec {
  encode(entry: DriverEntry): unknown;
  decode(content: unknown): DriverEntry | Refusal;
}

/** One's own drivers, for every document: in IndexedDB, a key a driver, so that two tabs never write over each other's. Every
 *  method rejects where the browser refuses. */
export class ShelfStorage {
  readonly #codec: EntryCodec;
  readonly #store: Store;

  constructor(codec: EntryCodec, database = 'octavo-shelf') {
    this.#codec = codec;
    this.#store = openStore(database, 'drivers');
  }

  async list(): Promise<Kept> {
    const contents = await this.#store('readonly', (store) => settled<unknown[]>(store.getAll()));
    const read = contents.map((each) => this.#codec.decode(each));
    return {
      entries: read.flatMap((each) => (isRefusal(each) ? [] : [each])),
      refused: read.flatMap((each) => (isRefusal(each) ? [each.refused] : [])),
    };
  }

  /** Keeps drivers as one step. A driver that another tab changed since `before` was read is not written over: it is given back,
   *  and nothing of it is kept. */
  put(entries: readonly DriverEntry[], before: readonly DriverEntry[]): Promise<readonly DriverEntry[]> {
    return this.#store('readwrite', async (store) => {
      const stale: DriverEntry[] = [];
      for (const entry of entries) {
        const held = store.get(entry.id);
        held.onsuccess = () => {
          if (this.#isStale(held.result, entry.id, before)) stale.push(entry);
          else store.put(this.#codec.encode(entry), entry.id);
        };
      }
      // Only the end of the transaction says that the data are kept.
      if (entries.length > 0) await settled(store.transaction);
      return stale;
    });
  }

  async remove(id: string): Promise<void> {
    await this.#store('readwrite', (store) => {
      store.delete(id);
      return settled(store.transaction);
    });
  }

  /** Whether what is stored is no longer what was read: compared as it is written. */
  #isStale(held: unknown, id: string, before: readonly DriverEntry[]): boolean {
    const known = before.find((each) => each.id === id);
    return held !== undefined && (!known || JSON.stringify(held) !== JSON.stringify(this.#codec.encode(known)));
  }
}
