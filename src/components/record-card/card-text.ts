import type { CellRecord } from '../../../functions/values/record.ts';
import { titleOf } from '../../document/record-text.ts';
import type { UnitSystem } from '../../document/types.ts';
import { speak } from '../../units/show.ts';
import { spell, spellFrequency } from '../plot/unit.ts';
import type { CardState } from './content.ts';
import { curveText } from './curve-table.ts';
import { tableIn, tableText } from './table-view.ts';
import { summarise } from '../../../functions/values/fields.ts';

/** A field of a record as a line of its card. */
export interface CardLine {
  readonly name: string;
  /** Its symbol or its name. */
  readonly label: string;
  /** What it means, where the label does not say it. */
  readonly meaning: string;
  readonly text: string;
}

/** Every field of a record as a line with its value in the reader's unit. */
export const linesOf = (record: CellRecord, system: UnitSystem): readonly CardLine[] =>
  summarise(record)
    .filter(({ value }) => value !== titleOf(record))
    .map(({ name, label, summary, value, quantity, money }) => ({
      name,
      label,
      meaning: summary === label ? '' : summary,
      text: typeof value === 'string' || quantity === 'text' ? `${value}` : spell(value, quantity, system, money),
    }));

/** The whole content as text for the clipboard: a title, then a line a field; of a curve every point. */
export function textOf({ value, type, unit }: CardState, system: UnitSystem): string {
  switch (value.kind) {
    case 'empty':
      return '';
    case 'number':
      return spell(value.value, type.quantity ?? 'ratio', system, unit);
    case 'text':
      return value.text;
    case 'truth':
      return value.truth ? 'true' : 'false';
    case 'problem':
      return value.message;
    case 'record':
      return linesOfRecord(value.record, system);
  }
}

function linesOfRecord(record: CellRecord, system: UnitSystem): string {
  if (record.kind === 'curve') return curveText(record, system);
  const table = tableIn(record);
  if (table) return `${titleOf(record)}\n${tableText(table, system)}`;
  const head = [titleOf(record)];
  const fields = linesOf(record, system).map(({ label, text }) => `${label}\t${text}`);
  switch (record.kind) {
    case 'driver':
      return [...head, ...fields, ...record.doubts.map((doubt) => speak(doubt, system))].join('\n');
    case 'box':
      return [...head, ...fields, '', linesOfRecord(record.driver, system)].join('\n');
    case 'verdict':
      return [...head, speak(record.reason, system), ...(record.note ? [speak(record.note, system)] : [])].join('\n');
    case 'way':
      return [...head, ...fields, '', linesOfRecord(record.network, system)].join('\n');
    case 'window': {
      const rule = (side: string) => (limit: { name: string; at: number; stretched: number }) =>
        `${limit.name}\t${side} ${spellFrequency(limit.at, system)}\tstretched ${spellFrequency(limit.stretched, system)}`;
      return [...head, ...record.floors.map(rule('from')), ...record.ceilings.map(rule('up to'))].join('\n');
    }
    default:
      return [...head, ...fields].join('\n');
  }
}
