import type { QuantityName } from '../../functions/quantities.ts';
import type { Curve } from '../../functions/values/curve.ts';
import { settingText } from '../analysis/setting-text.ts';
import type { Input, Result } from '../analysis/subject-types.ts';
import type { ResultMap, Sweep } from '../analysis/sweep-types.ts';
import { inputWords, resultWords } from '../analysis/words.ts';
import type { Answer, AnswerTable, Axis, FieldData, Point, Setting } from '../components/ask/data.ts';
import type { PlotData } from '../components/plot/data.ts';
import type { UnitSystem } from '../document/types.ts';
import type { CellValue } from '../engine/types.ts';
import { emptyAnswer, rangeWords } from './ask-found.ts';

/** So many curves of a family can be told apart. */
const MOST_CURVES = 6;
/** So many digits a picked value is typed with. */
const DIGITS = 4;

const settingOf = (input: Input, value: number): Setting => ({
  sheet: input.sheet,
  cell: input.cell,
  label: input.label,
  text: settingText(input, value, DIGITS),
});

const numberOf = (value: CellValue | undefined): number => (value?.kind === 'number' ? value.value : Number.NaN);

const standingOf = (value: CellValue): keyof typeof places =>
  value.kind === 'record' && value.record.kind === 'verdict' ? value.record.status : 'problem';

const standingWords = [
  'every verdict good',
  'a verdict at caution',
  'a verdict fails',
  'a verdict has no answer',
] as const;
const places = { good: 0, caution: 1, fail: 2, problem: 3 } as const;

function axisOf(label: string, quantity: QuantityName, values: readonly number[]): Axis {
  const finite = values.filter(Number.isFinite);
  const [low, high] = [Math.min(...finite), Math.max(...finite)];
  if (low < high) return { label, quantity, from: low, to: high };
  const middle = Number.isFinite(low) ? low : 0;
  const room = Math.abs(middle) / 10 || 1;
  return { label, quantity, from: middle - room, to: middle + room };
}

/** Spaced as its values are. */
function inputAxis(input: Input, values: readonly number[]): Axis {
  const [first = 0, second = 0, third = 0] = values;
  const isLogarithmic = first > 0 && third - second > (second - first) * (1 + 1e-6);
  return { ...axisOf(input.label, input.quantity, values), isLogarithmic };
}

const withRoom = (axis: Axis): Axis => {
  const room = (axis.to - axis.from) * 0.05;
  return { ...axis, from: axis.from - room, to: axis.to + room };
};

/** Halfway to the neighbours on both sides. */
function cellEnds(values: readonly number[], first: number, last = first): readonly [number, number] {
  const at = (index: number): number => values[Math.min(Math.max(index, 0), values.length - 1)] ?? 0;
  return [(at(first - 1) + at(first)) / 2, (at(last) + at(last + 1)) / 2];
}

/** Stretches of neighbours that are good, by their places. */
function goodStretches(isGood: (index: number) => boolean, count: number): (readonly [number, number])[] {
  const stretches: (readonly [number, number])[] = [];
  for (let index = 0, start = -1; index <= count; index++) {
    const good = index < count && isGood(index);
    if (good && start < 0) start = index;
    if (!good && start >= 0) {
      stretches.push([start, index - 1]);
      start = -1;
    }
  }
  return stretches;
}

