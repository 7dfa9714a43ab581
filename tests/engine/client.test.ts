import { beforeEach, describe, expect, test } from 'vitest';
import { createWorkerEngine, type WorkerThread } from '../../src/engine/client.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { inPieces, type Question, type Reply } from '../../src/engine/messages.ts';
import type { SheetEngine } from '../../src/engine/types.ts';
import { sheetWith, typed } from './sheet.ts';

/** A thread that answers only when told to, in the order that a test wants. */
class Thread extends EventTarget implements WorkerThread {
  readonly asked: Question[] = [];
  isTerminated = false;

  postMessage(question: unknown): void {
    this.asked.push(structuredClone(question) as Question);
  }

  terminate(): void {
    this.isTerminated = true;
  }

  answer(reply: Reply): void {
    this.dispatchEvent(new MessageEvent('message', { data: reply }));
  }

  breakOff(message: string): void {
    this.dispatchEvent(Object.assign(new Event('error'), { message }));
  }
}

const timing = { compile: 1, evaluate: 2 };
const empty = { sheet: 's', value: { kind: 'empty' }, type: { kind: 'empty' }, findings: [] } as const;

let threads: Thread[];
let engine: SheetEngine;
const thread = (index = 0): Thread => threads[index] ?? expect.fail('no such thread was started');

beforeEach(() => {
  threads = [];
  engine = createWorkerEngine(() => {
    const next = new Thread();
    threads.push(next);
    return next as WorkerThread;
  });
});

describe('the engine seen from the page', () => {
  test('an answer finds who asked, whatever the order', async () => {
    const first = engine.evaluate('s', '=1');
    const second = engine.evaluate('s', '=2');
    const [one, two] = thread().asked;
    thread().answer({ number: two?.number ?? -1, result: 'second' });
    thread().answer({ number: one?.number ?? -1, result: 'first' });
    expect(await Promise.all([first, second])).toEqual(['first', 'second']);
  });

  test.each([0, 1, 10_000, 10_001, 25_000])(
    'an answer of %d cells comes whole, in pieces of ten thousand',
    async (many) => {
      const asked = engine.load([]);
      const cells = Array.from({ length: many }, (_, index) => ({ ...empty, cell: `A${String(index + 1)}` }));
      const pieces = [...inPieces({ number: 0, result: { cells, timing } })];
      expect(pieces).toHaveLength(Math.max(1, Math.ceil(many / 10_000)));
      for (const piece of pieces) thread().answer(structuredClone(piece));
      expect(await asked).toEqual({ cells, timing });
    },
  );

  test('an answer that nobody waits for is passed over', async () => {
    const asked = engine.evaluate('s', '=1');
    thread().answer({ number: 99, result: 'for no one' });
    thread().answer({ number: 0, result: 'mine' });
    thread().answer({ number: 0, result: 'again' });
    expect(await asked).toBe('mine');
  });

  test('a failure reaches who asked, and no one else', async () => {
    const first = engine.evaluate('s', '=1');
    const second = engine.evaluate('s', '=2');
    thread().answer({ number: 0, failure: 'stumbled' });
    thread().answer({ number: 1, result: 'fine' });
    await expect(first).rejects.toThrow('stumbled');
    expect(await second).toBe('fine');
    expect(threads).toHaveLength(1);
  });

  test('a question that cannot cross is refused at once', async () => {
    const odd = new Map([['A1', (() => 0) as unknown as string]]);
    await expect(engine.load([{ id: 's', name: 'S', cells: odd, names: new Map() }])).rejects.toThrow(/clone/i);
    const asked = engine.evaluate('s', '=1');
    thread().answer({ number: thread().asked.at(-1)?.number ?? -1, result: 'fine' });
    expect(await asked).toBe('fine');
  });
});

describe('a thread that breaks off', () => {
  test('tells all who wait, is given up, and the next question goes to a new one', async () => {
    const waiting = [engine.evaluate('s', '=1'), engine.write([typed('A1', '2')])];
    thread().breakOff('out of memory');
    for (const each of waiting) await expect(each).rejects.toThrow('broke off (out of memory)');
    expect(thread().isTerminated).toBe(true);
    const asked = engine.evaluate('s', '=3');
    expect(threads).toHaveLength(2);
    thread(1).answer({ number: thread(1).asked[0]?.number ?? -1, result: 'again' });
    expect(await asked).toBe('again');
  });

  test('says nothing any more once it is given up', async () => {
    const before = engine.evaluate('s', '=1');
    thread().breakOff('out of memory');
    await expect(before).rejects.toThrow();
    const after = engine.evaluate('s', '=2');
    const number = thread(1).asked[0]?.number ?? -1;
    thread().answer({ number, result: 'late and wrong' });
    thread().breakOff('late');
    thread(1).answer({ number, result: 'right' });
    expect(await after).toBe('right');
    expect(threads).toHaveLength(2);
  });

  test('is no new one before there is a question', () => {
    thread().breakOff('out of memory');
    thread().breakOff('out of memory');
    expect(threads).toHaveLength(1);
  });

  test('an answer that cannot be read counts as one', async () => {
    const asked = engine.evaluate('s', '=1');
    thread().dispatchEvent(new Event('messageerror'));
    await expect(asked).rejects.toThrow('cannot be read');
  });
});

test('when it is stopped, what waits is told and nothing is taken any more', async () => {
  const waiting = engine.evaluate('s', '=1');
  engine.dispose();
  await expect(waiting).rejects.toThrow('was stopped');
  await expect(engine.evaluate('s', '=2')).rejects.toThrow('was stopped');
  expect(thread().isTerminated).toBe(true);
  expect(threads).toHaveLength(1);
});

test('what the engine tells of its functions can cross: plain data, every one of the catalogue', async () => {
  const direct = createEngine();
  await direct.load(sheetWith({ A1: '1' }));
  const told = structuredClone(await direct.functions());
  expect(told.find(({ name }) => name === 'CLOSED.QTC')).toMatchObject({ parameters: { qts: {} } });
  const words = structuredClone(await direct.words());
  expect([...words.keys()]).toEqual(told.map(({ name }) => name));
  expect([...words.values()].every(({ summary, example }) => summary !== '' && example.startsWith('='))).toBe(true);
});
