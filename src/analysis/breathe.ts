import type { Progress, Watch } from './subject/types.ts';

/** So long a question may hold its thread before whoever watches is heard, in milliseconds. */
const LONGEST = 25;

/** Why a promise was rejected when its question was given up. */
export const isAborted = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';

/** Lets a long calculation be followed and given up: to be called between its steps, as often as is convenient. */
export class Breath {
  readonly #watch: Watch;
  #last = performance.now();

  constructor(watch: Watch = {}) {
    this.#watch = watch;
  }

  /** Whether it is time to call {@link take}: for loops too fast to wait each time. */
  get isDue(): boolean {
    return performance.now() - this.#last > LONGEST;
  }

  /** Tells how far one is and lets others have the thread, not more often than is needed.
   *  @throws An `AbortError` when the question was given up. */
  async take(progress?: Progress): Promise<void> {
    this.check();
    if (!this.isDue) return;
    if (progress) this.#watch.progress?.(progress);
    await new Promise((resolve) => setTimeout(resolve, 0));
    this.#last = performance.now();
    this.check();
  }

  check(): void {
    if (this.#watch.signal?.aborted) throw new DOMException('The question was given up.', 'AbortError');
  }
}
