import type { Curve } from '../../../functions/values/curve.ts';
import { settingText } from '../../analysis/subject/setting-text.ts';
import { standingOf, type Result } from '../../analysis/subject/types.ts';
import type { Sweep } from '../../analysis/sweep/types.ts';
import { inputWords, resultWords } from '../../analysis/subject/words.ts';
import type { Answer, Axis, FieldData, Point } from '../../components/ask/data.ts';
import type { PlotData } from '../../components/plot/data.ts';
import type { UnitSystem } from '../../document/types.ts';
import type { CellValue } from '../../engine/types.ts';
import {
  axisOf,
  cellEnds,
  DIGITS,
  goodStretches,
  heightOf,
  inputAxis,
  levels,
  numberOf,
  settingOf,
  standingWords,
  withRoom,
} from './axes.ts';
import { emptyAnswer, rangeWords } from './found.ts';

/** So many curves of a family can be told apart. */
const MOST_CURVES = 6;
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
        over: {
          inputs: [input],
          results: columns.map(({ result }) => result).filter(({ kind }) => kind !== 'curve'),
        },
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
  const heights = cells.map((value) => (isNumber ? numberOf(value) : heightOf(standingOf(value))));
  const up: Axis = isNumber
    ? withRoom(axisOf(result.label, result.quantity ?? 'ratio', heights))
    : { label: 'better', quantity: 'ratio', from: -3.2, to: 0.2, words: levels };
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
        ...(hasVerdicts ? [standingWords[worst[column] ?? 'problem']] : []),
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
