import { expect } from '@open-wc/testing';
import { apply } from '../../src/document/apply.ts';
import { isRefusal } from '../../src/document/command.ts';
import { newDocument } from '../../src/document/create.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { readKept, writeKept } from '../../src/exchange/file.ts';
import { Autosave, type SaveSource } from '../../src/storage/autosave.ts';
import { BrowserStorage } from '../../src/storage/browser-storage.ts';
import { openTabs } from '../../src/storage/tabs.ts';
import type { Codec, Entry, Stored } from '../../src/storage/types.ts';

const codec: Codec = { encode: writeKept, decode: readKept };

let count = 0;
const newStorage = (): { storage: BrowserStorage; again: () => BrowserStorage } => {
  const database = `octavo-test-${Date.now()}-${count++}`;
  return { storage: new BrowserStorage(codec, database), again: () => new BrowserStorage(codec, database) };
};

function typed(document: OctavoDocument, cell: string, text: string): OctavoDocument {
  const [sheet] = document.sheets;
  const outcome = apply(document, { kind: 'write', sheet: sheet?.id ?? '', texts: new Map([[cell, text]]) });
  if (isRefusal(outcome)) throw new Error(outcome.refused);
  return outcome.document;
}

class Desk extends EventTarget implements SaveSource {
  document: OctavoDocument;

  constructor(document: OctavoDocument) {
    super();
    this.document = document;
  }

  shownTexts(): ReadonlyMap<string, ReadonlyMap<string, string>> {
    return new Map([['s', new Map([['B4', '38 Hz']])]]);
  }

  type(cell: string, text: string): void {
    this.document = typed(this.document, cell, text);
    this.dispatchEvent(new Event('change'));
  }
}

const wait = (milliseconds: number): Promise<void> => new Promise((done) => setTimeout(done, milliseconds));

