import type { Currency, QuantityName } from '../quantities.ts';
import { ofBox } from './fields/box.ts';
import { ofCurve } from './fields/curve.ts';
import { ofDriver } from './fields/driver.ts';
import type { ReadableField } from './fields/field.ts';
import { ofNetwork } from './fields/network.ts';
import { ofSample } from './fields/sample.ts';
import { ofTable } from './fields/table.ts';
import { ofVerdict } from './fields/verdict.ts';
import { ofWay } from './fields/way.ts';
import { ofWindow } from './fields/window.ts';
import type { CellRecord, Field, RecordKind, RecordOf } from './record.ts';
import { measured, type Sentence } from './say.ts';

const readable: { readonly [K in RecordKind]: readonly ReadableField<RecordOf<K>>[] } = {
  driver: ofDriver,
  box: ofBox,
  curve: ofCurve,
  verdict: ofVerdict,
  window: ofWindow,
  network: ofNetwork,
  way: ofWay,
  table: ofTable,
  sample: ofSample,
};

const readersOf = (record: CellRecord): readonly ReadableField<CellRecord>[] =>
  // The table is typed by kind; looked up by a record's own kind, its readers take that record.
  readable[record.kind] as unknown as readonly ReadableField<CellRecord>[];

/** The readable fields of a kind of record, in the order of its card. The `minimum` and `maximum` of a curve and the
 *  middle and ends of a sample have the quantity of what they hold, see {@link quantityOf}. */
export const fieldsOf = (kind: RecordKind): readonly Field[] => readable[kind];

/** A field of a record by name, without regard to case; `undefined` when there is none, or the record does not hold it. */
export function fieldOf(record: CellRecord, name: string): number | string | undefined {
  const wanted = name.toLowerCase();
  return readersOf(record)
    .find((each) => each.name === wanted)
    ?.read(record);
}

/** The quantity of a field as this record holds it. */
export function quantityOf(record: CellRecord, name: string): QuantityName | 'text' | undefined {
  const wanted = name.toLowerCase();
  if (record.kind === 'curve' && (wanted === 'minimum' || wanted === 'maximum')) return record.quantity;
  if (record.kind === 'sample' && wanted !== 'title' && wanted !== 'count' && wanted !== 'seed') return record.quantity;
  return readersOf(record).find((each) => each.name === wanted)?.quantity;
}

export interface SummaryLine {
  /** The field's name, as in `Woofer.fs`. */
  readonly name: string;
  readonly label: string;
  readonly summary: string;
  readonly value: number | string;
  readonly quantity: QuantityName | 'text';
  /** The sign of a price. */
  readonly money?: Currency | undefined;
}

/** All that a record holds, line by line, for its card and for copied text. */
export function summarise(record: CellRecord): readonly SummaryLine[] {
  return readersOf(record).flatMap(({ name, label, summary, read }) => {
    const value = read(record);
    const quantity = quantityOf(record, name);
    return value === undefined || value === '' || quantity === undefined
      ? []
      : [
          {
            name,
            label,
            summary,
            value,
            quantity,
            ...(quantity === 'price' && 'money' in record && { money: record.money }),
          },
        ];
  });
}

/** The same in one sentence, for a cell copied as text. */
export const sentenceOf = (record: CellRecord): Sentence =>
  summarise(record).flatMap(({ label, value, quantity, money }, index) => {
    const shown = typeof value === 'number' && quantity !== 'text' ? measured(value, quantity, money) : String(value);
    return [`${index === 0 ? '' : ', '}${label} `, shown];
  });
