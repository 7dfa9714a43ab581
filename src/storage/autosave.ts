import { firstPlaces } from '../document/copied-text.ts';
import type { OctavoDocument } from '../document/types.ts';
import type { Entry, SheetStorage, Shown } from './types.ts';

/** Where saving stands. */
export type SaveStatus =
  | { readonly state: 'saved'; readonly saved: number }
  | { readonly state: 'saving' }
  /** Saving is tried again at `retry` (milliseconds since 1970); `reason` is a sentence to show. */
  | { readonly state: 'failed'; readonly reason: string; readonly retry: number }
  /** Another tab saved this document; nothing is written until the reader has chosen. */
  | { readonly state: 'conflict'; readonly theirs: Entry };

/** What is saved: anything that holds a document and tells of its changes. */
export interface SaveSource extends EventTarget {
  readonly document: OctavoDocument;
  /** The texts now shown in the first rows, kept beside the document for the next first paint. */
  shownTexts(places: ReturnType<typeof firstPlaces>): Shown;
}

/** Tells the other tabs of a save, and hears of theirs. */
export interface Tabs {
  tell(entry: Entry): void;
  listen(heard: (entry: Entry) => void): () => void;
}

const FIRST_RETRY = 1000;
const LAST_RETRY = 30_000;
/** The longest wait before a save: an accepted edit is stored within a second, the time of the save included. */
const LONGEST_WAIT = 400;
/** What follows from an edit is painted first. */
const SHORTEST_WAIT = 50;
const SHOWN_WAIT = 800;
/** Rows further down are not in view when a document is opened. */
const SHOWN_ROWS = 500;

/** Saves every accepted edit, soon and in order, and keeps trying where it fails.
 *  @fires status - Where saving stands has changed; read `status`.
 *  @fires newer - Another tab saved the document and nothing unsaved is held here; `detail` is the entry. */
export class Autosave extends EventTarget {
  readonly #storage: SheetStorage;
  readonly #source: SaveSource;
  readonly #tabs: Tabs | undefined;
  readonly #stopListening: (() => void) | undefined;
  #revision: number;
  #saved: OctavoDocument | undefined;
  /** What was kept at once. */
  #left: OctavoDocument | undefined;
  #status: SaveStatus;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #shownTimer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> | undefined;
  #lastDuration = 0;
  #isStopped = false;
  #failures = 0;

  /** `stored` says under which revision the source's document is kept, and since when; left out where it is not kept yet,
   *  and then it is saved. */
  constructor(storage: SheetStorage, source: SaveSource, stored?: Pick<Entry, 'revision' | 'saved'>, tabs?: Tabs) {
    super();
    this.#storage = storage;
    this.#source = source;
    this.#tabs = tabs;
    this.#revision = stored?.revision ?? 0;
    this.#saved = stored && source.document;
    this.#status = stored ? { state: 'saved', saved: stored.saved } : { state: 'saving' };
    source.addEventListener('change', this.#changed);
    this.#stopListening = tabs?.listen((entry) => this.#heard(entry));
    if (!stored) this.#schedule(0);
  }

  get status(): SaveStatus {
    return this.#status;
  }

  /** Whether closing now would lose something. */
  get isDirty(): boolean {
    return this.#source.document !== this.#saved;
  }

  /** Saves at once what is not saved yet; done when it is, or when saving failed. */
  async flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    if (this.#running) await this.#running;
    if (this.isDirty && this.#status.state !== 'conflict') await this.#start();
  }

  /** The document is left: what is not saved is kept at once, and saved where there is time. Tells whether nothing is lost. */
  leave(): boolean {
    const { document } = this.#source;
    if (this.isDirty && document !== this.#left && this.#storage.leave(document, this.#revision)) this.#left = document;
    void this.flush();
    return !this.isDirty || document === this.#left;
  }

  /** After a conflict: saves ours over theirs, for a reader who has seen both and wants this one. */
  async overwrite(): Promise<void> {
    if (this.#status.state !== 'conflict') return;
    this.#revision = this.#status.theirs.revision;
    this.#report({ state: 'saving' });
    await this.flush();
  }

  /** Ends saving; what is scheduled is dropped, so flush first where it matters. */
  stop(): void {
    this.#isStopped = true;
    clearTimeout(this.#timer);
    clearTimeout(this.#shownTimer);
    this.#source.removeEventListener('change', this.#changed);
    this.#stopListening?.();
  }

  readonly #changed = (): void => {
    if (this.isDirty) this.#schedule(Math.min(LONGEST_WAIT, Math.max(SHORTEST_WAIT, 4 * this.#lastDuration)));
    else this.#scheduleShown();
  };

  #schedule(wait: number): void {
    if (this.#status.state === 'conflict' || this.#timer !== undefined || this.#running) return;
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      void this.#start();
    }, wait);
  }

  /** One save at a time. An edit made meanwhile is saved right after. */
  #start(): Promise<void> {
    this.#running ??= this.#save().finally(() => {
      this.#running = undefined;
      if (this.#isStopped) return;
      if (this.#status.state === 'failed') this.#schedule(Math.max(0, this.#status.retry - Date.now()));
      else this.#changed();
    });
    return this.#running;
  }

  async #save(): Promise<void> {
    if (!this.isDirty) return;
    const { document } = this.#source;
    const started = performance.now();
    if (this.#status.state !== 'failed') this.#report({ state: 'saving' });
    try {
      const outcome = await this.#storage.save(document, this.#revision);
      if ('conflict' in outcome) {
        this.#report({ state: 'conflict', theirs: outcome.conflict });
        return;
      }
      this.#revision = outcome.revision;
      this.#saved = document;
      this.#failures = 0;
      this.#lastDuration = performance.now() - started;
      this.#tabs?.tell(outcome);
      this.#report({ state: 'saved', saved: outcome.saved });
    } catch (error) {
      const wait = Math.min(LAST_RETRY, FIRST_RETRY * 2 ** this.#failures++);
      this.#report({ state: 'failed', reason: reasonOf(error), retry: Date.now() + wait });
    }
  }

  #scheduleShown(): void {
    if (this.#shownTimer !== undefined) return;
    this.#shownTimer = setTimeout(() => {
      this.#shownTimer = undefined;
      // A first paint without these texts only waits for the engine, so a failure here is not worth a word.
      const { document } = this.#source;
      const texts = this.#source.shownTexts(firstPlaces(document, SHOWN_ROWS));
      this.#storage.saveShown(document.id, texts).catch(() => undefined);
    }, SHOWN_WAIT);
  }

  #heard(theirs: Entry): void {
    if (theirs.id !== this.#source.document.id || theirs.revision <= this.#revision) return;
    if (this.isDirty) {
      clearTimeout(this.#timer);
      this.#timer = undefined;
      this.#report({ state: 'conflict', theirs });
    } else this.dispatchEvent(new CustomEvent('newer', { detail: theirs }));
  }

  #report(status: SaveStatus): void {
    this.#status = status;
    this.dispatchEvent(new Event('status'));
  }
}

function reasonOf(error: unknown): string {
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') {
    return 'The browser has no room left for this page. Save the document to a file, or delete documents.';
  }
  const said = error instanceof Error && error.message !== '' ? error.message : String(error);
  return `The browser could not store the document (${said}). Save it to a file to be safe.`;
}
