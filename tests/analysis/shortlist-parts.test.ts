import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createAnalyst } from '../../src/analysis/analyst.ts';
import { sharedShortlist } from '../../src/analysis/pool.ts';
import { shortlist } from '../../src/analysis/shortlist/shortlist.ts';
import type { Candidate, Row, ShortlistQuestion } from '../../src/analysis/types.ts';
import { usualRules } from '../../src/analysis/shortlist/usual-rules.ts';
import { bare, tweeterOf, wooferOf } from './candidates.ts';

const many = (of: fc.Arbitrary<Candidate>): fc.Arbitrary<Candidate[]> =>
  fc.array(fc.oneof({ arbitrary: of, weight: 9 }, { arbitrary: fc.constant(bare), weight: 1 }), { maxLength: 7 });

const asked: fc.Arbitrary<ShortlistQuestion> = fc.record(
  {
    lists: fc.oneof(
      fc.tuple(many(wooferOf), many(tweeterOf)),
      fc.tuple(many(wooferOf), many(wooferOf), many(tweeterOf)),
    ),
    rules: fc.constant(usualRules),
    limits: fc.record(
      { price: fc.integer({ min: 50, max: 600 }), reach: fc.integer({ min: 20, max: 90 }) },
      { requiredKeys: [] },
    ),
    box: fc.constantFrom('closed' as const, 'vented' as const),
    ranking: fc.constantFrom('window*10-price/100', '-price', '-reach', 'level', '1'),
    most: fc.integer({ min: 1, max: 30 }),
  },
  { requiredKeys: ['lists', 'rules', 'ranking', 'most'] },
);

test('several threads give together what one gives', async () => {
  await fc.assert(
    fc.asyncProperty(asked, fc.integer({ min: 1, max: 4 }), async (question, threads) => {
      const analysts = Array.from({ length: threads }, () => createAnalyst());
      const firsts: (readonly Row[])[] = [];
      const shared = await sharedShortlist(analysts, question, {}, (rows) => firsts.push(rows));
      expect(shared).toEqual(await shortlist(question));
      expect(firsts.length).toBeGreaterThan(0);
    }),
    { numRuns: 60 },
  );
}, 60_000);

test('given up at any moment, it ends with that or with the whole answer', async () => {
  await fc.assert(
    fc.asyncProperty(asked, fc.integer({ min: 0, max: 6 }), async (question, steps) => {
      const control = new AbortController();
      const analysts = [createAnalyst(), createAnalyst()];
      const answer = sharedShortlist(analysts, question, { signal: control.signal }).then(
        (found) => found,
        (error: unknown) => (error instanceof DOMException ? error.name : String(error)),
      );
      for (let step = 0; step < steps; step++) await Promise.resolve();
      control.abort();
      const ended = await answer;
      if (ended !== 'AbortError') expect(ended).toEqual(await shortlist(question));
    }),
    { numRuns: 60 },
  );
}, 60_000);

test('one question given up is given up in every thread', async () => {
  const control = new AbortController();
  const signals: (AbortSignal | undefined)[] = [];
  const waiting = {
    shortlist: (_: ShortlistQuestion, watch?: { signal?: AbortSignal }) => {
      signals.push(watch?.signal);
      return new Promise<never>((_resolve, reject) =>
        watch?.signal?.addEventListener('abort', () => reject(new DOMException('given up', 'AbortError'))),
      );
    },
  };
  const question = { lists: [[bare, bare], [bare]], rules: usualRules, ranking: '1', most: 1 };
  const answer = sharedShortlist([waiting, waiting], question, { signal: control.signal });
  control.abort();
  await expect(answer).rejects.toThrow('given up');
  expect(signals.map((signal) => signal?.aborted)).toEqual([true, true]);
});

test('one thread that breaks off stops the other', async () => {
  let stopped = false;
  const breaking = { shortlist: () => Promise.reject(new Error('broke')) };
  const waiting = {
    shortlist: (_: ShortlistQuestion, watch?: { signal?: AbortSignal }) =>
      new Promise<never>(() => watch?.signal?.addEventListener('abort', () => (stopped = true))),
  };
  const question = { lists: [[bare, bare], [bare]], rules: usualRules, ranking: '1', most: 1 };
  await expect(sharedShortlist([breaking, waiting], question)).rejects.toThrow('broke');
  expect(stopped).toBe(true);
});
