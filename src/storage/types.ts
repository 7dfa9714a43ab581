import type { OctavoDocument } from '../document/types.ts';
import type { Refusal } from '../document/command.ts';

/** A stored document in the list of documents. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  /** Time of the last save, milliseconds since 1970. */
  readonly saved: number;
  /** Counts the saves; two tabs tell by it whether one has what the other wrote. */
  readonly revision: number;
  /** The page that saved it, by a number of its own; those of earlier versions said none. */
  readonly page?: number;
}

/** The last shown text of every cell, by sheet id and address: what is painted before the engine has answered. */
export type Shown = ReadonlyMap<string, ReadonlyMap<string, string>>;

export interface Stored {
  readonly document: OctavoDocument;
  readonly revision: number;
  /** Time of that save, milliseconds since 1970. */
  readonly saved: number;
  readonly shown: Shown;
}

/** Another tab has saved this document meanwhile; nothing was written. */
export interface Conflict {
  readonly conflict: Entry;
}

/** Where documents are kept. Every method rejects where the browser refuses, with an error whose message can be shown. */
export interface SheetStorage {
  /** All documents, the one saved last first. */
  list(): Promise<readonly Entry[]>;
  /** The document as last saved; a refusal where what is stored cannot be read, nothing where there is none. */
  open(id: string): Promise<Stored | Refusal | undefined>;
  /** Saves over the given revision (0 for a document not yet stored), or not at all. */
  save(document: OctavoDocument, over: number): Promise<Entry | Conflict>;
  /** Keeps at once what is not saved over that revision yet: a page that goes may be gone before a save has ended. It is saved
   *  when documents are listed next. Tells whether it was kept. */
  leave(document: OctavoDocument, over: number): boolean;
  /** Keeps the shown texts beside the document, for as long as the document is stored. */
  saveShown(id: string, shown: Shown): Promise<void>;
  remove(id: string): Promise<void>;
}

/** How a document becomes a text that can be stored, and back. */
export interface Codec {
  encode(document: OctavoDocument): string;
  decode(content: unknown): OctavoDocument | Refusal;
}
