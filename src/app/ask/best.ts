import type { Optimum } from '../../analysis/optimise/types.ts';
import type { SetInput } from '../../analysis/subject/types.ts';
import type { OptimiseQuestion } from '../../analysis/types.ts';
import { inputWords, listed, resultWords } from '../../analysis/subject/words.ts';
import type { Answer } from '../../components/ask/data.ts';
import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import { standingWords } from './axes.ts';
import { emptyAnswer, givenSaid, setWords, textTable } from './found.ts';

/** The best within bounds, beside what the sheet holds now. */
export function bestAnswer(
  { inputs, result, bounds, limits, found, before, worstBefore, looked }: Optimum,
  { objective, keep }: OptimiseQuestion,
  given: readonly SetInput[],
  system: UnitSystem,
  note: string,
): Answer {
  const within = inputs
    .map((input, index) => {
      const [from = 0, to = 0] = bounds[index] ?? [];
      return `${input.label} from ${inputWords(input, from, system)} to ${inputWords(input, to, system)}`;
    })
    .join(', ');
  const searched = `Looked at ${looked} places, ${within}; a valley narrower than their grid can be missed.`;
  if (!found)
    return {
      ...emptyAnswer,
      said: [
        givenSaid(given),
        `Nowhere within the bounds ${
          keep || limits.length > 0
            ? `is ${listed([
                ...(keep ? [keep === 'good' ? 'every verdict good' : 'no verdict failing'] : []),
                ...limits.map((limit) => limitWords(limit, system)),
              ])}`
            : `has ${result.label} a value`
        }.`,
        searched,
      ]
        .join(' ')
        .trim(),
      tables: [],
      note,
    };
  const { set, value, worst, limited } = found;
  const named = { ...result, label: result.label };
  const words = (number: number): string => {
    if (Number.isNaN(number)) return 'no number';
    if (objective.kind === 'least' || objective.kind === 'most')
      return resultWords(named, { kind: 'number', value: number }, system);
    const { quantity, unit } = result;
    const shown = show(number, { quantity, system, unit, digits: 3 });
    return `${shown.number} ${shown.unit}`.trim();
  };
  const what = {
    least: result.label,
    most: result.label,
    nearest: `${result.label}, distance from the target`,
    flattest: `${result.label}, highest less lowest`,
  }[objective.kind];
  const atEnd = inputs.filter((_, index) => bounds[index]?.some((end) => end === set[index]?.value));
  const kept = keep ? `; ${standingWords[worst]}` : '';
  return {
    ...emptyAnswer,
    said: [
      ...(given.length > 0 ? [givenSaid(given)] : []),
      `${what}: ${words(value)}, ${words(before)} as the sheet stands${kept}.`,
      ...(limits.length > 0
        ? [
            `Kept: ${listed(limits.map((limit, index) => `${limitWords(limit, system)} (${resultWords(limit.result, limited[index] ?? { kind: 'empty' }, system)})`))}.`,
          ]
        : []),
      ...(atEnd.length > 0
        ? [
            `${listed(atEnd.map(({ label }) => label))} ${atEnd.length === 1 ? 'stands' : 'stand'} at an end of the bounds.`,
          ]
        : []),
      searched,
    ].join(' '),
    found: [
      {
        words: setWords([...given, ...set]),
        consequence: `${what} ${words(value)}${kept}`,
        sets: [...given, ...set],
      },
    ],
    tables: [
      {
        table: textTable(
          'Compared',
          ['What', 'When it was asked', 'Best'],
          [
            ...inputs.map((input, index) => [
              input.label,
              inputWords(input, input.present, system),
              set[index]?.text ?? '',
            ]),
            [what, words(before), words(value)],
            ...limits.map(({ result: held, ...limit }, index) => [
              limitWords({ result: held, ...limit }, system),
              resultWords(held, held.present, system),
              resultWords(held, limited[index] ?? { kind: 'empty' }, system),
            ]),
            ...(keep ? [['Verdicts', standingWords[worstBefore], standingWords[worst]]] : []),
          ],
        ),
        live: [
          ...inputs,
          objective.kind === 'least' || objective.kind === 'most' ? result : undefined,
          ...limits.map((limit) => limit.result),
        ],
      },
    ],
    note,
  };
}

/** `F3 at most 50 Hz`. */
const limitWords = ({ result, at, value }: Optimum['limits'][number], system: UnitSystem): string =>
  `${result.label} at ${at} ${resultWords(result, { kind: 'number', value }, system)}`;
