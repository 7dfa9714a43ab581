import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Scatter, Scattered } from '../../analysis/scatter/types.ts';
import { standings } from '../../analysis/subject/types.ts';
import { resultWords } from '../../analysis/subject/words.ts';
import type { Answer, Bar } from '../../components/ask/data.ts';
import type { PlotData } from '../../components/plot/data.ts';
import type { UnitSystem } from '../../document/types.ts';
import { emptyAnswer, textTable } from './found.ts';

type Of<Kind extends Scattered['kind']> = Extract<Scattered, { kind: Kind }>;

/** How far results spread, how likely each verdict is, and which cause matters most. */
export function scatterAnswer({ runs, seed, results }: Scatter, system: UnitSystem, note: string): Answer {
  const numbers = results.filter((each): each is Of<'number'> => each.kind === 'number');
  const verdicts = results.filter((each): each is Of<'verdict'> => each.kind === 'verdict');
  const curve = results.find((each): each is Of<'curve'> => each.kind === 'curve');
  const words = (each: Of<'number'>, value: number): string =>
    Number.isNaN(value) ? 'no number' : resultWords(each.result, { kind: 'number', value }, system);
  return {
    ...emptyAnswer,
    said: [
      ...numbers.map(
        (each) =>
          `${each.result.label} lies between ${words(each, each.percentiles.low)} and ${words(each, each.percentiles.high)} in nine of ten, half below ${words(each, each.percentiles.middle)}.`,
      ),
      `${runs} runs from seed ${seed}: the same seed gives the same runs.`,
    ].join(' '),
    ...(curve && { curves: bandsOf(curve, system) }),
    bars: [
      ...numbers
        .filter(({ causes }) => causes.some(({ share }) => share > 0))
        .map(({ result, causes }) => ({
          title: `What spreads ${result.label}: shares of its variance`,
          rows: causes.map(({ label, share }): Bar => ({ label, share, text: percent(share) })),
        })),
      ...verdicts.map(({ result, odds }) => ({
        title: result.label,
        rows: (['good', 'caution', 'fail', 'problem'] as const)
          .filter((status) => status !== 'problem' || odds.problem > 0)
          .map((status): Bar => ({ label: status, share: odds[status], text: percent(odds[status]), status })),
      })),
    ],
    tables: [
      ...numbers.map((each) => ({ table: numberTable(each), live: [undefined, each.result] })),
      ...(curve ? [{ table: bandTable(curve), isForSheet: true as const }] : []),
      ...(verdicts.length > 0 ? [{ table: oddsTable(verdicts), live: verdicts.map(({ result }) => result) }] : []),
    ],
    note,
  };
}

const percent = (share: number): string => `${(share * 100).toFixed(share > 0 && share < 0.1 ? 1 : 0)} %`;

function numberTable({ result, percentiles, mean, deviation }: Of<'number'>): TableRecord {
  const orNull = (value: number): number | null => (Number.isNaN(value) ? null : value);
  return {
    kind: 'table',
    title: `${result.label} over the runs`,
    columns: [
      { name: 'What', quantity: 'text' },
      { name: result.label, quantity: result.quantity ?? 'ratio' },
    ],
    rows: [
      ['5 % lie below', orNull(percentiles.low)],
      ['Half lie below', orNull(percentiles.middle)],
      ['95 % lie below', orNull(percentiles.high)],
      ['Mean', orNull(mean)],
      ['Standard deviation', orNull(deviation)],
    ],
  };
}

const oddsTable = (verdicts: readonly Of<'verdict'>[]): TableRecord =>
  textTable(
    'Odds of each verdict',
    ['Verdict', ...standings],
    verdicts.map(({ result, odds }) => [result.label, ...standings.map((each) => percent(odds[each]))]),
  );

/** So many frequencies stand in the kept table, at most. */
const MOST_ROWS = 40;

function bandTable({ result, low, middle, high, from, to }: Of<'curve'>): TableRecord {
  const inside = [...frequencies.keys()].filter((at) => (frequencies[at] ?? 0) >= from && (frequencies[at] ?? 0) <= to);
  const every = Math.max(1, Math.ceil(inside.length / MOST_ROWS));
  const quantity = result.quantity ?? 'level';
  return {
    kind: 'table',
    title: `${result.label} over the runs`,
    columns: [
      { name: 'Frequency', quantity: 'frequency' },
      { name: '5 % lie below', quantity },
      { name: 'Half lie below', quantity },
      { name: '95 % lie below', quantity },
    ],
    rows: inside
      .filter((_, index) => index % every === 0)
      .map((at) => [frequencies[at] ?? 0, ...[low, middle, high].map((band) => finite(band[at]))]),
  };
}

const finite = (value: number | undefined): number | null =>
  value === undefined || !Number.isFinite(value) ? null : value;

function bandsOf({ result, low, middle, high, from, to }: Of<'curve'>, system: UnitSystem): PlotData {
  const curve = (y: Float64Array): Curve => ({
    kind: 'curve',
    title: result.label,
    quantity: result.quantity ?? 'level',
    y,
    from,
    to,
  });
  return {
    title: `${result.label} over the runs`,
    series: [
      { label: '95 % below', line: 'other', curve: curve(high) },
      { label: 'half below', line: 'system', curve: curve(middle) },
      { label: '5 % below', line: 'other', curve: curve(low) },
    ],
    limits: [],
    marks: [],
    horizontal: [20, 20_000],
    system,
  };
}
