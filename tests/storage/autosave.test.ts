import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { apply } from '../../src/document/apply.ts';
import { isRefusal, type Command } from '../../src/document/command.ts';
import { newDocument, withFreshIds } from '../../src/document/create.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { readKept, writeKept } from '../../src/exchange/file.ts';
import { Autosave, type SaveSource, type SaveStatus, type Tabs } from '../../src/storage/autosave.ts';
import { MemoryStorage } from './memory-storage.ts';
import type { Codec, Entry, SheetStorage, Shown, Stored } from '../../src/storage/types.ts';

const codec: Codec = { encode: writeKept, decode: readKept };

/** Holds a document as a workbook does, without an engine. */
class Desk extends EventTarget implements SaveSource {
  document: OctavoDocument;

  constructor(document = newDocument('Two drivers')) {
    super();
    this.document = document;
  }

  shownTexts(): Shown {
    return new Map(
      this.document.sheets.map(({ id, cells }) => [id, new Map([...cells].map(([cell, { text }]) => [cell, text]))]),
    );
  }

  type(cell: string, text: string): void {
    const [sheet] = this.document.sheets;
    this.do({ kind: 'write', sheet: sheet?.id ?? '', texts: new Map([[cell, text]]) });
  }

  do(command: Command): void {
    const outcome = apply(this.document, command);
    if (isRefusal(outcome)) throw new Error(outcome.refused);
    this.document = outcome.document;
    this.dispatchEvent(new Event('change'));
  }
}

/** Storage that refuses as long as it is told to. */
class Moody extends MemoryStorage {
  refusals = 0;
  attempts = 0;

  override async save(document: OctavoDocument, over: number): ReturnType<SheetStorage['save']> {
    this.attempts++;
    if (this.refusals-- > 0) throw new DOMException('No room', 'QuotaExceededError');
    return super.save(document, over);
  }
}

/** The channel between tabs of one browser. */
class Hall {
  readonly #listeners = new Set<(entry: Entry) => void>();

  tab(): Tabs {
    let own: ((entry: Entry) => void) | undefined;
    return {
      tell: (entry) => this.#listeners.forEach((heard) => heard === own || heard(entry)),
      listen: (heard) => {
        own = heard;
        this.#listeners.add(heard);
        return () => this.#listeners.delete(heard);
      },
    };
  }
}

const textIn = (stored: Awaited<ReturnType<SheetStorage['open']>>, cell: string): string | undefined =>
  (stored as Stored).document.sheets[0]?.cells.get(cell)?.text;

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('saving', () => {
  test('a new document is stored at once, and an edit within a second', async () => {
    const storage = new MemoryStorage(codec);
    const desk = new Desk();
    const autosave = new Autosave(storage, desk);
    await vi.advanceTimersByTimeAsync(1);
    expect(await storage.list()).toMatchObject([{ id: desk.document.id, title: 'Two drivers', revision: 1 }]);
    desk.type('B4', '38 Hz');
    expect(autosave.isDirty).toBe(true);
    await vi.advanceTimersByTimeAsync(1000);
    expect(textIn(await storage.open(desk.document.id), 'B4')).toBe('38 Hz');
    expect(autosave.isDirty).toBe(false);
    expect(autosave.status.state).toBe('saved');
  });

  test('edits made while a save runs are saved right after it', async () => {
    const storage = new Moody(codec);
    const desk = new Desk();
    const autosave = new Autosave(storage, desk);
    const saving = autosave.flush();
    for (let count = 0; count < 20; count++) desk.type('B4', `${count} Hz`);
    await saving;
    await vi.advanceTimersByTimeAsync(1000);
    expect(textIn(await storage.open(desk.document.id), 'B4')).toBe('19 Hz');
    expect(storage.attempts).toBe(2);
  });

  test('flushing saves at once', async () => {
    const storage = new MemoryStorage(codec);
    const desk = new Desk();
    const autosave = new Autosave(storage, desk);
    desk.type('C7', '1.05');
    await autosave.flush();
    expect(textIn(await storage.open(desk.document.id), 'C7')).toBe('1.05');
  });

  test('leaving keeps at once what is not saved, each document once, and nothing where all is', async () => {
    const left: unknown[] = [];
    class Leaving extends MemoryStorage {
      override leave(...given: [OctavoDocument, number]): boolean {
        left.push(given);
        return true;
      }
    }
    const desk = new Desk();
    const autosave = new Autosave(new Leaving(codec), desk);
    await autosave.flush();
    expect(autosave.leave()).toBe(true);
    expect(left).toEqual([]);
    desk.type('B4', 'first');
    const saved = autosave.flush();
    desk.type('B5', 'second');
    expect(autosave.leave()).toBe(true);
    expect(autosave.leave()).toBe(true);
    expect(left).toEqual([[desk.document, 1]]);
    await saved;
    await autosave.flush();
    desk.type('B6', 'third');
    autosave.leave();
    expect(left[1]).toEqual([desk.document, 3]);
  });

  test('leaving tells where what is not saved cannot be kept', async () => {
    const desk = new Desk();
    const autosave = new Autosave(new MemoryStorage(codec), desk);
    await autosave.flush();
    desk.type('B4', 'lost');
    expect(autosave.leave()).toBe(false);
  });

  test('the texts shown are kept beside the document', async () => {
    const storage = new MemoryStorage(codec);
    const desk = new Desk();
    new Autosave(storage, desk);
    desk.type('B4', '38 Hz');
    await vi.advanceTimersByTimeAsync(2000);
    const stored = (await storage.open(desk.document.id)) as Stored;
    expect(stored.shown.get(desk.document.sheets[0]!.id)?.get('B4')).toBe('38 Hz');
  });

  test('after stopping, nothing is saved any more', async () => {
    const storage = new MemoryStorage(codec);
    const desk = new Desk();
    const autosave = new Autosave(storage, desk);
    await autosave.flush();
    autosave.stop();
    desk.type('B4', '38 Hz');
    await vi.advanceTimersByTimeAsync(5000);
    expect(textIn(await storage.open(desk.document.id), 'B4')).toBeUndefined();
  });
});

