import { EVERY } from '../../analysis/seek/types.ts';
import { settingText } from '../../analysis/subject/setting-text.ts';
import type { Input, Result, Subject } from '../../analysis/subject/types.ts';
import { unitOf } from '../../analysis/subject/unit-of.ts';
import {
  variedIn,
  type CellChoice,
  type Choices,
  type Kind,
  type Moved,
  type SpreadWish,
  type Varied,
  type Wish,
} from '../../components/ask/data.ts';
import { namedDrivers } from '../../document/take-over/drivers.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { keyOf } from '../../engine/cell-index.ts';
import type { Place } from '../../engine/types.ts';

export const inputOf = ({ inputs }: Subject, id: string): Input | undefined =>
  inputs.find((each) => keyOf(each) === id);
export const resultOf = ({ results }: Subject, id: string): Result | undefined =>
  results.find((each) => keyOf(each) === id);

/** An input with its plausible ends as they would be typed. */
export const movedOf = (input: Input | undefined): Moved =>
  input && typeof input.present === 'number'
    ? { id: keyOf(input), from: settingText(input, input.range[0], 4), to: settingText(input, input.range[1], 4) }
    : { id: input ? keyOf(input) : '', from: '', to: '' };

/** What stands in the form when it is opened from a cell. */
export function firstWish(document: OctavoDocument, subject: Subject, at: Place): Wish {
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
    settings: [],
    ...variedFirst(document, [...(here ? [here] : []), ...likely, ...movable]),
    aim: 'least',
    band: ['50 Hz', '200 Hz'],
    limits: [],
    keep: 'good',
    listed: [],
    order: 'least',
    rows: '20',
    drivers: driverNames(document),
    isOwnShelf: false,
    cost: 'money',
    changes: '2',
  };
}

const driversOf = ({ sheets }: OctavoDocument) => sheets.flatMap((sheet) => namedDrivers(sheet));

const driverNames = (document: OctavoDocument): string[] => driversOf(document).map(([name]) => name);

/** What varies unless told otherwise: the first two of some inputs that are no data of a driver, which one cannot set. */
export function variedFirst(document: OctavoDocument, inputs: readonly Input[]): Pick<Wish, 'varied'> {
  const data = new Set(
    driversOf(document).flatMap(([, { sheet, rows }]) => rows.map(({ cell }) => keyOf({ sheet, cell }))),
  );
  const free = [...new Set(inputs)].filter((each) => typeof each.present === 'number' && !data.has(keyOf(each)));
  return { varied: free.slice(0, 2).map(variedOf) };
}

/** Quantities of parts that come in the values of a shop. */
const parts = new Set<Input['quantity']>(['resistance', 'capacitance', 'inductance']);
/** So many values over its range an input takes unless told otherwise. */
const VALUES = 5;

/** An input that may be set, with its plausible ends and some values between them, the words that it takes, or those of a shop. */
export function variedOf(input: Input): Varied {
  const moved = movedOf(input);
  const { label, choices, quantity, present, unit } = input;
  const isPart = parts.has(quantity) && typeof present === 'number' && present > 0;
  const values = choices?.join(', ') ?? (isPart ? 'E12' : `${moved.from} to ${moved.to} in ${VALUES}`);
  return { ...moved, label, values, unit };
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
  best: ['number'],
  cheapest: ['number', 'curve', 'verdict', 'other'],
  combine: ['number'],
  sweep: ['number', 'curve', 'verdict'],
  map: ['number'],
  scatter: ['number', 'curve', 'verdict'],
  drives: ['number', 'curve', 'verdict', 'other'],
  follows: ['number'],
};

const BEHIND = 'Behind the result, biggest effect first';

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
    label: each.label.endsWith(`${each.cell})`) ? each.label : `${each.label} (${each.cell})`,
    group,
  });
  const movable = subject.inputs.filter(
    ({ present }) => typeof present === 'number' || !['sweep', 'map'].includes(wish.kind),
  );
  const first = (behind ?? []).flatMap((id) => movable.filter((each) => keyOf(each) === id));
  const chosen = resultOf(subject, wish.result);
  const spread = new Set(wish.spreads.map(({ id }) => id));
  const verdicts = subject.results.filter(({ kind }) => kind === 'verdict');
  const every = wish.kind === 'seek' && verdicts.length > 1;
  const offered: readonly Result['kind'][] =
    wish.kind === 'best' && wish.aim === 'flattest' ? ['curve'] : results[wish.kind];
  const varied = new Set(wish[variedIn(wish.kind)].map(({ id }) => id));
  const listed = new Set([...wish.listed, wish.result]);
  const isNumber = ({ present }: Input): boolean => typeof present === 'number';
  return {
    inputs: [
      ...first.map((each) => choice(each, BEHIND)),
      ...movable.filter((each) => !first.includes(each)).map((each) => choice(each)),
    ],
    results: [
      ...(every ? [{ id: EVERY, label: `Every verdict (${verdicts.length})`, group: 'Together' }] : []),
      ...subject.results.filter(({ kind }) => offered.includes(kind)).map((each) => choice(each)),
      // The smallest box, the longest distance: one of the inputs that move may be what counts.
      ...(wish.kind === 'best' && wish.aim !== 'flattest'
        ? subject.inputs
            .filter((each) => isNumber(each) && varied.has(keyOf(each)))
            .map((each) => choice(each, 'Of what may move'))
        : []),
    ],
    spreads: [...driversIn(subject), ...subject.inputs.filter(isNumber)]
      .filter((each) => !spread.has(keyOf(each)))
      .map((each) => choice(each)),
    varied: [...first, ...movable.filter((each) => !first.includes(each))]
      .filter((each) => !varied.has(keyOf(each)) && (isNumber(each) || wish.kind !== 'best'))
      .map((each) => choice(each, first.includes(each) ? BEHIND : undefined)),
    listed: subject.results
      .filter((each) => ['number', 'verdict'].includes(each.kind) && !listed.has(keyOf(each)))
      .map((each) => choice(each)),
    numbers: subject.results.filter(({ kind }) => kind === 'number').map((each) => choice(each)),
    drivers: driverNames(document),
    costs: [
      { id: 'money', label: 'money', group: 'Counted' },
      { id: 'changes', label: 'changes', group: 'Counted' },
      ...subject.results
        .filter(({ kind }) => kind === 'number')
        .toSorted((a, b) => Number(b.quantity === 'price') - Number(a.quantity === 'price'))
        .map((each) => choice(each, each.quantity === 'price' ? 'Prices of the sheet' : undefined)),
    ],
    isVerdict: wish.result === EVERY || chosen?.kind === 'verdict',
    unit: chosen ? unitOf(chosen, document) : '',
  };
}
