/// <reference lib="webworker" />
import { createAnalyst } from './analyst.ts';
import { isAborted } from './breathe.ts';
import type { FromWorker, ToWorker } from './messages.ts';
import type { Watch } from './subject/types.ts';

/** A thread for questions over whole sheets: neither the page nor its engine waits for them. */
const analyst = createAnalyst();
const open = new Map<number, AbortController>();

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if (data.kind === 'stop') open.get(data.number)?.abort();
  else void answer(data);
});

const post = (message: FromWorker): void => postMessage(message);
post({ kind: 'ready' });

async function answer({ number, method, given }: Extract<ToWorker, { kind: 'ask' }>): Promise<void> {
  const control = new AbortController();
  open.set(number, control);
  const watch: Watch = { signal: control.signal, progress: (progress) => post({ kind: 'progress', number, progress }) };
  const first = (rows: unknown): void => post({ kind: 'first', number, rows });
  try {
    const isWatched = method !== 'subject' && method !== 'read';
    const ask = analyst[method] as (...all: readonly unknown[]) => Promise<unknown>;
    post({ kind: 'answer', number, result: await ask(...given, ...(isWatched ? [watch, first] : [])) });
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    post({ kind: 'failure', number, message, isStopped: isAborted(error) });
  } finally {
    open.delete(number);
  }
}
