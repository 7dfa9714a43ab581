import { driverFromTable } from '../../../functions/driver/driver.ts';
import { parameterOf } from '../../../functions/driver/parameters.ts';
import type { CellDatum } from '../../../functions/define.ts';
import { quantities } from '../../../functions/quantities.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { say, type Sentence } from '../../../functions/values/say.ts';
import { sameDimension } from '../../units/dimension.ts';
import { parseQuantity } from '../../units/parse.ts';
import { meaningOf, type DriverEntry, type DriverRow } from './entry.ts';

/** A row as DRIVER takes it; a sentence where what was typed cannot be that number. */
function datumOf({ label, text }: DriverRow): CellDatum | Sentence {
  const meaning = meaningOf(label);
  if (meaning === undefined || meaning === 'basis' || meaning === 'name') return text;
  const { quantity } = parameterOf(meaning);
  const wanted = quantities[quantity];
  const read = parseQuantity(text);
  if (!read) return say`“${label}” needs ${wanted.noun}, but holds “${text}”.`;
  if (read.unit === '' && wanted.si !== '' && quantity !== 'price') {
    return say`“${label}” has no unit: “${text}” could be anything. Write it as in ${exampleOf(quantity)}.`;
  }
  const fits = read.unit === '' || sameDimension(quantities[read.quantity].dimension, wanted.dimension);
  return fits ? read.value : say`“${label}” needs ${wanted.noun}, but ${text} is ${quantities[read.quantity].noun}.`;
}

const exampleOf = (quantity: keyof typeof quantities): string => examples[quantity] ?? `5 ${quantities[quantity].si}`;

const examples: { readonly [K in keyof typeof quantities]?: string } = {
  frequency: '38 Hz',
  volume: '28 L',
  area: '132 cm²',
  mass: '15 g',
  travel: '5.5 mm',
  length: '166 mm',
  inductance: '0.55 mH',
  compliance: '1.1 mm/N',
  level: '89 dB',
};

/** The rows of an entry that cannot be read, each with why. */
export const unreadable = (rows: readonly DriverRow[]): readonly { row: DriverRow; why: Sentence }[] =>
  rows.flatMap((row) => {
    if (row.text.trim() === '') return [];
    const datum = datumOf(row);
    return Array.isArray(datum) ? [{ row, why: datum as Sentence }] : [];
  });

/** The driver that the rows make, completed as a cell with DRIVER would; rows that cannot be read are left out and questioned. */
export function driverOf({ name, rows }: Pick<DriverEntry, 'name' | 'rows'>): Driver | Problem {
  const bad = unreadable(rows);
  const good = rows.filter((row) => row.text.trim() !== '' && !bad.some((each) => each.row === row));
  const driver = driverFromTable.compute(
    {
      labels: good.map(({ label }) => [label]),
      values: good.map((row) => [datumOf(row) as CellDatum]),
      name,
    },
    { quantity: 'ratio' },
  );
  if (driver instanceof Problem || bad.length === 0) return driver;
  return { ...driver, doubts: [...bad.map(({ why }) => why), ...driver.doubts] };
}
