import { readMeasured } from '../../../functions/measure/read-table.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Sentence } from '../../../functions/values/say.ts';
import { freeSheetName, newId } from '../create.ts';
import { formatSheet } from '../formula-words.ts';
import type { Cell, OctavoDocument, Plot, Sheet } from '../types.ts';
import type { DriverTable } from './entry.ts';

/** What the second column of a measured table is. It is asked, not guessed. */
export type TableMeaning = 'level' | 'impedance';

const meanings = {
  level: { unit: 'dB', made: 'MEASURE.LEVEL', name: 'MeasuredLevel', title: 'Measured response' },
  impedance: { unit: 'Ω', made: 'MEASURE.IMPEDANCE', name: 'MeasuredOhms', title: 'Measured impedance' },
} as const;

/** The row of the first frequency, counted from 1. */
const FIRST = 6;
const FEWEST_ROWS = 100;

/** A sheet with a measured table of a driver, a row a frequency, and the curve that is made of it, which other sheets can use
 *  by its name. Says why there is none where the text holds no table. */
export function tableSheet(
  document: OctavoDocument,
  driver: string,
  table: DriverTable,
  meaning: TableMeaning,
): Sheet | Sentence {
  const read = readMeasured([[table.text]], 'table');
  if (read instanceof Problem) return read.message;
  const { unit, made, name, title } = meanings[meaning];
  const last = FIRST + read.frequency.length - 1;
  const cells = new Map<string, Cell>([
    ['A1', { text: `${driver}: ${table.title}`, look: 'section' }],
    ['A2', { text: 'As a curve' }],
    ['B2', { text: `=${made}(A${FIRST}:${read.degrees ? 'C' : 'B'}${last},"${title}")` }],
    ['A3', { text: 'In another sheet' }],
    ['A5', { text: 'Frequency, Hz', look: 'label' }],
    ['B5', { text: `${title}, ${unit}`, look: 'label' }],
    ...(read.degrees ? [['C5', { text: 'Phase, degrees', look: 'label' }] as const] : []),
  ]);
  for (const [index, frequency] of read.frequency.entries()) {
    const put = (column: string, value: number | undefined): void => {
      if (value !== undefined) cells.set(`${column}${FIRST + index}`, { text: String(value), origin: 'measured' });
    };
    put('A', frequency);
    put('B', read.value[index]);
    put('C', read.degrees?.[index]);
  }
  const called = freeSheetName(
    document,
    `${driver} ${meaning}`
      .replaceAll(/[^\p{L}\p{N} ]/gu, ' ')
      .slice(0, 28)
      .trim(),
  );
  cells.set('B3', { text: `write =${formatSheet(called)}!${name}` });
  const ends = [read.frequency[0] ?? 20, read.frequency.at(-1) ?? 20_000];
  const plot: Plot = {
    id: 'measured',
    title: `${driver}, ${title.toLowerCase()}`,
    kind: 'curves',
    series: [{ cell: name, label: driver, line: 'other' }],
    limits: [],
    marks: [],
    horizontal: [`${Math.max(10, ends[0] ?? 20)} Hz`, `${Math.min(40_000, ends[1] ?? 20_000)} Hz`],
  };
  return {
    id: newId(),
    name: called,
    summary: `${table.title} of ${driver}, from the shelf.`,
    rows: Math.max(FEWEST_ROWS, last),
    columns: [{ width: 220 }, { width: 200 }, { width: 140 }, { width: 96 }, { width: 96 }],
    cells,
    names: new Map([[name, 'B2']]),
    plots: [plot],
  };
}
