import type { FunctionDescription } from '../../functions/define.ts';
import type { Asked, Question, Reply } from './messages.ts';
import type { CellState, Changes, Place, SheetContent, SheetEngine, Writing } from './types.ts';

interface Waiting {
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** The engine in its worker, seen from the page. Questions are answered in the order asked. */
class WorkerEngine implements SheetEngine {
  readonly #worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'engine' });
  readonly #waiting = new Map<number, Waiting>();
  #next = 0;

  constructor() {
    this.#worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => this.#answered(data));
    this.#worker.addEventListener('error', ({ message }) => this.#failed(message));
  }

  load(sheets: readonly SheetContent[]): Promise<Changes> {
    return this.#ask('load', [sheets]) as Promise<Changes>;
  }

  write(writings: readonly Writing[]): Promise<Changes> {
    return this.#ask('write', [writings]) as Promise<Changes>;
  }

  evaluate(sheet: string, text: string): Promise<CellState> {
    return this.#ask('evaluate', [sheet, text]) as Promise<CellState>;
  }

  functions(): Promise<readonly FunctionDescription[]> {
    return this.#ask('functions', []) as Promise<readonly FunctionDescription[]>;
  }

  dependents(place: Place): Promise<readonly Place[]> {
    return this.#ask('dependents', [place]) as Promise<readonly Place[]>;
  }

  dispose(): void {
    this.#worker.terminate();
    this.#failed('The calculation engine was stopped.');
  }

  #ask(method: Asked, given: readonly unknown[]): Promise<unknown> {
    const number = this.#next++;
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, { resolve, reject });
      const question: Question = { number, method, given };
      this.#worker.postMessage(question);
    });
  }

  #answered({ number, result, failure }: Reply): void {
    const waiting = this.#waiting.get(number);
    this.#waiting.delete(number);
    if (failure === undefined) waiting?.resolve(result);
    else waiting?.reject(new Error(failure));
  }

  #failed(message: string): void {
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of waiting) reject(new Error(message));
  }
}

/** Starts the engine in a worker of its own. */
export const createWorkerEngine = (): SheetEngine => new WorkerEngine();
