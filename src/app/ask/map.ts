import { settingText } from '../../analysis/subject/setting-text.ts';
import { standings, type Input, type Standing } from '../../analysis/subject/types.ts';
import type { ResultMap } from '../../analysis/sweep/types.ts';
import { resultWords } from '../../analysis/subject/words.ts';
import type { Answer, AnswerTable } from '../../components/ask/data.ts';
import type { UnitSystem } from '../../document/types.ts';
import { cellEnds, DIGITS, goodStretches, inputAxis, settingOf, standingWords } from './axes.ts';
import { emptyAnswer } from './found.ts';

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
      ...(hasVerdicts ? [standingWords[standingAt(worst, at)]] : []),
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

const standingAt = (worst: ResultMap['worst'], at: number): Standing => standings[worst[at] ?? 3] ?? 'problem';

/** Every point is too much for a table: some eight each way. */
function mapTable(
  { across, up, acrossValues, upValues, result, values, worst }: ResultMap,
  hasVerdicts: boolean,
): AnswerTable {
  const some = (count: number): number[] => {
    const shown = Math.min(count, 9);
    return Array.from({ length: shown }, (_, index) => Math.round((index * (count - 1)) / Math.max(shown - 1, 1)));
  };
  return {
    over: { inputs: [across, up], results: [result] },
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
            ...(hasVerdicts ? [standingAt(worst, at)] : []),
          ];
        }),
      ),
    },
  };
}
