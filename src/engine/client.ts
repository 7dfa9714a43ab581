import type { FunctionDescription, FunctionWords } from '../../functions/define.ts';
import { joined, type Asked, type Question, type Reply } from './messages.ts';
import type { CellState, Changes, Place, SheetContent, SheetEngine, Writing } from './types.ts';

interface Waiting {
  /** What has come of the answer so far. */
  readonly cells: CellState[];
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** What is needed of a worker. */
export type WorkerThread = Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

/** The engine in its worker, seen from the page. A worker that breaks takes the questions that wait with it, each of them
 *  is told so; the next question goes to a new one, which holds nothing yet. */
class WorkerEngine implements SheetEngine {
  readonly #start: () => WorkerThread;
  readonly #waiting = new Map<number, Waiting>();
  #worker: WorkerThread | undefined;
  #isDisposed = false;
  #next = 0;

  constructor(start: () => WorkerThread) {
    this.#start = start;
    this.#worker = this.#started();
  }

  load(sheets: readonly SheetContent[]): Promise<Changes> {
    return this.#ask('load', [sheets]) as Promise<Changes>;
  }

  write(writings: readonly Writing[]): Promise<Changes> {
    return this.#ask('write', [writings]) as Promise<Changes>;
  }

  probe(writing: Writing): Promise<readonly CellState[]> {
    return this.#ask('probe', [writing]) as Promise<readonly CellState[]>;
  }

  evaluate(sheet: string, text: string): Promise<CellState> {
    return this.#ask('evaluate', [sheet, text]) as Promise<CellState>;
  }

  functions(): Promise<readonly FunctionDescription[]> {
    return this.#ask('functions', []) as Promise<readonly FunctionDescription[]>;
  }

  words(): Promise<ReadonlyMap<string, FunctionWords>> {
    return this.#ask('words', []) as Promise<ReadonlyMap<string, FunctionWords>>;
  }

  dependents(place: Place): Promise<readonly Place[]> {
    return this.#ask('dependents', [place]) as Promise<readonly Place[]>;
  }

  dispose(): void {
    this.#isDisposed = true;
    this.#failed('The calculation engine was stopped.');
  }

  #started(): WorkerThread {
    const worker = this.#start();
    // What one that was given up still says is for no one.
    const isPresent = (): boolean => this.#worker === worker;
    worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      if (isPresent()) this.#answered(data);
    });
    worker.addEventListener('error', ({ message }: ErrorEvent) => {
      if (isPresent()) this.#failed(`The calculation engine broke off (${message || 'it could not be started'}).`);
    });
    worker.addEventListener('messageerror', () => {
      if (isPresent()) this.#failed('The calculation engine gave an answer that cannot be read.');
    });
    return worker;
  }

  async #ask(method: Asked, given: readonly unknown[]): Promise<unknown> {
    if (this.#isDisposed) throw new Error('The calculation engine was stopped.');
    this.#worker ??= this.#started();
    const number = this.#next++;
    const question: Question = { number, method, given };
    this.#worker.postMessage(question);
    return new Promise((resolve, reject) => this.#waiting.set(number, { cells: [], resolve, reject }));
  }

  #answered({ number, result, failure, cells }: Reply): void {
    const waiting = this.#waiting.get(number);
    if (cells) {
      for (const cell of cells) waiting?.cells.push(cell);
      return;
    }
    this.#waiting.delete(number);
    if (failure === undefined) waiting?.resolve(joined(waiting.cells, result));
    else waiting?.reject(new Error(failure));
  }

  #failed(message: string): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of waiting) reject(new Error(message));
  }
}

const startWorker = (): WorkerThread =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'engine' });

/** Starts the engine in a worker of its own.
 *  @param start - Starts the thread, again after each that broke. */
export const createWorkerEngine = (start = startWorker): SheetEngine => new WorkerEngine(start);
