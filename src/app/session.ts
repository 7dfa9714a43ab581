import { isRefusal } from '../document/command.ts';
import { withFreshIds } from '../document/create.ts';
import type { OctavoDocument } from '../document/types.ts';
import { Workbook } from '../document/workbook.ts';
import type { SheetEngine } from '../engine/types.ts';
import { Autosave, type Tabs } from '../storage/autosave.ts';
import { flushOnLeave } from '../storage/flush-on-leave.ts';
import type { Entry, SheetStorage, Shown, Stored } from '../storage/types.ts';
import { clock } from './clock.ts';

/** How saving stands, for the foot of the rail. */
export interface SaveState {
  readonly status: 'saved' | 'saving' | 'failed' | 'conflict';
  readonly text: string;
}

const NOTHING_SHOWN: Shown = new Map();

/** One open document: workbook, saving, and the list of what else is kept on this device.
 *  @fires change - Anything that the frame shows has changed.
 *  @fires opened - Another document is open now. */
export class Session extends EventTarget {
  readonly #engine: SheetEngine;
  readonly #storage: SheetStorage;
  readonly #tabs: Tabs | undefined;
  #workbook: Workbook | undefined;
  #autosave: Autosave | undefined;
  #leave: (() => void) | undefined;
  /** Texts shown last time, for the first paint. */
  remembered: Shown = NOTHING_SHOWN;
  documents: readonly Entry[] = [];

  constructor(engine: SheetEngine, storage: SheetStorage, tabs: Tabs | undefined) {
    super();
    this.#engine = engine;
    this.#storage = storage;
    this.#tabs = tabs;
  }

  get workbook(): Workbook | undefined {
    return this.#workbook;
  }

  get saving(): SaveState {
    const status = this.#autosave?.status;
    switch (status?.state) {
      case undefined:
      case 'saving':
        return { status: 'saving', text: 'Saving…' };
      case 'saved':
        return { status: 'saved', text: `Saved ${clock(status.saved)}, works offline` };
      case 'failed':
        return { status: 'failed', text: `Not saved. ${status.reason} Trying again.` };
      case 'conflict':
        return { status: 'conflict', text: `Another tab saved this document at ${clock(status.theirs.saved)}.` };
    }
  }

  /** Opens the document used last; where there is none, or it cannot be read, the given first one. */
  async start(first: () => Promise<OctavoDocument>): Promise<string | undefined> {
    const [latest] = await this.#list();
    const problem = latest && (await this.open(latest.id));
    if (!this.#workbook) await this.adopt(await first());
    return problem;
  }

  /** Opens a kept document; gives a sentence where that is not possible, and then nothing changes. */
  async open(id: string): Promise<string | undefined> {
    await this.#autosave?.flush();
    const stored = await this.#storage.open(id);
    if (!stored) return 'That document is no longer kept on this device.';
    if (isRefusal(stored)) return stored.refused;
    this.remembered = stored.shown;
    this.#show(stored.document, stored);
    return undefined;
  }

  /** Takes in a document that is not kept yet, under ids of its own. */
  async adopt(document: OctavoDocument): Promise<void> {
    await this.#autosave?.flush();
    this.remembered = NOTHING_SHOWN;
    this.#show(withFreshIds(document));
    await this.#autosave?.flush();
    await this.#list();
  }

  async forget(id: string): Promise<void> {
    await this.#storage.remove(id);
    await this.#list();
  }

  /** After a conflict: ours over theirs. */
  async overwrite(): Promise<void> {
    await this.#autosave?.overwrite();
  }

  /** After a conflict: theirs as it is kept, ours beside it as a document of its own. */
  async keepBoth(): Promise<void> {
    const ours = this.#workbook?.document;
    this.#autosave?.stop();
    this.#autosave = undefined;
    if (ours) await this.adopt({ ...ours, title: `${ours.title} (this tab)` });
  }

  #show(document: OctavoDocument, stored?: Stored): void {
    this.#leave?.();
    this.#autosave?.stop();
    this.#workbook?.removeEventListener('change', this.#changed);
    const workbook = new Workbook(this.#engine, document);
    workbook.addEventListener('change', this.#changed);
    const autosave = new Autosave(this.#storage, workbook, stored, this.#tabs);
    autosave.addEventListener('status', this.#saved);
    autosave.addEventListener('newer', () => void this.open(document.id));
    this.#workbook = workbook;
    void workbook.learnWords();
    this.#autosave = autosave;
    this.#leave = flushOnLeave(autosave, window);
    this.dispatchEvent(new Event('opened'));
  }

  async #list(): Promise<readonly Entry[]> {
    this.documents = await this.#storage.list().catch(() => []);
    this.dispatchEvent(new Event('change'));
    return this.documents;
  }

  readonly #changed = (): void => {
    this.dispatchEvent(new Event('change'));
  };

  readonly #saved = (): void => {
    if (this.#autosave?.status.state === 'saved') void this.#list();
    else this.#changed();
  };
}