describe('a failed save', () => {
  test('says why, keeps trying with growing pauses, and loses nothing', async () => {
    const storage = new Moody(codec);
    const desk = new Desk();
    const autosave = new Autosave(storage, desk);
    await autosave.flush();
    const states: SaveStatus['state'][] = [];
    autosave.addEventListener('status', () => states.push(autosave.status.state));
    storage.refusals = 3;
    storage.attempts = 0;
    desk.type('B4', '38 Hz');
    await vi.advanceTimersByTimeAsync(500);
    expect(autosave.status).toMatchObject({ state: 'failed', reason: expect.stringContaining('no room left') });
    expect(autosave.isDirty).toBe(true);
    desk.type('B5', '4.8');
    await vi.advanceTimersByTimeAsync(1000);
    expect(storage.attempts).toBe(2);
    await vi.advanceTimersByTimeAsync(2000);
    expect(storage.attempts).toBe(3);
    await vi.advanceTimersByTimeAsync(4000);
    expect(autosave.status.state).toBe('saved');
    const stored = await storage.open(desk.document.id);
    expect([textIn(stored, 'B4'), textIn(stored, 'B5')]).toEqual(['38 Hz', '4.8']);
    expect(states).toEqual(['saving', 'failed', 'failed', 'failed', 'saved']);
  });
});

describe('two tabs on one document', () => {
  async function twoTabs(hall?: Hall) {
    const storage = new MemoryStorage(codec);
    const first = new Desk();
    const firstSave = new Autosave(storage, first, undefined, hall?.tab());
    await firstSave.flush();
    const stored = (await storage.open(first.document.id)) as Stored;
    const second = new Desk(stored.document);
    const secondSave = new Autosave(storage, second, stored, hall?.tab());
    return { storage, first, firstSave, second, secondSave };
  }

  test('the later never overwrites the earlier unnoticed, even without a channel', async () => {
    const { storage, first, firstSave, second, secondSave } = await twoTabs();
    first.type('B4', 'first');
    await firstSave.flush();
    second.type('B4', 'second');
    await secondSave.flush();
    expect(secondSave.status).toMatchObject({ state: 'conflict', theirs: { revision: 2 } });
    expect(textIn(await storage.open(first.document.id), 'B4')).toBe('first');
    second.type('B5', 'more');
    await vi.advanceTimersByTimeAsync(60_000);
    expect(textIn(await storage.open(first.document.id), 'B4')).toBe('first');
    expect(second.document.sheets[0]?.cells.get('B4')?.text).toBe('second');
  });

  test('ours can be kept as a copy beside theirs', async () => {
    const { storage, first, firstSave, second, secondSave } = await twoTabs();
    first.type('B4', 'first');
    await firstSave.flush();
    second.type('B4', 'second');
    await secondSave.flush();
    secondSave.stop();
    second.document = withFreshIds(second.document, 'Two drivers (copy)');
    await new Autosave(storage, second).flush();
    expect((await storage.list()).map(({ title }) => title).sort()).toEqual(['Two drivers', 'Two drivers (copy)']);
    expect(textIn(await storage.open(second.document.id), 'B4')).toBe('second');
    expect(textIn(await storage.open(first.document.id), 'B4')).toBe('first');
  });

  test('ours can be saved over theirs once the reader wants it', async () => {
    const { storage, first, firstSave, second, secondSave } = await twoTabs();
    first.type('B4', 'first');
    await firstSave.flush();
    second.type('B4', 'second');
    await secondSave.flush();
    await secondSave.overwrite();
    expect(secondSave.status.state).toBe('saved');
    expect(textIn(await storage.open(first.document.id), 'B4')).toBe('second');
    first.type('B4', 'again');
    await firstSave.flush();
    expect(firstSave.status.state).toBe('conflict');
  });

  test('a tab without unsaved edits hears of a newer save and may take it', async () => {
    const { first, firstSave, secondSave } = await twoTabs(new Hall());
    const heard: Entry[] = [];
    secondSave.addEventListener('newer', (event) => heard.push((event as CustomEvent<Entry>).detail));
    first.type('B4', 'first');
    await firstSave.flush();
    expect(heard).toMatchObject([{ id: first.document.id, revision: 2 }]);
    expect(secondSave.status.state).toBe('saved');
  });

  test('a tab with unsaved edits is told of the conflict before it tries to save', async () => {
    const { first, firstSave, second, secondSave } = await twoTabs(new Hall());
    second.type('B4', 'second');
    first.type('B4', 'first');
    await firstSave.flush();
    expect(secondSave.status.state).toBe('conflict');
  });

  test('other documents are no concern of a tab', async () => {
    const hall = new Hall();
    const { secondSave } = await twoTabs(hall);
    const heard = vi.fn();
    secondSave.addEventListener('newer', heard);
    await new Autosave(new MemoryStorage(codec), new Desk(), undefined, hall.tab()).flush();
    expect(heard).not.toHaveBeenCalled();
  });
});
