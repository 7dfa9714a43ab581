import type { OctavoDocument } from '../document/types.ts';
import type { Refusal } from '../document/command.ts';
import { atOnce } from './at-once.ts';
import { openStore, settled, type Store } from './database.ts';
import type { Waiting } from './save-left.ts';
import type { Codec, Conflict, Entry, SheetStorage, Shown, Stored } from './types.ts';

const ENTRY = 'entry:';
const CONTENT = 'content:';
const SHOWN = 'shown:';
/** Kept at once, until it is saved. */
const LEFT = 'octavo-left:';

/** Documents in IndexedDB. A document lies under three keys: its entry, its content, and the texts last shown. Listing
 *  reads entries only, and a save is one transaction, so that no half of it is ever seen. */
export class BrowserStorage implements SheetStorage {
  readonly #codec: Codec;
  readonly #store: Store;
  readonly #page = Math.random();
  /** What is kept at once of documents that this page holds: their next save has it too. */
  readonly #left = new Set<string>();
  /** What is kept at once, and could not be saved since. */
  #waiting: ReadonlyMap<string, Waiting> = new Map();

  constructor(codec: Codec, database = 'octavo') {
    this.#codec = codec;
    this.#store = openStore(database, 'documents');
  }

  async list(): Promise<readonly Entry[]> {
    const left = atOnce.keys(LEFT);
    this.#waiting = new Map();
    // Fetched only where there is something: hardly ever.
    if (left.length > 0) this.#waiting = await (await import('./save-left.ts')).saveLeft(this, this.#codec, left);
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
    const waiting = this.#waiting.get(id);
    if (waiting) this.#left.add(LEFT + id);
    const document = waiting?.document ?? this.#codec.decode(content);
    if ('refused' in document) return document;
    const revision = waiting?.revision ?? entry.revision;
    return { document, revision, saved: entry.saved, shown: shown ?? new Map() };
  }

  async save(document: OctavoDocument, over: number): Promise<Entry | Conflict> {
    const content = this.#codec.encode(document);
    const entry = { id: document.id, title: document.title, revision: over + 1, page: this.#page };
    const outcome = await this.#store('readwrite', (store) => saveOver(store, entry, content, over));
    const key = LEFT + document.id;
    if (!('conflict' in outcome) && this.#left.delete(key)) atOnce.drop(key);
    return outcome;
  }

  leave(document: OctavoDocument, over: number): boolean {
    const key = LEFT + document.id;
    const isKept = atOnce.keep(key, JSON.stringify({ over, page: this.#page, content: this.#codec.encode(document) }));
    if (isKept) this.#left.add(key);
    return isKept;
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
  entry: Omit<Entry, 'saved'>,
  content: string,
  over: number,
): Promise<Entry | Conflict> {
  let outcome: Entry | Conflict | undefined;
  const held = store.get(ENTRY + entry.id);
  held.onsuccess = () => {
    const theirs = held.result as Entry | undefined;
    if (theirs && theirs.revision !== over) {
      outcome = { conflict: theirs };
      return;
    }
    outcome = { ...entry, saved: Date.now() };
    store.put(outcome, ENTRY + entry.id);
    store.put(content, CONTENT + entry.id);
  };
  // Only the end of the transaction says that the data are kept; its requests succeed before.
  await settled(store.transaction);
  if (!outcome) throw new Error('The browser closed the storage before the document was saved.');
  return outcome;
}
