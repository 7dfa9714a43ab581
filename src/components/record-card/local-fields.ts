// Stands in for functions/values/fields.ts until it is there.
import type { QuantityName } from '../../../functions/quantities.ts';
import type { CellRecord } from '../../../functions/values/record.ts';
export interface FieldLine {
  readonly name: string;
  readonly label: string;
  readonly value: number | string;
  readonly quantity: QuantityName | 'text';
}
const table: Record<string, [string, QuantityName]> = {
  fs: ['Resonance in free air', 'frequency'],
  qts: ['Total Q', 'ratio'],
  vas: ['Equivalent air volume', 'volume'],
  re: ['Voice-coil resistance', 'resistance'],
  xmax: ['Linear travel', 'travel'],
  volume: ['Net volume', 'volume'],
  tuning: ['Port tuning', 'frequency'],
};
export const summarise = (record: CellRecord): readonly FieldLine[] =>
  Object.entries(record).flatMap(([name, value]) => {
    const row = table[name];
    return row && typeof value === 'number' ? [{ name, label: row[0], value, quantity: row[1] }] : [];
  });
