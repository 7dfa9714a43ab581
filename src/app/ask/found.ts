import type { TableRecord } from '../../../functions/values/table.ts';
import type { Branch as Drive, Drives, Follows } from '../../analysis/drives/types.ts';
import type { Found, Seek } from '../../analysis/seek/types.ts';
import { LEVEL_STEP } from '../../analysis/drives/sensitivity.ts';
import { standingOf, type Input, type Result, type SetInput } from '../../analysis/subject/types.ts';
import { inputWords, resultWords } from '../../analysis/subject/words.ts';
import type { Answer, Bar, Branch } from '../../components/ask/data.ts';
import type { UnitSystem } from '../../document/types.ts';
import { verdictIn } from '../../document/verdicts.ts';
import type { CellValue } from '../../engine/types.ts';
import { standingWords } from './axes.ts';
import { show } from '../../units/show.ts';

export const emptyAnswer = { found: [], bars: [], tables: [] } as const;

/** A table of words. */
export const textTable = (title: string, names: readonly string[], rows: TableRecord['rows']): TableRecord => ({
  kind: 'table',
  title,
  columns: names.map((name) => ({ name, quantity: 'text' })),
  rows,
});

/** What was set first, and is set with what is found. */
export const givenSaid = (given: readonly SetInput[]): string => (given.length > 0 ? `With ${setWords(given)}:` : '');

export const setWords = (sets: readonly Pick<SetInput, 'label' | 'text'>[]): string =>
  sets.map(({ label, text }) => `${label} ${text}`).join(', ');

/** All values that bring the result to its target; where none does, the nearest. */
export function seekAnswer(seek: Seek, given: readonly SetInput[], system: UnitSystem, note: string): Answer {
  const { found, nearest, input, result, sentence, stretches, searched } = seek;
  const listed: readonly Found[] = found.length > 0 ? found : nearest ? [nearest] : [];
  const rows = listed.map(({ set, result: value }) => [set.text, resultWords(result, value, system)]);
  return {
    ...emptyAnswer,
    said: [givenSaid(given), sentence, ...stretchesSaid(seek, stretches, system), searched].join(' ').trim(),
    found: listed.map(({ set, result: value }) => ({
      words: setWords([...given, set]),
      consequence: `${found.length > 0 ? '' : 'Nearest: '}${result.cell === '' ? standingWords[standingOf(value)] : `${result.label} ${resultWords(result, value, system)}`}`,
      sets: [...given, set],
    })),
    tables: [
      {
        table: textTable('Values found', [input.label, result.label], rows),
        // What was set first does not stand in the row.
        ...(given.length === 0 && result.cell !== '' && { over: { inputs: [input], results: [result] } }),
        live: listed.map(() => result),
        isForSheet: true,
      },
    ],
    note,
  };
}

function stretchesSaid({ input, target }: Seek, stretches: Seek['stretches'], system: UnitSystem): string[] {
  if (target.kind === 'number' || stretches.length === 0) return [];
  const words = stretches.map(
    ([low, high]) => `from ${inputWords(input, low, system)} to ${inputWords(input, high, system)}`,
  );
  return [`It holds ${words.join(', and ')}.`];
}

/** What one per cent more does, as a difference: `+0.3 Hz`. */
function effectWords({ quantity, unit }: Result, perPercent: number, system: UnitSystem): string {
  // A degree of temperature has an offset, which a difference has not.
  const own = quantity === 'temperature' ? 'K' : unit;
  const shown = show(perPercent, { quantity, system, unit: own, digits: 3 });
  return `${perPercent > 0 ? '+' : ''}${shown.number}${shown.unit === '' ? '' : ` ${shown.unit}`}`;
}

const standing = (count: number): string => `${count} more ${count === 1 ? 'input stands' : 'inputs stand'}`;

/** What one per cent of a level is, where one is among some inputs. */
const levelSaid = (inputs: readonly Input[]): string[] =>
  inputs.some(({ quantity }) => quantity === 'level')
    ? [`One per cent more of a level is ${LEVEL_STEP.toFixed(3)} dB: one per cent of the pressure.`]
    : [];

function drivesSaid({ result, inputs, still }: Drives): string {
  const [most] = inputs;
  if (most)
    return [
      `${result.label} is moved most by ${most.input.label}.`,
      ...(still.length > 0 ? [`${standing(still.length)} behind it without moving it.`] : []),
      ...levelSaid(inputs.map(({ input }) => input)),
    ].join(' ');
  if (result.kind === 'verdict')
    return `${result.label} is a verdict, not a number. What it follows from stands below; “Find a value” tells which input turns it.`;
  return still.length > 0
    ? `No input moves ${result.label} where it stands, though ${still.length === 1 ? 'one stands' : `${still.length} stand`} behind it.`
    : `${result.label} depends on no input whose effect can be told as a number.`;
}

