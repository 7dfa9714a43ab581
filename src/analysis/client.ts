import type { Asked, FromWorker, ToWorker } from './messages.ts';
import { QuestionError } from './subject/place-error.ts';
import type { Watch } from './subject/types.ts';
import type { Analyst, Row } from './types.ts';

/** What is needed of a worker. */
export type WorkerThread = Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

interface Waiting {
  readonly asked: ToWorker;
  readonly watch: Watch;
  readonly first: ((rows: readonly Row[]) => void) | undefined;
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** So long a question that was given up may go on before its worker is ended, in milliseconds. */
const PATIENCE = 1000;

/** Questions answered in a worker. One that was given up rejects at once; if the worker does not let go of it soon, the worker
 *  is ended, and a new one gets the questions that still wait, and the next. */
class WorkerAnalyst {
  readonly #start: () => WorkerThread;
  readonly #waiting = new Map<number, Waiting>();
  /** Given up, and not let go by the worker yet. */
  readonly #stopping = new Set<number>();
  #worker: WorkerThread | undefined;
  /** Whether the worker stands; while it is fetched, it cannot hear that a question was given up. */
  #isReady = false;
  #next = 0;

  constructor(start: () => WorkerThread) {
    this.#start = start;
  }

  ask(
    method: Asked,
    given: readonly unknown[],
    watch: Watch = {},
    first?: (rows: readonly Row[]) => void,
  ): Promise<unknown> {
    const { signal } = watch;
    if (signal?.aborted) return Promise.reject(stopped());
    const worker = (this.#worker ??= this.#started());
    const number = this.#next++;
    signal?.addEventListener('abort', () => this.#stop(number), { once: true });
    return new Promise((resolve, reject) => {
      const asked: ToWorker = { kind: 'ask', number, method, given };
      this.#waiting.set(number, { asked, watch, first, resolve, reject });
      worker.postMessage(asked);
    });
  }

  dispose(): void {
    this.#failed('The analysis was stopped.');
  }

  #started(): WorkerThread {
    const worker = this.#start();
    const isPresent = (): boolean => this.#worker === worker;
    worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (isPresent()) this.#heard(data);
    });
    worker.addEventListener('error', ({ message }: ErrorEvent) => {
      if (isPresent()) this.#failed(`The analysis broke off (${message || 'it could not be started'}).`);
    });
    worker.addEventListener('messageerror', () => {
      if (isPresent()) this.#failed('The analysis gave an answer that cannot be read.');
    });
    return worker;
  }

  #heard(message: FromWorker): void {
    this.#isReady = true;
    if (message.kind === 'ready') return;
    const waiting = this.#waiting.get(message.number);
    if (message.kind === 'progress') waiting?.watch.progress?.(message.progress);
    if (message.kind === 'first') waiting?.first?.(message.rows as readonly Row[]);
    if (message.kind === 'progress' || message.kind === 'first') return;
    this.#stopping.delete(message.number);
    this.#waiting.delete(message.number);
    if (message.kind === 'answer') waiting?.resolve(message.result);
    else waiting?.reject(message.isStopped ? stopped() : new QuestionError(message.message));
  }

  #stop(number: number): void {
    const waiting = this.#waiting.get(number);
    if (!waiting) return;
    this.#waiting.delete(number);
    this.#stopping.add(number);
    this.#worker?.postMessage({ kind: 'stop', number } satisfies ToWorker);
    waiting.reject(stopped());
    this.#expectLetGo(number);
  }

  #expectLetGo(number: number): void {
    setTimeout(() => {
      if (!this.#stopping.has(number)) return;
      if (this.#isReady) this.#startAnew();
      else this.#expectLetGo(number);
    }, PATIENCE);
  }

  #startAnew(): void {
    this.#end();
    if (this.#waiting.size === 0) return;
    this.#worker = this.#started();
    for (const { asked } of this.#waiting.values()) this.#worker.postMessage(asked);
  }

  #end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#isReady = false;
    this.#stopping.clear();
  }

  #failed(message: string): void {
    this.#end();
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of waiting) reject(new Error(message));
  }
}

const stopped = (): DOMException => new DOMException('The question was given up.', 'AbortError');

const startWorker = (): WorkerThread =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'analysis' });

/** Answers in a worker of its own, started with the first question.
 *  @param start - Starts the thread, again after each that broke. */
export function createWorkerAnalyst(start = startWorker): Analyst {
  const worker = new WorkerAnalyst(start);
  const asked = (method: Asked) => (question: unknown, watch?: Watch, first?: (rows: readonly Row[]) => void) =>
    worker.ask(method, [question], watch, first);
  return {
    subject: (document) => worker.ask('subject', [document]),
    read: (document, sentence) => worker.ask('read', [document, sentence]),
    sweep: asked('sweep'),
    map: asked('map'),
    seek: asked('seek'),
    combine: asked('combine'),
    optimise: asked('optimise'),
    cheapest: asked('cheapest'),
    scatter: asked('scatter'),
    scatterPart: asked('scatterPart'),
    scatterSummary: asked('scatterSummary'),
    drives: asked('drives'),
    follows: asked('follows'),
    shortlist: asked('shortlist'),
    dispose: () => worker.dispose(),
  } as Analyst;
}
