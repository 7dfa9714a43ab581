import type { Combine } from '../../analysis/combine/types.ts';
import { standings } from '../../analysis/subject/types.ts';
import { resultWords } from '../../analysis/subject/words.ts';
import type { Answer } from '../../components/ask/data.ts';
import type { UnitSystem } from '../../document/types.ts';
import { standingWords } from './axes.ts';
import { emptyAnswer } from './found.ts';

/** Every combination, the best of them as a table whose rows can be picked. */
export function combinedAnswer(
  { inputs, results, of, counts, rows }: Combine,
  hasVerdicts: boolean,
  system: UnitSystem,
  note: string,
): Answer {
  const stand = standings
    .filter((standing) => counts[standing] > 0)
    .map((standing) => `${counts[standing]}: ${standingWords[standing]}`);
  return {
    ...emptyAnswer,
    said: [
      `${of} ${of === 1 ? 'combination' : 'combinations'} computed, ${rows.length === 0 ? 'none of them free of failure' : `${rows.length} listed`}.`,
      ...(hasVerdicts ? [`${stand.join('; ')}.`] : []),
    ].join(' '),
    tables:
      rows.length === 0
        ? []
        : [
            {
              table: {
                kind: 'table',
                title: 'Combinations',
                columns: [
                  ...inputs.map(({ label }) => ({ name: label, quantity: 'text' as const })),
                  ...results.map(({ label, kind, quantity }) => ({
                    name: label,
                    quantity: kind === 'number' ? (quantity ?? 'ratio') : ('text' as const),
                  })),
                  ...(hasVerdicts ? [{ name: 'All verdicts together', quantity: 'text' as const }] : []),
                ],
                rows: rows.map(({ set, results: values, worst }) => [
                  ...set.map(({ text }) => text),
                  ...values.map((value, index) => {
                    const result = results[index];
                    return value.kind === 'number' && result?.kind === 'number'
                      ? value.value
                      : resultWords(result ?? {}, value, system);
                  }),
                  ...(hasVerdicts ? [worst] : []),
                ]),
              },
              over: { inputs, results },
              sets: rows.map(({ set }) => set),
            },
          ],
    note,
  };
}
