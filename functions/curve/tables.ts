import { define, type CellDatum } from '../define.ts';
import { frequencies as grid } from '../values/grid.ts';
import { outsideOf, readAt } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { overGrid } from '../values/resampled.ts';
import { say } from '../values/say.ts';

const kinds = ['level', 'resistance', 'travel', 'speed'] as const;
const isEmpty = (cell: CellDatum | undefined): boolean => cell === undefined || cell === null || cell === '';

interface Point {
  readonly frequency: number;
  readonly value: number;
}

function readPoints(left: readonly CellDatum[], right: readonly CellDatum[]): readonly Point[] | Problem {
  const points: Point[] = [];
  for (let index = 0; index < Math.max(left.length, right.length); index += 1) {
    const [frequency, value] = [left[index], right[index]];
    if (isEmpty(frequency) && isEmpty(value)) continue;
    if (typeof frequency !== 'number' || !(frequency > 0) || frequency > 1e9)
      return new Problem(
        say`Row ${String(index + 1)} has no frequency above 0 Hz; give one, or empty the row.`,
        'frequencies',
      );
    if (typeof value !== 'number' || !(Math.abs(value) <= 1e15))
      return new Problem(
        say`Row ${String(index + 1)} has no number as its value; give one, or empty the row.`,
        'values',
      );
    points.push({ frequency, value });
  }
  points.sort((one, other) => one.frequency - other.frequency);
  const twice = points.find((point, index) => point.frequency === points[index - 1]?.frequency);
  if (twice)
    return new Problem(say`The frequency ${String(twice.frequency)} Hz stands twice; keep one row.`, 'frequencies');
  return points.length > 0 ? points : new Problem(say`The table is empty; give frequencies and values.`, 'frequencies');
}

export const curveRead = define({
  name: 'CURVE.READ',
  summary: 'Makes a curve of a table of measured values.',
  parameters: {
    frequencies: { table: true, of: 'frequency', summary: 'cells with frequencies' },
    values: { table: true, summary: 'cells with the values beside them' },
    quantity: { choice: kinds, default: 'level', summary: 'what the values are' },
    title: { text: true, default: 'Measured', summary: 'what the curve shows' },
  },
  returns: { record: 'curve', of: 'choice', summary: 'curve that holds from the first to the last frequency' },
  source: { source: 'own', at: 'straight in log f between the rows' },
  example: { formula: '=CURVE.READ(1 kHz, 90 dB)', gives: { quantity: 'level', title: 'Measured' } },
  remarks:
    'Rows may stand in any order; empty rows are left out. One row alone gives a flat line over all frequencies, to mark a limit in a plot. The curve has no phase. At the frequencies of its table it has the values of the table; what is calculated from it runs straight between 48 points an octave and cuts a corner of the table by up to 1/192 of the change of slope: 0.1 dB where 20 dB an octave set in at once.',
  compute(given) {
    const points = readPoints(given.frequencies.flat(), given.values.flat());
    if (points instanceof Problem) return points;
    if (given.quantity === 'resistance' && points.some((point) => point.value <= 0))
      return new Problem(say`An impedance must be above 0 Ω in every row; correct the values.`, 'values');
    const flat = points.length === 1;
    const from = flat ? grid[0]! : points[0]!.frequency;
    const to = flat ? grid[grid.length - 1]! : points.at(-1)!.frequency;
    if (from >= grid[grid.length - 1]! || to <= grid[0]!)
      return new Problem(say`All frequencies lie outside 10 Hz to 41 kHz; check their unit.`, 'frequencies');
    const y = overGrid(
      points.map(({ frequency }) => frequency),
      points.map(({ value }) => value),
    );
    return { kind: 'curve' as const, title: given.title, quantity: given.quantity, y, from, to };
  },
});

export const curveColumn = define({
  name: 'CURVE.COLUMN',
  summary: 'The values of a curve at a column of frequencies.',
  parameters: {
    curve: { record: 'curve', summary: 'curve' },
    frequencies: { table: true, of: 'frequency', summary: 'cells with frequencies' },
  },
  returns: { quantity: 'curve', column: true, summary: 'one value beside each frequency' },
  source: { source: 'own', at: 'straight in log f between 48 points an octave' },
  example: { formula: '=CURVE.COLUMN(CURVE.READ(1 kHz, 90 dB), 500 Hz)', gives: 90 },
  remarks: 'Every cell must hold a frequency inside the band in which the curve holds.',
  compute(given) {
    const values: number[] = [];
    for (const [index, cell] of given.frequencies.flat().entries()) {
      if (typeof cell !== 'number' || !(cell > 0))
        return new Problem(
          say`Row ${String(index + 1)} has no frequency above 0 Hz; fill it or shorten the range.`,
          'frequencies',
        );
      const wrong = outsideOf(given.curve, cell);
      if (wrong) return new Problem(wrong.message, 'frequencies');
      values.push(readAt(given.curve.y, cell));
    }
    return values;
  },
});
