import { mergedRows, mergedShortlist, partsOf } from './shortlist-parts.ts';
import type { Row, Shortlist, ShortlistQuestion } from './shortlist-types.ts';
import type { Watch } from './subject-types.ts';
import type { Analyst } from './types.ts';

/** A shortlist shared by several analysts, each with a part of the first members; the answer is that of one alone. Where one
 *  breaks off, all do. */
export async function sharedShortlist(
  analysts: readonly Pick<Analyst, 'shortlist'>[],
  question: ShortlistQuestion,
  watch: Watch = {},
  first?: (rows: readonly Row[]) => void,
): Promise<Shortlist> {
  const parts = partsOf(question, analysts.length);
  const offsets = parts.map((_, index) => index * (parts[0]?.lists[0]?.length ?? 0));
  const control = new AbortController();
  const stop = (): void => control.abort();
  if (watch.signal?.aborted) stop();
  watch.signal?.addEventListener('abort', stop, { once: true });
  const progress = parts.map(() => ({ done: 0, of: 0 }));
  const firsts: (readonly Row[])[] = parts.map(() => []);
  let isDone = false;
  try {
    const answers = await Promise.all(
      parts.map((part, index) => {
        const analyst = analysts[index];
        if (!analyst) throw new RangeError(`There is no analyst ${index}.`);
        return analyst.shortlist(
          part,
          {
            signal: control.signal,
            progress: (each) => {
              progress[index] = each;
              watch.progress?.({
                done: progress.reduce((sum, { done }) => sum + done, 0),
                of: progress.reduce((sum, { of }) => sum + of, 0),
              });
            },
          },
          first &&
            ((rows) => {
              firsts[index] = rows;
              if (!isDone) first(mergedRows(firsts, offsets, question.most));
            }),
        );
      }),
    );
    return mergedShortlist(question, answers);
  } finally {
    isDone = true;
    stop();
    watch.signal?.removeEventListener('abort', stop);
  }
}
