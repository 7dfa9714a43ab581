import { styleNames } from '../../functions/enclosure/style-names.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import { summarise, type SummaryLine } from '../../functions/values/fields.ts';
import { show } from '../units/show.ts';
import type { UnitSystem } from './types.ts';

/** What a record is called in its cell. */
export function titleOf(record: CellRecord): string {
  switch (record.kind) {
    case 'driver':
      return record.name || 'Unnamed driver';
    case 'box':
      return [styleNames[record.style], record.driver.name].filter((part) => part !== '').join(', ');
    case 'curve':
    case 'table':
    case 'sample':
      return record.title;
    case 'network':
    case 'way':
      return record.name;
    case 'window':
      return record.octaves < 0 ? 'No shared window' : 'Shared window';
    case 'verdict':
      return record.word;
  }
}

/** The fields that tell one such record from another at a glance. */
const keyLabels: Readonly<Record<CellRecord['kind'], readonly string[]>> = {
  driver: ['Fs', 'Qts', 'Vas', 'Re', 'Sd'],
  box: ['Net volume', 'Port tuning', 'Resonance', 'Qtc'],
  curve: ['Lowest', 'Highest'],
  window: ['Low', 'High', 'Width'],
  verdict: [],
  network: ['Coils', 'Capacitors', 'Resistors'],
  way: ['Driver', 'Filter', 'Polarity'],
  table: ['Rows', 'Columns'],
  sample: ['5 %', 'Median', '95 %'],
};

/** Its key figures in one line. */
export function keyFigures(record: CellRecord, system: UnitSystem): string {
  const labels = keyLabels[record.kind];
  const lines = summarise(record).filter(({ label }) => labels.includes(label));
  return lines.map((line) => written(line, system)).join(', ');
}

/** All that a record holds in one line, for copying out. */
export function recordText(record: CellRecord, system: UnitSystem): string {
  const title = titleOf(record);
  const lines = summarise(record).filter(({ name, value }) => value !== title && name !== 'quantity');
  return under(title, lines.map((line) => written(line, system)).join('; '));
}

/** A text behind its title, where there is one. */
export const under = (title: string, text: string): string =>
  title === '' || text === '' ? title + text : `${title}: ${text}`;

function written({ label, value, quantity, money }: SummaryLine, system: UnitSystem): string {
  if (typeof value === 'string' || quantity === 'text') return `${label} ${value}`;
  const { number, unit } = show(value, { quantity, system, unit: money });
  return unit === '' ? `${label} ${number}` : `${label} ${number} ${unit}`;
}
