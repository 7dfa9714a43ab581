import type { CellDatum, Table } from '../define.ts';
import { quantities, type QuantityName } from '../quantities.ts';
import { Problem } from '../values/problem.ts';
import { measured, say, type Sentence } from '../values/say.ts';
import { labelOf } from './labels.ts';
import type { GivenNumbers } from './parameters.ts';

export interface DriverRows {
  readonly name: string | undefined;
  readonly basis: string | undefined;
  readonly numbers: GivenNumbers;
  readonly doubts: readonly Sentence[];
}

/** Beyond these no unit slip explains a number, and the relations would overflow. */
const least = 1e-12;
const most = 1e9;

type Row = readonly [label: CellDatum, value: CellDatum];

/** Pairs labels with values: two ranges of one shape, or one range of two columns. */
export function rowsOf(labels: Table, values: Table | undefined): readonly Row[] | Problem {
  const names = labels.flat();
  if (values !== undefined) {
    const data = values.flat();
    return names.length === data.length
      ? names.map((label, index): Row => [label, data[index] ?? null])
      : new Problem(
          say`There are ${String(names.length)} labels but ${String(data.length)} values: give two ranges of the same size.`,
          'values',
        );
  }
  return labels.every((row) => row.length >= 2)
    ? labels.map((row): Row => [row[0] ?? null, row[1] ?? null])
    : new Problem(
        say`One range must have two columns, labels and values; or give the values as a second range.`,
        'labels',
      );
}

const empty = (value: CellDatum): boolean => value === null || (typeof value === 'string' && value.trim() === '');

/** A cell as words, a quantity with its unit; a record is none. */
function textOf(value: CellDatum, quantity: QuantityName = 'ratio'): string | undefined {
  if (value === null || typeof value === 'object') return undefined;
  return `${String(value)} ${typeof value === 'number' ? quantities[quantity].si : ''}`.trim();
}

/** Sorts rows of a datasheet into what they name.
 *  @param basisIn - What the cell of the level basis holds: `1 V` and `1 W` are the same number. */
export function readRows(rows: readonly Row[], basisIn: QuantityName): DriverRows | Problem {
  let name: string | undefined;
  let basis: string | undefined;
  const numbers: GivenNumbers = {};
  const doubts: Sentence[] = [];
  for (const [label, value] of rows) {
    if (typeof label !== 'string' || label.trim() === '' || empty(value)) continue;
    const row = `“${label.trim()}”`;
    const meant = labelOf(label);
    if (meant === undefined) {
      if (typeof value === 'number') doubts.push(say`The row ${row} is not known and was left out.`);
    } else if (meant === 'name') {
      name ??= textOf(value);
    } else if (meant === 'basis') {
      basis ??= textOf(value, basisIn);
    } else if (typeof value !== 'number' || !Number.isFinite(value)) {
      const shown = typeof value === 'string' ? `“${value}”` : 'something else';
      return new Problem(
        say`The row ${row} needs a number, but holds ${shown}: type the number and its unit alone.`,
        'values',
      );
    } else if (value < 0 || (value === 0 && !meant.mayBeZero)) {
      const limit = meant.mayBeZero ? 'must not be below 0' : 'must be above 0';
      return new Problem(say`The row ${row} ${limit}, but holds ${measured(value, meant.quantity)}.`, 'values');
    } else if (value !== 0 && (value < least || value > most)) {
      return new Problem(
        say`The row ${row} holds ${measured(value, meant.quantity)}, far from anything that can be meant: check the number and its unit.`,
        'values',
      );
    } else if (numbers[meant.field] !== undefined) {
      doubts.push(say`The row ${row} gives ${meant.symbol} a second time; the first value is used.`);
    } else {
      numbers[meant.field] = value;
    }
  }
  return { name, basis, numbers, doubts };
}
