import { Front } from '../best-rows.ts';
import { NOBODY, orLast, TOO_DEAR } from './shortlist.ts';
import type { Row, Shortlist, ShortlistQuestion } from './types.ts';

/** A question about some of the first members, so that several threads can share a long one. */
export function partsOf(question: ShortlistQuestion, most: number): ShortlistQuestion[] {
  const [first = [], ...others] = question.lists;
  const size = Math.max(1, Math.ceil(first.length / most));
  const parts = Math.max(1, Math.ceil(first.length / size));
  return Array.from({ length: parts }, (_, index) => ({
    ...question,
    lists: [first.slice(index * size, (index + 1) * size), ...others],
  }));
}

/** The best rows of several parts, as if of one. */
export function mergedRows(parts: readonly (readonly Row[])[], offsets: readonly number[], most: number): Row[] {
  const rows = parts.flatMap((part, index) => part.map((row) => moved(row, offsets[index] ?? 0)));
  // Equal scores keep their order, which is that of the parts.
  const best = rows.toSorted((a, b) => b.score - a.score).slice(0, most);
  return best.map((row, index) => ({ ...row, rank: index + 1 }));
}

/** The answer to the whole question from those to its parts. */
export function mergedShortlist(question: ShortlistQuestion, answers: readonly Shortlist[]): Shortlist {
  const sizes = answers.map(({ partners }) => partners[0]?.length ?? 0);
  const offsets = sizes.map((_, index) => sizes.slice(0, index).reduce((sum, size) => sum + size, 0));
  const front = frontOf(answers.flatMap(({ front: rows }, part) => rows.map((row) => moved(row, offsets[part] ?? 0))));
  const isFront = new Set(front.map(keyOf));
  const merged = mergedRows(
    answers.map(({ rows }) => rows),
    offsets,
    question.most,
  );
  const ranks = new Map(merged.map((row) => [keyOf(row), row.rank]));
  const told = (row: Row): Row => ({ ...row, rank: ranks.get(keyOf(row)) ?? 0, isFront: isFront.has(keyOf(row)) });
  const partner = (all: readonly Partner[]): Partner => {
    const best = all.flatMap(({ best: row }) => (row ? [row] : []));
    const [first, ...rest] = best;
    if (!first)
      return {
        why:
          all.map(({ why = '' }) => why).find((why) => why !== TOO_DEAR && why !== NOBODY) ??
          all.find(({ why }) => why === TOO_DEAR)?.why ??
          NOBODY,
      };
    return { best: told(rest.reduce((one, other) => (other.score > one.score ? other : one), first)) };
  };
  const lists = answers[0]?.partners.length ?? 0;
  return {
    rows: merged.map(told),
    judged: sumOf(answers.map(({ judged }) => judged)),
    outside: sumOf(answers.map(({ outside }) => outside)),
    counts: {
      good: sumOf(answers.map(({ counts }) => counts.good)),
      caution: sumOf(answers.map(({ counts }) => counts.caution)),
      fail: sumOf(answers.map(({ counts }) => counts.fail)),
      problem: sumOf(answers.map(({ counts }) => counts.problem)),
    },
    partners: Array.from({ length: lists }, (_, list) => {
      const given = answers.map(({ partners }, part) =>
        (partners[list] ?? []).map((each) => (each.best ? { best: moved(each.best, offsets[part] ?? 0) } : each)),
      );
      if (list === 0) return given.flat().map((each) => partner([each]));
      return (given[0] ?? []).map((_, place) => partner(given.map((each) => each[place] ?? {})));
    }),
    front: front.map(told),
  };
}

type Partner = Shortlist['partners'][number][number];

const moved = (row: Row, offset: number): Row => {
  const [first = 0, ...others] = row.members;
  return { ...row, members: [first + offset, ...others] };
};

const keyOf = ({ members }: Row): string => members.join(' ');

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

function frontOf(rows: readonly Row[]): Row[] {
  const front = new Front();
  for (const [id, { windows, level, reach, price }] of rows.entries())
    front.offer(id, Math.min(...windows.map(({ octaves }) => octaves)), level, orLast(-reach), orLast(-price));
  return front.ids.sort((a, b) => a - b).flatMap((id) => rows[id] ?? []);
}
