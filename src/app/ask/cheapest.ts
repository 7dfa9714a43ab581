import type { Change, Cheapest, CheapestStep } from '../../analysis/cheapest/types.ts';
import type { SetInput } from '../../analysis/subject/types.ts';
import { listed, resultWords } from '../../analysis/subject/words.ts';
import type { Answer, AnswerTable, Place, Setting, Step } from '../../components/ask/data.ts';
import { labelOf } from '../../document/labels.ts';
import { sheetOf } from '../../document/sheets.ts';
import type { OctavoDocument, UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import { emptyAnswer, givenSaid, setWords, textTable } from './found.ts';

/** The least that turns what fails, step by step; where nothing does, what leaves the fewest failures. */
export function cheapestAnswer(
  cheapest: Cheapest,
  given: readonly SetInput[],
  document: OctavoDocument,
  note: string,
): Answer {
  const { found, nearest, failing, said } = cheapest;
  const fails =
    failing.length === 0 ? [] : [`${failing.length} fail now: ${listed(failing.map(({ label }) => `“${label}”`))}.`];
  return {
    ...emptyAnswer,
    said: [givenSaid(given), ...fails, said].join(' ').trim(),
    found: [
      ...(found
        ? [
            {
              ...doing(
                found.steps.map(({ change }) => change),
                given,
                document,
              ),
              consequence: costWords(cheapest, document),
            },
          ]
        : []),
      ...(nearest
        ? [
            {
              ...doing(nearest.changes, given, document),
              consequence: `Nearest: leaves ${listed(nearest.left.map(({ label }) => `“${label}”`))}`,
            },
          ]
        : []),
    ],
    ...(found && { steps: found.steps.map((step) => stepOf(step, document)) }),
    tables: found ? [stepTable(found.steps)] : [],
    note,
  };
}

const doing = (changes: readonly Change[], given: readonly SetInput[], document: OctavoDocument) => ({
  words: listed([...(given.length > 0 ? [setWords(given)] : []), ...changes.map(({ words }) => words)]),
  sets: [
    ...given,
    ...changes.flatMap(({ texts }) =>
      texts.map(({ sheet, cell, text }): Setting => ({
        sheet,
        cell,
        text,
        label: labelOf(sheetOf(document, sheet), cell),
      })),
    ),
  ],
});

function costWords({ found, counting }: Cheapest, { system }: OctavoDocument): string {
  if (!found) return '';
  const { money, changes, counted } = found;
  return [
    ...(counting && counted !== undefined
      ? [
          `${counting.label} ${resultWords(counting, { kind: 'number', value: counted }, system)}, ${resultWords(counting, counting.present, system)} as the sheet stands`,
        ]
      : []),
    ...(money === 0 ? [] : [`a pair costs ${moneyWords(money, system)}`]),
    `${changes} ${changes === 1 ? 'change' : 'changes'}`,
  ].join('; ');
}

/** `12 ¤ more`. */
function moneyWords(money: number, system: UnitSystem): string {
  const { number, unit } = show(Math.abs(money), { quantity: 'price', system });
  return `${number} ${unit} ${money < 0 ? 'less' : 'more'}`;
}

const stepOf = ({ change, flips }: CheapestStep, { system }: OctavoDocument): Step => ({
  words: [change.words, ...(change.money === 0 ? [] : [moneyWords(change.money, system)])].join(': '),
  turns: flips.map(({ verdict: { sheet, cell, label }, from, to, reason }) => ({
    sheet,
    cell,
    label,
    text: `${from} → ${to}`,
    reason,
  })),
});

interface StepRow {
  readonly cells: readonly (string | null)[];
  readonly live?: Place;
}

/** A row for each verdict that a step turns. */
function stepTable(steps: readonly CheapestStep[]): AnswerTable {
  const rows = steps.flatMap(({ change, flips }, index): StepRow[] => {
    const step = `${index + 1}. ${change.words}`;
    if (flips.length === 0) return [{ cells: [step, 'no verdict yet', null, null, 'Another step needs it.'] }];
    return flips.map(({ verdict, from, to, reason }, at) => ({
      cells: [at === 0 ? step : null, verdict.label, from, to, reason],
      live: verdict,
    }));
  });
  return {
    table: textTable(
      'Step by step',
      ['Step', 'Turns', 'Before', 'After', 'Why'],
      rows.map(({ cells }) => cells),
    ),
    live: rows.map(({ live }) => live),
    isForSheet: true,
  };
}