/** What a result depends on: each input's effect, biggest first, and the way there from cell to cell. */
export function drivesAnswer(drives: Drives, system: UnitSystem, note: string): Answer {
  const { result, tree, inputs: moving } = drives;
  const most = Math.abs(moving[0]?.perPercent ?? 0);
  const rows = moving.map(({ input, perPercent }): Bar => ({
    label: input.label,
    share: most === 0 ? 0 : Math.abs(perPercent) / most,
    text: effectWords(result, perPercent, system),
    place: { sheet: input.sheet, cell: input.cell },
  }));
  return {
    ...emptyAnswer,
    said: drivesSaid(drives),
    bars: rows.length > 0 ? [{ title: `One per cent more does to ${result.label}`, rows }] : [],
    tree: branchOf(tree, result, system),
    tables:
      moving.length === 0
        ? []
        : [
            {
              table: textTable(
                `What drives ${result.label}`,
                ['Input', 'When it was asked', 'One per cent more does'],
                moving.map(({ input, perPercent }) => [
                  input.label,
                  inputWords(input, input.present, system),
                  effectWords(result, perPercent, system),
                ]),
              ),
              live: moving.map(({ input }) => input),
              isForSheet: true,
            },
          ],
    note,
  };
}

/** More inputs than these that do not move a result are not told one by one. */
const MOST_STILL = 2;

function branchOf(
  { label, value, perPercent, branches, isRepeated, ...place }: Drive,
  result: Result,
  system: UnitSystem,
): Branch {
  const effect = perPercent === undefined ? '' : `, ${effectWords(result, perPercent, system)} per cent more`;
  // A record takes in many inputs of which few move a result: the others are counted.
  const told = branches.filter((each) => each.perPercent !== 0);
  const still = branches.length - told.length;
  const folded = still > MOST_STILL && told.length > 0;
  return {
    sheet: place.sheet,
    cell: place.cell,
    label,
    text: `${place.cell}${valueWords(value, system)}${effect}${isRepeated ? ', as above' : ''}${folded ? `; ${standing(still)} in it without moving it` : ''}`,
    branches: (folded ? told : branches).map((each) => branchOf(each, result, system)),
  };
}

const valueWords = (value: CellValue, system: UnitSystem): string =>
  verdictIn({ value }) ? `: ${resultWords({}, value, system)}` : '';

/** All that follows from an input. */
export function followsAnswer({ input, results }: Follows, system: UnitSystem, note: string): Answer {
  const numbers = results.filter(({ perPercent }) => perPercent !== undefined);
  const shares = results.map(({ result, perPercent }) => relative(result, perPercent));
  const most = Math.max(...shares, 0);
  return {
    ...emptyAnswer,
    said:
      results.length === 0
        ? `Nothing follows from ${input.label}.`
        : [
            `${results.length} results follow from ${input.label}, ${numbers.length} of them numbers.`,
            ...levelSaid([input]),
          ].join(' '),
    bars:
      results.length === 0
        ? []
        : [
            {
              title: `One per cent more of ${input.label}; bars by the share of each result that it moves`,
              rows: results.map(({ result, perPercent }, index) => ({
                label: result.label,
                share: most === 0 ? 0 : (shares[index] ?? 0) / most,
                text: perPercent === undefined ? '' : effectWords(result, perPercent, system),
                place: { sheet: result.sheet, cell: result.cell },
              })),
            },
          ],
    tables: [
      {
        table: textTable(
          `What follows from ${input.label}`,
          ['Result', 'One per cent more does'],
          results.map(({ result, perPercent }) => [
            result.label,
            perPercent === undefined ? null : effectWords(result, perPercent, system),
          ]),
        ),
        live: results.map(({ result }) => result),
        isForSheet: true,
      },
    ],
    note,
  };
}

const relative = ({ present }: Result, perPercent = 0): number =>
  present.kind === 'number' && present.value !== 0 ? Math.abs(perPercent / present.value) : 0;

/** `Qtc by Net volume from 1 L to 300 L`. */
export const rangeWords = (input: Input, from: number, to: number, system: UnitSystem): string =>
  `${input.label} from ${inputWords(input, from, system)} to ${inputWords(input, to, system)}`;