/** One input over a range: numbers as a line, curves as a family; a table of all. */
export function sweepAnswer(sweep: Sweep, hasVerdicts: boolean, system: UnitSystem, note: string): Answer {
  const { input, values, columns, worst } = sweep;
  const [first] = columns;
  const ends = rangeWords(input, values[0] ?? 0, values.at(-1) ?? 0, system);
  return {
    ...emptyAnswer,
    said: `${ends}: ${values.length} values.${hasVerdicts ? ` ${goodSaid(sweep, system)}` : ''}`,
    ...(first && first.result.kind !== 'curve' && { field: sweepField(sweep, first, hasVerdicts, system) }),
    ...(first?.result.kind === 'curve' && familyOf(sweep, first, system)),
    tables: [
      {
        table: {
          kind: 'table',
          title: 'Value by value',
          columns: [
            { name: input.label, quantity: 'text' },
            ...columns
              .filter(({ result }) => result.kind !== 'curve')
              .map(({ result }) => ({
                name: result.label,
                quantity: result.kind === 'number' ? (result.quantity ?? 'ratio') : ('text' as const),
              })),
            ...(hasVerdicts ? [{ name: 'All verdicts together', quantity: 'text' as const }] : []),
          ],
          rows: values.map((value, index) => [
            settingText(input, value, DIGITS),
            ...columns
              .filter(({ result }) => result.kind !== 'curve')
              .map(({ result, cells }) => inTable(result, cells[index], system)),
            ...(hasVerdicts ? [worst[index] ?? 'problem'] : []),
          ]),
        },
      },
    ],
    note,
  };
}

const inTable = (result: Result, value: CellValue | undefined, system: UnitSystem): number | string | null =>
  value?.kind === 'number' && result.kind === 'number'
    ? value.value
    : value
      ? resultWords(result, value, system)
      : null;

/** How all verdicts together stand at one of the values. */
export const standingSaid = ({ worst }: Sweep, at: number): string => standingWords[places[worst[at] ?? 'problem']];

function goodSaid({ input, values, worst }: Sweep, system: UnitSystem): string {
  const stretches = goodStretches((index) => worst[index] === 'good', values.length);
  if (stretches.length === 0) return 'At none of them is every verdict good.';
  const words = stretches.map(
    ([from, to]) => `${inputWords(input, values[from] ?? 0, system)} to ${inputWords(input, values[to] ?? 0, system)}`,
  );
  return `Every verdict is good from ${words.join(', and from ')}.`;
}

function sweepField(
  { input, values, worst }: Sweep,
  { result, cells }: Sweep['columns'][number],
  hasVerdicts: boolean,
  system: UnitSystem,
): FieldData {
  const isNumber = result.kind === 'number';
  const heights = cells.map((value) => (isNumber ? numberOf(value) : -places[standingOf(value)]));
  const up: Axis = isNumber
    ? withRoom(axisOf(result.label, result.quantity ?? 'ratio', heights))
    : { label: 'better', quantity: 'ratio', from: -3.2, to: 0.2, isBare: true };
  const lines: Point[][] = [[]];
  for (const [index, height] of heights.entries()) {
    if (Number.isFinite(height)) lines.at(-1)?.push([values[index] ?? 0, height]);
    else if (lines.at(-1)?.length) lines.push([]);
  }
  const stretches = hasVerdicts ? goodStretches((index) => worst[index] === 'good', values.length) : [];
  return {
    title: `${result.label} by ${input.label}`,
    across: inputAxis(input, values),
    up,
    lines: lines.filter((points) => points.length > 1).map((points) => ({ points, label: '' })),
    good: stretches.map(([from, to]) => {
      const [low, high] = cellEnds(values, from, to);
      return [
        [low, up.from],
        [high, up.to],
      ] as const;
    }),
    columns: values,
    rows: [],
    present: [typeof input.present === 'number' ? input.present : 0, 0],
    reading: (column) =>
      [
        `${input.label} ${settingText(input, values[column] ?? 0, DIGITS)}`,
        `${result.label} ${resultWords(result, cells[column] ?? { kind: 'empty' }, system)}`,
        ...(hasVerdicts ? [standingWords[places[worst[column] ?? 'problem']]] : []),
      ].join(', '),
    settings: (column) => [settingOf(input, values[column] ?? 0)],
  };
}

function familyOf(
  { input, values }: Sweep,
  { result, cells }: Sweep['columns'][number],
  system: UnitSystem,
): { curves: PlotData } {
  const every = Math.max(1, Math.ceil(values.length / MOST_CURVES));
  const series = cells.flatMap((value, index) => {
    const curve: Curve | undefined =
      value.kind === 'record' && value.record.kind === 'curve' ? value.record : undefined;
    const isShown = index % every === 0 || index === values.length - 1;
    if (!curve || !isShown) return [];
    return [{ label: inputWords(input, values[index] ?? 0, system), line: 'system' as const, curve }];
  });
  return {
    curves: {
      title: `${result.label} by ${input.label}`,
      series,
      limits: [],
      marks: [],
      horizontal: [20, 20_000],
      system,
    },
  };
}

