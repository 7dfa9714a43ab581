import type { OctavoDocument } from '../../src/document/types.ts';
import type { Refusal } from '../../src/document/command.ts';
import type { Codec, Conflict, Entry, SheetStorage, Shown, Stored } from '../../src/storage/types.ts';

/** Documents for as long as a test runs. Behaves as the stored kind does. */
export class MemoryStorage implements SheetStorage {
  readonly #codec: Codec;
  readonly #entries = new Map<string, Entry>();
  readonly #contents = new Map<string, unknown>();
  readonly #shown = new Map<string, Shown>();

  constructor(codec: Codec) {
    this.#codec = codec;
  }

  async list(): Promise<readonly Entry[]> {
    return [...this.#entries.values()].sort((a, b) => b.saved - a.saved);
  }

  async open(id: string): Promise<Stored | Refusal | undefined> {
    const entry = this.#entries.get(id);
    if (!entry) return undefined;
    const document = this.#codec.decode(this.#contents.get(id));
    if ('refused' in document) return document;
    const { revision, saved } = entry;
    return { document, revision, saved, shown: this.#shown.get(id) ?? new Map() };
  }

  async save(document: OctavoDocument, over: number): Promise<Entry | Conflict> {
    const theirs = this.#entries.get(document.id);
    if (theirs && theirs.revision !== over) return { conflict: theirs };
    const entry: Entry = { id: document.id, title: document.title, saved: Date.now(), revision: over + 1 };
    this.#entries.set(document.id, entry);
    this.#contents.set(document.id, this.#codec.encode(document));
    return entry;
  }

  leave(_document: OctavoDocument, _over: number): boolean {
    return false;
  }

  async saveShown(id: string, shown: Shown): Promise<void> {
    if (this.#entries.has(id)) this.#shown.set(id, structuredClone(shown));
  }

  async remove(id: string): Promise<void> {
    this.#entries.delete(id);
    this.#contents.delete(id);
    this.#shown.delete(id);
  }
}