describe('documents in the browser', () => {
  it('are kept as they were, several side by side, the last saved first', async () => {
    const { storage, again } = newStorage();
    const first = typed(newDocument('First'), 'B4', '38 Hz');
    const second = typed(newDocument('Second'), 'C4', '=B4*2');
    await storage.save(first, 0);
    await wait(5);
    await storage.save(second, 0);
    const listed = await again().list();
    expect(listed.map(({ title }) => title)).to.deep.equal(['Second', 'First']);
    const stored = (await again().open(first.id)) as Stored;
    expect(stored.document).to.deep.equal(first);
    expect(stored.revision).to.equal(1);
    expect(await again().open('nowhere')).to.equal(undefined);
  });

  it('are saved over the revision that was read, and never over a newer one', async () => {
    const { storage, again } = newStorage();
    const document = newDocument('Shared');
    await storage.save(document, 0);
    const outcomes = await Promise.all([
      storage.save(typed(document, 'B4', 'first'), 1),
      again().save(typed(document, 'B4', 'second'), 1),
    ]);
    expect(outcomes.filter((outcome) => 'conflict' in outcome)).to.have.length(1);
    expect(outcomes.filter((outcome) => 'revision' in outcome && outcome.revision === 2)).to.have.length(1);
    const stored = (await storage.open(document.id)) as Stored;
    expect(stored.document.sheets[0]?.cells.get('B4')?.text).to.equal('first');
  });

  it('left before a save had ended are saved when documents are listed next, also over what was being saved', async () => {
    const { storage, again } = newStorage();
    const document = newDocument('Left');
    const saving = typed(document, 'B4', 'being saved');
    await storage.save(document, 0);
    storage.leave(typed(saving, 'B5', 'typed last'), 1);
    expect((await again().list()).map(({ title }) => title)).to.deep.equal(['Left']);
    const textsOf = async (): Promise<(string | undefined)[]> => {
      const { document: kept } = (await storage.open(document.id)) as Stored;
      return ['B4', 'B5'].map((cell) => kept.sheets[0]?.cells.get(cell)?.text);
    };
    expect(await textsOf()).to.deep.equal(['being saved', 'typed last']);
    // Now the save that was under way did end.
    const next = typed(document, 'B4', 'ended');
    await storage.save(next, 2);
    storage.leave(typed(next, 'B5', 'typed after it'), 2);
    expect(await again().list()).to.have.length(1);
    expect(await textsOf()).to.deep.equal(['ended', 'typed after it']);
  });

  it('left are saved once: not again where the save did end, and not where the page stayed and saved', async () => {
    const { storage, again } = newStorage();
    const document = newDocument('Ended');
    const last = typed(document, 'B4', 'last');
    await storage.save(document, 0);
    storage.leave(last, 1);
    await again().save(last, 1);
    const revisions = async (): Promise<number[]> => (await again().list()).map(({ revision }) => revision);
    expect(await revisions()).to.deep.equal([2]);
    storage.leave(typed(last, 'B5', 'stayed'), 2);
    await storage.save(typed(last, 'B5', 'stayed'), 2);
    await again().save(typed(last, 'B5', 'later'), 3);
    expect(await revisions()).to.deep.equal([4]);
  });

  it('left over a newer save of another tab become documents of their own', async () => {
    const { storage, again } = newStorage();
    const document = newDocument('Shared');
    await storage.save(document, 0);
    await again().save(typed(document, 'B4', 'theirs'), 1);
    storage.leave(typed(document, 'B4', 'ours'), 1);
    const listed = await again().list();
    expect(listed.map(({ title }) => title)).to.have.members(['Shared', 'Shared (not saved)']);
    expect(await again().list()).to.have.length(2);
    const copy = listed.find(({ id }) => id !== document.id);
    const { document: ours } = (await storage.open(copy?.id ?? '')) as Stored;
    expect(ours.sheets[0]?.cells.get('B4')?.text).to.equal('ours');
    const { document: theirs } = (await storage.open(document.id)) as Stored;
    expect(theirs.sheets[0]?.cells.get('B4')?.text).to.equal('theirs');
  });

  it('left where nothing can be saved wait until it can, and are opened as they were left', async () => {
    const { storage, again } = newStorage();
    const document = newDocument('Waiting');
    await storage.save(document, 0);
    storage.leave(typed(document, 'B4', 'left'), 1);
    const { transaction } = IDBDatabase.prototype;
    const full = again();
    try {
      IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given) {
        if (given[1] === 'readwrite') throw new DOMException('No room.', 'QuotaExceededError');
        return transaction.apply(this, given);
      };
      expect((await full.list()).map(({ revision }) => revision)).to.deep.equal([1]);
    } finally {
      IDBDatabase.prototype.transaction = transaction;
    }
    const waiting = (await full.open(document.id)) as Stored;
    expect(waiting.document.sheets[0]?.cells.get('B4')?.text).to.equal('left');
    const next = typed(waiting.document, 'B5', 'typed after it');
    await full.save(next, waiting.revision);
    expect((await again().list()).map(({ title }) => title)).to.deep.equal(['Waiting']);
    expect(((await again().open(document.id)) as Stored).document).to.deep.equal(next);
  });

  it('kept by an earlier version, which stored no text, are opened', async () => {
    const document = typed(newDocument('Earlier'), 'B4', '38 Hz');
    const early = { ...codec, encode: (each: OctavoDocument) => JSON.parse(writeKept(each)) as string };
    const database = `octavo-test-early-${Date.now()}`;
    await new BrowserStorage(early, database).save(document, 0);
    const stored = (await new BrowserStorage(codec, database).open(document.id)) as Stored;
    expect(stored.document).to.deep.equal(document);
  });

  it('take the texts last shown with them, and leave nothing when removed', async () => {
    const { storage } = newStorage();
    const document = newDocument('Shown');
    const shown = new Map([['s', new Map([['B4', '38 Hz']])]]);
    await storage.saveShown(document.id, shown);
    await storage.save(document, 0);
    expect(((await storage.open(document.id)) as Stored).shown.size).to.equal(0);
    await storage.saveShown(document.id, shown);
    expect(((await storage.open(document.id)) as Stored).shown).to.deep.equal(shown);
    await storage.remove(document.id);
    expect(await storage.open(document.id)).to.equal(undefined);
    expect(await storage.list()).to.deep.equal([]);
  });

  it('that cannot be read are refused with the reason, and stay where they are', async () => {
    const database = `octavo-test-damaged-${Date.now()}`;
    const damaged = new BrowserStorage({ ...codec, encode: () => '{"octavo": 1, "title": 3}' }, database);
    const document = newDocument('Damaged');
    await damaged.save(document, 0);
    const storage = new BrowserStorage(codec, database);
    const outcome = await storage.open(document.id);
    expect(outcome && 'refused' in outcome ? outcome.refused : '').to.contain('title: a text is wanted');
    expect(await storage.list()).to.have.length(1);
  });

  it('are there within a second of an edit, and all edits of a busy minute are', async () => {
    const { storage, again } = newStorage();
    const desk = new Desk(newDocument('Busy'));
    const autosave = new Autosave(storage, desk);
    for (let row = 1; row <= 40; row++) {
      desk.type(`B${row}`, `${row} Hz`);
      if (row % 8 === 0) await wait(15);
    }
    await wait(1000);
    autosave.stop();
    const stored = (await again().open(desk.document.id)) as Stored;
    expect(stored.document).to.deep.equal(desk.document);
  });
});

describe('two tabs', () => {
  it('hear of one another’s saves', async () => {
    const { storage, again } = newStorage();
    const name = `octavo-test-${Date.now()}`;
    const here = new Desk(newDocument('Shared'));
    const hereSave = new Autosave(storage, here, undefined, openTabs(name));
    await hereSave.flush();
    const stored = (await again().open(here.document.id)) as Stored;
    const there = new Desk(stored.document);
    const thereSave = new Autosave(again(), there, stored, openTabs(name));
    const heard = new Promise<Entry>((resolve) =>
      thereSave.addEventListener('newer', (event) => resolve((event as CustomEvent<Entry>).detail), { once: true }),
    );
    here.type('B4', 'here');
    await hereSave.flush();
    expect((await heard).revision).to.equal(2);
    there.type('B4', 'there');
    await thereSave.flush();
    expect(thereSave.status.state).to.equal('conflict');
    hereSave.stop();
    thereSave.stop();
  });
});
