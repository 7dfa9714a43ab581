import fc from 'fast-check';
import { expect, test } from 'vitest';
import { combine } from '../../src/analysis/combine/combine.ts';
import type { CombineQuestion } from '../../src/analysis/combine/types.ts';
import { withModel } from '../../src/analysis/model/document-model.ts';
import { at, documentOf, named, templateNamed } from './documents.ts';

const sums = documentOf({
  A1: '1',
  A2: '2',
  A3: '3',
  B1: '=A1*A2-A3',
  B2: '=CHECK.AT_MOST(A1+A2,4,6,"Sum","Less.")',
});

async function answered(question: CombineQuestion) {
  return withModel(question.document, (model) => combine(model, question));
}

const values = fc.uniqueArray(fc.integer({ min: -5, max: 9 }), { minLength: 1, maxLength: 5 });

test('every combination is computed, and the best are those of a loop', async () => {
  await fc.assert(
    fc.asyncProperty(
      values,
      values,
      values,
      fc.constantFrom('least' as const, 'most' as const),
      fc.boolean(),
      fc.integer({ min: 1, max: 12 }),
      async (first, second, third, by, works, most) => {
        const { rows, of, counts } = await answered({
          document: sums,
          inputs: [first, second, third].map((each, index) => ({ ...at(`A${index + 1}`), values: each })),
          results: [at('B1')],
          order: { result: at('B1'), by },
          ...(works && { works: true as const }),
          most,
        });
        const all = first.flatMap((x) => second.flatMap((y) => third.map((z) => ({ x, y, z, value: x * y - z }))));
        const kept = all.filter(({ x, y }) => !works || x + y <= 6);
        const sense = by === 'most' ? -1 : 1;
        const wanted = kept.toSorted((a, b) => sense * (a.value - b.value)).slice(0, most);
        expect(of).toBe(all.length);
        expect(counts.good).toBe(all.filter(({ x, y }) => x + y <= 4).length);
        expect(rows.map(({ set }) => set.map(({ value }) => value))).toEqual(wanted.map(({ x, y, z }) => [x, y, z]));
        expect(rows.map(({ results: [result] }) => result)).toEqual(
          wanted.map(({ value }) => ({ kind: 'number', value: expect.closeTo(value, 9) as number })),
        );
      },
    ),
    { numRuns: 20 },
  );
}, 60_000);

test('words vary too, and in reading order where nothing ranks', async () => {
  const document = templateNamed('two-driver-check');
  const { rows } = await answered({
    document,
    inputs: [
      { ...named(document, 'Slope'), values: ['LR2', 'LR4'] },
      { ...named(document, 'Target'), values: [97, 100] },
    ],
    results: [named(document, 'WindowWidth')],
    most: 10,
  });
  expect(rows.map(({ set }) => set.map(({ text }) => text).join(' '))).toEqual([
    'LR2 97 dB',
    'LR2 100 dB',
    'LR4 97 dB',
    'LR4 100 dB',
  ]);
});

test.each([
  [{ inputs: [] }, 'Nothing varies'],
  [{ inputs: [at('A1'), at('A1')].map((place) => ({ ...place, values: [1, 2] })) }, 'varies twice'],
  [{ inputs: [{ ...at('A1'), values: Array.from({ length: 1e6 + 1 }, (_, x) => x) }] }, 'take fewer values'],
  [{ inputs: [{ ...at('B1'), values: [1] }] }, 'no input'],
  [{ most: 0 }, 'At least one'],
])('%# is refused with the reason', async (part, reason) => {
  const question = {
    document: sums,
    inputs: [{ ...at('A1'), values: [1] }],
    results: [at('B1')],
    most: 1,
    ...part,
  };
  await expect(answered(question)).rejects.toThrow(reason);
});
