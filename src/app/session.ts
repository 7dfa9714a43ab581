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
const NOT_LET_GO =
  'The open document is not saved, and the browser keeps nothing more. Save it to a file, then load the page anew to open ' +
  'another.';

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
    const problem = await this.#letGo();
    if (problem) return problem;
    const stored = await this.#storage.open(id);
    if (!stored) return 'That document is no longer kept on this device.';
    if (isRefusal(stored)) return stored.refused;
    this.remembered = stored.shown;
    this.#show(stored.document, stored);
    return undefined;
  }

  /** Takes in a document that is not kept yet, under ids of its own; gives a sentence where that is not possible. */
  async adopt(document: OctavoDocument): Promise<string | undefined> {
    const problem = await this.#letGo();
    if (problem) return problem;
    this.remembered = NOTHING_SHOWN;
    this.#show(withFreshIds(document));
    await this.#autosave?.flush();
    await this.#list();
    return undefined;
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

  /** Saves what is open, or keeps it until it can be saved, before another document takes its place; a sentence where neither
   *  is possible. */
  async #letGo(): Promise<string | undefined> {
    await this.#autosave?.flush();
    if (!this.#autosave?.isDirty) return undefined;
    // What nothing was typed into is to be had again.
    if (!this.#autosave.leave() && this.#workbook?.canUndo) return NOT_LET_GO;
    await this.#list();
    return undefined;
  }

  /** Shows what another tab saved of the open document, unless something was typed meanwhile: saving that asks the reader. */
  async #takeNewer(id: string): Promise<void> {
    const stored = await this.#storage.open(id);
    if (!stored || isRefusal(stored) || this.#autosave?.isDirty || this.#workbook?.document.id !== id) return;
    this.remembered = stored.shown;
    this.#show(stored.document, stored);
  }

  #show(document: OctavoDocument, stored?: Stored): void {
    // What was typed while the other was being read.
    this.#autosave?.leave();
    this.#leave?.();
    this.#autosave?.stop();
    this.#workbook?.removeEventListener('change', this.#changed);
    const workbook = new Workbook(this.#engine, document);
    workbook.addEventListener('change', this.#changed);
    const autosave = new Autosave(this.#storage, workbook, stored, this.#tabs);
    autosave.addEventListener('status', this.#saved);
    autosave.addEventListener('newer', () => void this.#takeNewer(document.id));
    this.#workbook = workbook;
    void workbook.learnWords();
    this.#autosave = autosave;
    this.#leave = flushOnLeave(autosave, window);
    this.dispatchEvent(new Event('opened'));
  }

  async #list(): Promise<readonly Entry[]> {
    this.documents = await this.#storage.list().catch(() => this.documents);
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
