import { isRefusal, type Refusal } from '../document/command.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { openStore, settled, type Store } from './database.ts';

/** What a shelf holds, and why a driver on it cannot be read, where there is such a one. It stays where it is. */
export interface Kept {
  readonly entries: readonly DriverEntry[];
  readonly refused: readonly string[];
}

/** Where one's own drivers are kept, for every document. Every method rejects where the browser refuses. */
export interface ShelfStorage {
  list(): Promise<Kept>;
  /** Keeps drivers as one step. A driver that another tab changed since `before` was read is not written over: it is given back,
   *  and nothing of it is kept. */
  put(entries: readonly DriverEntry[], before: readonly DriverEntry[]): Promise<readonly DriverEntry[]>;
  remove(id: string): Promise<void>;
}

/** How a driver becomes something that can be stored, and back. */
export interface EntryCodec {
  encode(entry: DriverEntry): unknown;
  decode(content: unknown): DriverEntry | Refusal;
}

function kept(contents: readonly unknown[], { decode }: EntryCodec): Kept {
  const read = contents.map(decode);
  return {
    entries: read.flatMap((each) => (isRefusal(each) ? [] : [each])),
    refused: read.flatMap((each) => (isRefusal(each) ? [each.refused] : [])),
  };
}

/** Whether what is stored is still what was read: compared as it is written. */
function isStale(held: unknown, id: string, before: readonly DriverEntry[], { encode }: EntryCodec): boolean {
  const known = before.find((each) => each.id === id);
  return held !== undefined && (known === undefined || JSON.stringify(held) !== JSON.stringify(encode(known)));
}

/** A shelf in IndexedDB, a key a driver: two tabs never write over each other's drivers. */
export class BrowserShelf implements ShelfStorage {
  readonly #codec: EntryCodec;
  readonly #store: Store;

  constructor(codec: EntryCodec, database = 'octavo-shelf') {
    this.#codec = codec;
    this.#store = openStore(database, 'drivers');
  }

  async list(): Promise<Kept> {
    return kept(await this.#store('readonly', (store) => settled<unknown[]>(store.getAll())), this.#codec);
  }

  put(entries: readonly DriverEntry[], before: readonly DriverEntry[]): Promise<readonly DriverEntry[]> {
    const codec = this.#codec;
    return this.#store('readwrite', async (store) => {
      const stale: DriverEntry[] = [];
      for (const entry of entries) {
        const held = store.get(entry.id);
        held.onsuccess = () => {
          if (isStale(held.result, entry.id, before, codec)) stale.push(entry);
          else store.put(codec.encode(entry), entry.id);
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
}

/** A shelf for as long as the page lives: in tests, and where the browser keeps nothing. */
export class MemoryShelf implements ShelfStorage {
  readonly #codec: EntryCodec;
  readonly #contents = new Map<string, unknown>();

  constructor(codec: EntryCodec) {
    this.#codec = codec;
  }

  async list(): Promise<Kept> {
    return kept(structuredClone([...this.#contents.values()]), this.#codec);
  }

  async put(entries: readonly DriverEntry[], before: readonly DriverEntry[]): Promise<readonly DriverEntry[]> {
    const stale = entries.filter(({ id }) => isStale(this.#contents.get(id), id, before, this.#codec));
    for (const each of entries) {
      if (!stale.includes(each)) this.#contents.set(each.id, structuredClone(this.#codec.encode(each)));
    }
    return stale;
  }

  async remove(id: string): Promise<void> {
    this.#contents.delete(id);
  }
}
