import { settingText } from '../analysis/setting-text.ts';
import type { Input, Result, Subject } from '../analysis/subject-types.ts';
import type { CellChoice, Choices, Kind, Moved, SpreadWish, Wish } from '../components/ask/data.ts';
import type { OctavoDocument } from '../document/types.ts';
import { keyOf } from '../engine/cell-index.ts';
import type { Place } from '../engine/types.ts';
import { defaultUnit } from '../units/defaults.ts';

/** In place of a result: all verdicts of the document together. */
export const EVERY = 'every verdict';

export const inputOf = ({ inputs }: Subject, id: string): Input | undefined =>
  inputs.find((each) => keyOf(each) === id);
export const resultOf = ({ results }: Subject, id: string): Result | undefined =>
  results.find((each) => keyOf(each) === id);

/** The unit in which a target of a result is typed where it names none. */
export const unitOf = ({ quantity, unit }: Pick<Result, 'quantity' | 'unit'>, { system }: OctavoDocument): string =>
  unit ?? (quantity ? defaultUnit(quantity, system) : '');

/** An input with its plausible ends as they would be typed. */
export const movedOf = (input: Input | undefined): Moved =>
  input && typeof input.present === 'number'
    ? { id: keyOf(input), from: settingText(input, input.range[0], 4), to: settingText(input, input.range[1], 4) }
    : { id: input ? keyOf(input) : '', from: '', to: '' };

/** What stands in the form when it is opened from a cell. */
export function firstWish(subject: Subject, at: Place): Wish {
  const { inputs, results } = subject;
  const here = inputOf(subject, keyOf(at));
  const own = results.filter(({ sheet, kind }) => sheet === at.sheet && kind !== 'other');
  const named = own.find(({ kind, name }) => kind === 'number' && name !== undefined);
  const chosen = resultOf(subject, keyOf(at));
  const result = chosen && chosen.kind !== 'other' ? chosen : (named ?? own[0] ?? results[0]);
  const movable = inputs.filter(({ sheet, present }) => sheet === at.sheet && typeof present === 'number');
  const likely = movable.filter(({ isRangeGiven }) => isRangeGiven);
  const input = here ?? likely[0] ?? movable[0];
  const second = likely.find((each) => each !== input) ?? movable.find((each) => each !== input);
  return {
    kind: 'seek',
    result: result ? keyOf(result) : '',
    target: '',
    input: movedOf(input),
    second: movedOf(second),
    steps: '41',
    isWhole: false,
    spreads: driversIn(subject).slice(0, 2).map(spreadOf),
    runs: '1000',
    seed: '1',
    given: '',
  };
}

const driversIn = ({ results }: Subject): readonly Result[] =>
  results.filter(({ present }) => present.kind === 'record' && present.record.kind === 'driver');

const causes = [
  ['cms', 'compliance', '12 %'],
  ['bl', 'force factor', '3 %'],
  ['mms', 'moving mass', '3 %'],
  ['re', 'coil resistance', '2 %'],
] as const;

/** What a driver or an input spreads by unless told otherwise; common practice, no source. */
export const spreadOf = (cell: Result | Input): SpreadWish => ({
  id: keyOf(cell),
  label: cell.label,
  texts:
    'kind' in cell
      ? causes.map(([name, label, text]) => ({ name, label, text }))
      : [{ name: 'by', label: 'share or amount', text: '3 %' }],
});

const results: Readonly<Record<Kind, readonly Result['kind'][]>> = {
  seek: ['number', 'verdict'],
  sweep: ['number', 'curve', 'verdict'],
  map: ['number'],
  scatter: ['number', 'curve', 'verdict'],
  drives: ['number', 'curve', 'verdict', 'other'],
  follows: ['number'],
};

/** The cells that a form offers.
 *  @param behind - Keys of the inputs behind the chosen result, biggest effect first; nothing while it is not known. */
export function choicesOf(
  subject: Subject,
  document: OctavoDocument,
  wish: Wish,
  behind: readonly string[] | undefined,
): Choices {
  const sheets = new Map(document.sheets.map(({ id, name }) => [id, name]));
  const choice = (each: Input | Result, group = sheets.get(each.sheet) ?? ''): CellChoice => ({
    id: keyOf(each),
    label: `${each.label} (${each.cell})`.replace(/ \((.*)\) \(\1\)$/, ' ($1)'),
    group,
  });
  const movable = subject.inputs.filter(
    ({ present }) => typeof present === 'number' || wish.kind === 'follows' || wish.kind === 'seek',
  );
  const first = (behind ?? []).flatMap((id) => movable.filter((each) => keyOf(each) === id));
  const chosen = resultOf(subject, wish.result);
  const spread = new Set(wish.spreads.map(({ id }) => id));
  const verdicts = subject.results.filter(({ kind }) => kind === 'verdict');
  const every = wish.kind === 'seek' && verdicts.length > 1;
  return {
    inputs: [
      ...first.map((each) => choice(each, 'Behind the result, biggest effect first')),
      ...movable.filter((each) => !first.includes(each)).map((each) => choice(each)),
    ],
    results: [
      ...(every ? [{ id: EVERY, label: `Every verdict (${verdicts.length})`, group: 'Together' }] : []),
      ...subject.results.filter(({ kind }) => results[wish.kind].includes(kind)).map((each) => choice(each)),
    ],
    spreads: [...driversIn(subject), ...subject.inputs.filter(({ present }) => typeof present === 'number')]
      .filter((each) => !spread.has(keyOf(each)))
      .map((each) => choice(each)),
    isVerdict: wish.result === EVERY || chosen?.kind === 'verdict',
    unit: chosen ? unitOf(chosen, document) : '',
  };
}
