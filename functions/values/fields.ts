import { driverParameters } from '../driver/parameters.ts';
import { resonance, totalQ } from '../enclosure/qtc.ts';
import type { QuantityName } from '../quantities.ts';
import type { Box } from './box.ts';
import type { Curve } from './curve.ts';
import type { Driver } from './driver.ts';
import type { CellRecord, Field, RecordKind, RecordOf } from './record.ts';
import { frequencies } from './grid.ts';
import { measured, type Sentence } from './say.ts';
import type { Verdict } from './verdict.ts';
import type { Window } from './window.ts';

type Datum = number | string | undefined;

interface ReadableField<R extends CellRecord> extends Field {
  readonly label: string;
  readonly read: (record: R) => Datum;
}

const field = <R extends CellRecord>(
  name: string,
  summary: string,
  quantity: QuantityName | 'text',
  read: (record: R) => Datum,
  label = summary,
): ReadableField<R> => ({ name, summary, label, quantity, read });

/** Words of a sentence, its numbers in SI: for a field that a formula reads. */
const words = (sentence: Sentence): string =>
  sentence.map((part) => (typeof part === 'string' ? part : String(part.value))).join('');

const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

const ofDriver: readonly ReadableField<Driver>[] = [
  field('name', 'Name', 'text', (driver) => driver.name),
  ...driverParameters.map((each) =>
    field<Driver>(each.field, each.summary, each.quantity, (driver) => driver[each.field], each.symbol),
  ),
  field('levelbasis', 'What the level was printed for', 'text', (driver) => driver.levelBasis, 'Level basis'),
];

const ofBox: readonly ReadableField<Box>[] = [
  field('style', 'Closed or vented', 'text', (box) => box.style, 'Style'),
  field('driver', 'Name of the driver', 'text', (box) => box.driver.name, 'Driver'),
  field('volume', 'Net volume', 'volume', (box) => box.volume),
  field('tuning', 'Port tuning', 'frequency', (box) => box.tuning),
  field('resonance', 'Resonance in the box, or the tuning', 'frequency', resonance, 'Resonance'),
  field('qtc', 'Total Q, closed only', 'ratio', (box) => (box.style === 'closed' ? totalQ(box) : undefined), 'Qtc'),
  field('fill', 'Apparent-volume factor of the filling', 'ratio', (box) => box.fill, 'Filling'),
  field('seriesresistance', 'Series resistance', 'resistance', (box) => box.seriesResistance),
  field('leakageq', 'Leakage Q', 'ratio', (box) => finite(box.leakageQ)),
  field('absorptionq', 'Absorption Q', 'ratio', (box) => finite(box.absorptionQ)),
  field('portq', 'Port Q', 'ratio', (box) => finite(box.portQ)),
  field('highpass', 'High-pass ahead of it', 'frequency', (box) => box.highPass?.frequency, 'High-pass'),
  field('highpassorder', 'Order of the high-pass', 'ratio', (box) => box.highPass?.order),
];

const ofCurve: readonly ReadableField<Curve>[] = [
  field('title', 'Title', 'text', (curve) => curve.title),
  field('quantity', 'What it measures', 'text', (curve) => curve.quantity, 'Quantity'),
  field('minimum', 'Lowest value in its band', 'ratio', (curve) => extreme(curve, Math.min), 'Lowest'),
  field('maximum', 'Highest value in its band', 'ratio', (curve) => extreme(curve, Math.max), 'Highest'),
  field('from', 'Lowest frequency at which it holds', 'frequency', (curve) => curve.from, 'From'),
  field('to', 'Highest frequency at which it holds', 'frequency', (curve) => curve.to, 'To'),
];

const ofVerdict: readonly ReadableField<Verdict>[] = [
  field('status', 'Good, caution or fail', 'text', (verdict) => verdict.status, 'Status'),
  field('word', 'The word on its chip', 'text', (verdict) => verdict.word, 'Verdict'),
  field('reason', 'Why', 'text', (verdict) => words(verdict.reason), 'Reason'),
  field('note', 'Note', 'text', (verdict) => (verdict.note === undefined ? undefined : words(verdict.note))),
];

const ofWindow: readonly ReadableField<Window>[] = [
  field('low', 'Lowest shared frequency', 'frequency', (window) => window.low.at, 'Low'),
  field('lowname', 'What sets the lowest', 'text', (window) => window.low.name, 'Set by'),
  field('high', 'Highest shared frequency', 'frequency', (window) => window.high.at, 'High'),
  field('highname', 'What sets the highest', 'text', (window) => window.high.name, 'Set by'),
  field('octaves', 'Width; negative where the bands do not meet', 'octaves', (window) => window.octaves, 'Width'),
  field('centre', 'Middle of the band', 'frequency', (window) => Math.sqrt(window.low.at * window.high.at), 'Centre'),
  field(
    'stretchedoctaves',
    'Width with every rule stretched',
    'octaves',
    (window) => window.stretchedOctaves,
    'Stretched width',
  ),
];

const readable: { readonly [K in RecordKind]: readonly ReadableField<RecordOf<K>>[] } = {
  driver: ofDriver,
  box: ofBox,
  curve: ofCurve,
  verdict: ofVerdict,
  window: ofWindow,
};

function extreme(curve: Curve, pick: (...values: number[]) => number): number | undefined {
  const inside = curve.y.filter((_, index) => within(curve, index));
  return inside.length === 0 ? undefined : pick(...inside);
}

const within = (curve: Curve, index: number): boolean => {
  const f = frequencies[index]!;
  return f >= curve.from * (1 - 1e-9) && f <= curve.to * (1 + 1e-9);
};

const readersOf = (record: CellRecord): readonly ReadableField<CellRecord>[] =>
  // The table is typed by kind; looked up by a record's own kind, its readers take that record.
  readable[record.kind] as unknown as readonly ReadableField<CellRecord>[];

/** The readable fields of a kind of record, in the order of its card. The `minimum` and `maximum` of a curve have the
 *  quantity of the curve, see {@link quantityOf}. */
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
  return readersOf(record).find((each) => each.name === wanted)?.quantity;
}

export interface SummaryLine {
  /** The field's name, as in `Woofer.fs`. */
  readonly name: string;
  readonly label: string;
  readonly summary: string;
  readonly value: number | string;
  readonly quantity: QuantityName | 'text';
}

/** All that a record holds, line by line, for its card and for copied text. */
export function summarise(record: CellRecord): readonly SummaryLine[] {
  return readersOf(record).flatMap(({ name, label, summary, read }) => {
    const value = read(record);
    const quantity = quantityOf(record, name);
    return value === undefined || value === '' || quantity === undefined
      ? []
      : [{ name, label, summary, value, quantity }];
  });
}

/** The same in one sentence, for a cell copied as text. */
export const sentenceOf = (record: CellRecord): Sentence =>
  summarise(record).flatMap(({ label, value, quantity }, index) => {
    const shown = typeof value === 'number' && quantity !== 'text' ? measured(value, quantity) : String(value);
    return [`${index === 0 ? '' : ', '}${label} `, shown];
  });
