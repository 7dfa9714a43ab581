import type { Progress, Watch } from './subject/types.ts';

/** Several questions at once, followed and given up as one; where one breaks off, all do. */
export async function together<T>(
  asks: readonly ((watch: Watch) => Promise<T>)[],
  { signal, progress }: Watch = {},
): Promise<T[]> {
  const control = new AbortController();
  const stop = (): void => control.abort();
  if (signal?.aborted) stop();
  signal?.addEventListener('abort', stop, { once: true });
  const told: Progress[] = asks.map(() => ({ done: 0, of: 0 }));
  const tell = (index: number, each: Progress): void => {
    told[index] = each;
    progress?.({
      done: told.reduce((sum, { done }) => sum + done, 0),
      of: told.reduce((sum, { of }) => sum + of, 0),
    });
  };
  try {
    return await Promise.all(
      asks.map((ask, index) => ask({ signal: control.signal, progress: (each) => tell(index, each) })),
    );
  } finally {
    stop();
    signal?.removeEventListener('abort', stop);
  }
}
