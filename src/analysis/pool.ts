import { mergedRows, mergedShortlist, partsOf } from './shortlist/parts.ts';
import type { Row, Shortlist, ShortlistQuestion } from './shortlist/types.ts';
import type { Scatter, ScatterQuestion } from './scatter/types.ts';
import type { Watch } from './subject/types.ts';
import { together } from './together.ts';
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
  const firsts: (readonly Row[])[] = parts.map(() => []);
  let isDone = false;
  try {
    const answers = await together(
      parts.map((part, index) => (own: Watch) => {
        const analyst = analysts[index];
        if (!analyst) throw new RangeError(`There is no analyst ${index}.`);
        return analyst.shortlist(
          part,
          own,
          first &&
            ((rows) => {
              firsts[index] = rows;
              if (!isDone) first(mergedRows(firsts, offsets, question.most));
            }),
        );
      }),
      watch,
    );
    return mergedShortlist(question, answers);
  } finally {
    isDone = true;
  }
}

/** So many runs at least are worth a thread. */
const RUNS = 500;

/** An analyst that shares long scatters with further ones, each started when it is first of use. */
export function pooledAnalyst(start: () => Analyst, most: number): Analyst {
  const analysts: Analyst[] = [];
  const analystAt = (index: number): Analyst => (analysts[index] ??= start());
  return {
    ...analystAt(0),
    scatter: (question, watch) => {
      const threads = Math.max(1, Math.min(most, Math.floor(question.runs / RUNS)));
      return sharedScatter(
        Array.from({ length: threads }, (_, index) => analystAt(index)),
        question,
        watch,
      );
    },
    dispose: () => {
      for (const analyst of analysts) analyst.dispose();
    },
  };
}

/** A scatter shared by several analysts: each does some of the runs, and then each sums up some of the results. The answer is that
 *  of one alone. */
export async function sharedScatter(
  analysts: readonly Pick<Analyst, 'scatterPart' | 'scatterSummary'>[],
  question: ScatterQuestion,
  watch: Watch = {},
): Promise<Scatter> {
  const { runs, seed } = question;
  const threads = analysts.length;
  const parts = await together(
    analysts.map((analyst, index) => (own: Watch) => {
      const [from, to] = [index, index + 1].map((each) => Math.round((runs * each) / threads)) as [number, number];
      return analyst.scatterPart({ ...question, from, to }, own);
    }),
    watch,
  );
  const [first] = parts;
  const all = (first?.of ?? []).map((one, at) => ({
    ...one,
    columns: parts.flatMap(({ of }) => of[at]?.columns ?? []),
  }));
  const summed = await together(
    analysts.map(
      (analyst, index) => (own: Watch) =>
        analyst.scatterSummary({ of: all.filter((_, at) => at % threads === index), runs }, own),
    ),
    watch,
  );
  const results = all.flatMap((_, at) => summed[at % threads]?.[Math.floor(at / threads)] ?? []);
  return { runs, seed, results, isCompiled: first?.isCompiled ?? false };
}