/** Two inputs: lines of equal result, and where every verdict is good. */
export function mapAnswer(map: ResultMap, system: UnitSystem, note: string): Answer {
  const { across, up, acrossValues, upValues, result, values, worst, contours, goodEdge, verdicts } = map;
  const width = acrossValues.length;
  const words = (value: number): string =>
    Number.isNaN(value) ? 'no number' : resultWords(result, { kind: 'number', value }, system);
  const hasVerdicts = verdicts.length > 0;
  const good = hasVerdicts
    ? upValues.flatMap((_, row) =>
        goodStretches((column) => worst[row * width + column] === 0, width).map(([from, to]) => {
          const [left, right] = cellEnds(acrossValues, from, to);
          const [low, high] = cellEnds(upValues, row);
          return [
            [left, low],
            [right, high],
          ] as const;
        }),
      )
    : [];
  const reading = (column: number, row: number): string => {
    const at = row * width + column;
    return [
      `${across.label} ${settingText(across, acrossValues[column] ?? 0, DIGITS)}`,
      `${up.label} ${settingText(up, upValues[row] ?? 0, DIGITS)}`,
      `${result.label} ${words(values[at] ?? Number.NaN)}`,
      ...(hasVerdicts ? [standingWords[worst[at] ?? 3] ?? ''] : []),
    ].join(', ');
  };
  const share = hasVerdicts ? worst.reduce((sum, each) => sum + (each === 0 ? 1 : 0), 0) : 0;
  const present = (input: Input): number => (typeof input.present === 'number' ? input.present : 0);
  return {
    ...emptyAnswer,
    said: `${result.label} at ${values.length} points.${hasVerdicts ? ` Every verdict is good at ${share} of them.` : ''}`,
    field: {
      title: `${result.label} by ${across.label} and ${up.label}`,
      across: inputAxis(across, acrossValues),
      up: inputAxis(up, upValues),
      lines: [
        ...contours.flatMap(({ level, lines }) => lines.map((points) => ({ points, label: words(level) }))),
        ...(hasVerdicts ? goodEdge.map((points) => ({ points, label: '', isEdge: true as const })) : []),
      ],
      good,
      columns: acrossValues,
      rows: upValues,
      present: [present(across), present(up)],
      reading,
      settings: (column, row) => [settingOf(across, acrossValues[column] ?? 0), settingOf(up, upValues[row] ?? 0)],
    },
    tables: [mapTable(map, hasVerdicts)],
    note,
  };
}

/** Every point is too much for a table: some eight each way. */
function mapTable(
  { across, up, acrossValues, upValues, result, values, worst }: ResultMap,
  hasVerdicts: boolean,
): AnswerTable {
  const some = (count: number): number[] => {
    const shown = Math.min(count, 9);
    return Array.from({ length: shown }, (_, index) => Math.round((index * (count - 1)) / Math.max(shown - 1, 1)));
  };
  const standing = (at: number): string => ['good', 'caution', 'fail', 'problem'][worst[at] ?? 3] ?? 'problem';
  return {
    table: {
      kind: 'table',
      title: 'Some of the points',
      columns: [
        { name: across.label, quantity: 'text' },
        { name: up.label, quantity: 'text' },
        { name: result.label, quantity: result.quantity ?? 'ratio' },
        ...(hasVerdicts ? [{ name: 'All verdicts together', quantity: 'text' as const }] : []),
      ],
      rows: some(upValues.length).flatMap((row) =>
        some(acrossValues.length).map((column) => {
          const at = row * acrossValues.length + column;
          const value = values[at] ?? Number.NaN;
          return [
            settingText(across, acrossValues[column] ?? 0, DIGITS),
            settingText(up, upValues[row] ?? 0, DIGITS),
            Number.isNaN(value) ? null : value,
            ...(hasVerdicts ? [standing(at)] : []),
          ];
        }),
      ),
    },
  };
}
