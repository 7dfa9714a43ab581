import { describe, expect, test, vi } from 'vitest';
import { createWorkerAnalyst, type WorkerThread } from '../../src/analysis/client.ts';
import type { FromWorker, ToWorker } from '../../src/analysis/messages.ts';
import { at, documentOf } from './documents.ts';

const document = documentOf({ A1: '1', B1: '=A1' });
const question = { document, at: at('B1') };

/** A worker that does only what the test says. */
class PuppetWorker implements WorkerThread {
  readonly asked: ToWorker[] = [];
  isEnded = false;
  readonly #listeners = new Map<string, (event: Event) => void>();

  postMessage(message: unknown): void {
    this.asked.push(message as ToWorker);
  }

  terminate(): void {
    this.isEnded = true;
  }

  addEventListener(type: string, listener: unknown): void {
    this.#listeners.set(type, listener as (event: Event) => void);
  }

  say(data: FromWorker): void {
    this.#listeners.get('message')?.(new MessageEvent('message', { data }));
  }

  breakOff(): void {
    this.#listeners.get('error')?.(new Event('error'));
  }
}

function puppets() {
  const workers: PuppetWorker[] = [];
  const analyst = createWorkerAnalyst(() => {
    const worker = new PuppetWorker();
    workers.push(worker);
    return worker;
  });
  return { workers, analyst };
}

describe('questions asked of a worker', () => {
  test('progress and answer find back', async () => {
    const { workers, analyst } = puppets();
    const progress = vi.fn();
    const answer = analyst.drives(question, { progress });
    workers[0]?.say({ kind: 'progress', number: 0, progress: { done: 1, of: 2 } });
    workers[0]?.say({ kind: 'answer', number: 0, result: 'tree' });
    expect(await answer).toBe('tree');
    expect(progress).toHaveBeenCalledWith({ done: 1, of: 2 });
  });

  test('one given up rejects at once, and a worker that lets go goes on', async () => {
    vi.useFakeTimers();
    const { workers, analyst } = puppets();
    const control = new AbortController();
    const answer = analyst.drives(question, { signal: control.signal });
    control.abort();
    await expect(answer).rejects.toThrow('given up');
    expect(workers[0]?.asked.at(-1)).toEqual({ kind: 'stop', number: 0 });
    workers[0]?.say({ kind: 'failure', number: 0, message: '', isStopped: true });
    vi.advanceTimersByTime(5000);
    expect(workers[0]?.isEnded).toBe(false);
    vi.useRealTimers();
  });

  test('a worker that does not let go is ended, and what waits goes to a new one', async () => {
    vi.useFakeTimers();
    const { workers, analyst } = puppets();
    const control = new AbortController();
    const answer = analyst.drives(question, { signal: control.signal });
    const waiting = analyst.drives(question);
    control.abort();
    await expect(answer).rejects.toThrow('given up');
    // One that is still being fetched can let go of nothing.
    vi.advanceTimersByTime(5000);
    expect(workers[0]?.isEnded).toBe(false);
    workers[0]?.say({ kind: 'ready' });
    vi.advanceTimersByTime(5000);
    expect(workers[0]?.isEnded).toBe(true);
    vi.useRealTimers();
    expect(workers[1]?.asked).toMatchObject([{ kind: 'ask', number: 1 }]);
    workers[1]?.say({ kind: 'answer', number: 1, result: 'tree' });
    expect(await waiting).toBe('tree');
  });

  test('whoever waits is told when a worker breaks off', async () => {
    const { workers, analyst } = puppets();
    const answer = analyst.drives(question);
    workers[0]?.breakOff();
    await expect(answer).rejects.toThrow('broke off');
  });
});
