import type { OctavoDocument } from '../document/types.ts';
import type { Refusal } from '../document/command.ts';
import { openStore, settled, type Store } from './database.ts';
import type { Codec, Conflict, Entry, SheetStorage, Shown, Stored } from './types.ts';

const ENTRY = 'entry:';
const CONTENT = 'content:';
const SHOWN = 'shown:';
/** In the local storage, which alone is written at once. */
const LEFT = 'octavo-left:';

/** Documents in IndexedDB. A document lies under three keys: its entry, its content, and the texts last shown. Listing
 *  reads entries only, and a save is one transaction, so that no half of it is ever seen. */
export class BrowserStorage implements SheetStorage {
  readonly #codec: Codec;
  readonly #store: Store;
  /** What this page has kept on leaving, and then stayed after all. */
  readonly #left = new Set<string>();

  constructor(codec: Codec, database = 'octavo') {
    this.#codec = codec;
    this.#store = openStore(database, 'documents');
  }

  async list(): Promise<readonly Entry[]> {
    const left = Object.keys(localStorage).filter((key) => key.startsWith(LEFT));
    // Fetched only where there is something: hardly ever.
    if (left.length > 0) await (await import('./save-left.ts')).saveLeft(this, this.#codec, left);
    const range = IDBKeyRange.bound(ENTRY, `${ENTRY}\uFFFF`);
    const entries = await this.#store('readonly', (store) => settled<Entry[]>(store.getAll(range)));
    return entries.sort((a, b) => b.saved - a.saved);
  }

  async open(id: string): Promise<Stored | Refusal | undefined> {
    const [entry, content, shown] = await this.#store('readonly', (store) =>
      Promise.all([
        settled<Entry | undefined>(store.get(ENTRY + id)),
        settled<unknown>(store.get(CONTENT + id)),
        settled<Shown | undefined>(store.get(SHOWN + id)),
      ]),
    );
    if (!entry) return undefined;
    const document = this.#codec.decode(content);
    if ('refused' in document) return document;
    return { document, revision: entry.revision, saved: entry.saved, shown: shown ?? new Map() };
  }

  async save(document: OctavoDocument, over: number): Promise<Entry | Conflict> {
    const content = this.#codec.encode(document);
    const outcome = await this.#store('readwrite', (store) => saveOver(store, document, content, over));
    const key = LEFT + document.id;
    if (!('conflict' in outcome) && this.#left.delete(key)) localStorage.removeItem(key);
    return outcome;
  }

  leave(document: OctavoDocument, over: number, saving?: OctavoDocument): void {
    const key = LEFT + document.id;
    const left = { over, content: this.#codec.encode(document), saving: saving && this.#codec.encode(saving) };
    try {
      localStorage.setItem(key, JSON.stringify(left));
      this.#left.add(key);
    } catch {
      // No room, or refused: what remains is the save itself, if the page has time for it.
    }
  }

  async saveShown(id: string, shown: Shown): Promise<void> {
    await this.#store('readwrite', (store) => {
      const held = store.getKey(ENTRY + id);
      held.onsuccess = () => {
        if (held.result !== undefined) store.put(shown, SHOWN + id);
      };
      return settled(store.transaction);
    });
  }

  async remove(id: string): Promise<void> {
    await this.#store('readwrite', (store) => {
      for (const key of [ENTRY, CONTENT, SHOWN]) store.delete(key + id);
      return settled(store.transaction);
    });
  }
}

/** Compares and writes inside one transaction: no other tab can come between. */
async function saveOver(
  store: IDBObjectStore,
  { id, title }: OctavoDocument,
  content: unknown,
  over: number,
): Promise<Entry | Conflict> {
  let outcome: Entry | Conflict | undefined;
  const held = store.get(ENTRY + id);
  held.onsuccess = () => {
    const theirs = held.result as Entry | undefined;
    if (theirs && theirs.revision !== over) {
      outcome = { conflict: theirs };
      return;
    }
    const entry: Entry = { id, title, saved: Date.now(), revision: over + 1 };
    store.put(entry, ENTRY + id);
    store.put(content, CONTENT + id);
    outcome = entry;
  };
  // Only the end of the transaction says that the data are kept; its requests succeed before.
  await settled(store.transaction);
  if (!outcome) throw new Error('The browser closed the storage before the document was saved.');
  return outcome;
}
