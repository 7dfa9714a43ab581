import type { QuantityName } from '../../../functions/quantities.ts';
import { closedVolume } from '../../../functions/enclosure/closed.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { ruleFields, usualTexts } from '../../analysis/shortlist/rule-fields.ts';
import type { PlaceName } from '../../analysis/shortlist/places.ts';
import type { Row, ShortlistQuestion } from '../../analysis/types.ts';
import type { Wanted } from '../../components/shortlist/data.ts';
import { apply } from '../../document/apply.ts';
import { isRefusal, type Command, type Refusal } from '../../document/command.ts';
import { driverOf } from '../../document/shelf/driver-of.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { show } from '../../units/show.ts';
import { sheetOfRow, typedTexts, type RowSheet } from './sheet.ts';
import { THREE_WAY } from '../two-way.ts';

/** The starter sheet that a row opens in. */
export const starterOf = (ways: Wanted['ways']): string =>
  ways === 'subs' ? 'mains-and-sub' : ways === 3 ? THREE_WAY : 'two-driver-check';

/** What the drivers are called there. */
const names: Readonly<Record<PlaceName, string>> = {
  woofer: 'Woofer',
  mid: 'Mid',
  tweeter: 'Tweeter',
  sub: 'Sub',
  mains: 'Woofer',
};

/** Rows to be opened: each with its drivers by their places. */
export type Opened = readonly {
  readonly row: Row;
  readonly drivers: Readonly<Partial<Record<PlaceName, DriverEntry>>>;
}[];

/** Several rows, each as a full sheet of its own behind the present one; one command, so one step back. */
export function sheetsOfRows(
  document: OctavoDocument,
  behind: string,
  starter: OctavoDocument,
  opened: Opened,
  wanted: Wanted,
  question: ShortlistQuestion,
): (RowSheet & { readonly sheets: readonly string[] }) | Refusal {
  let present = document;
  let last = behind;
  const made: RowSheet[] = [];
  for (const { row, drivers } of opened) {
    const named = Object.fromEntries(
      Object.entries(drivers).map(([place, entry]) => [names[place as PlaceName], entry]),
    );
    const texts = { ...askedTexts(wanted, question), ...boxTexts(row, drivers, question) };
    const sheet = sheetOfRow(present, last, starter, row, named, texts, wanted.rules);
    const done = apply(present, sheet.command);
    if (isRefusal(done)) return done;
    present = done.document;
    last = sheet.sheet;
    made.push(sheet);
  }
  const [first] = made;
  if (!first) return { refused: 'No row was given to be opened.' };
  const command: Command = { kind: 'all', commands: made.map((each) => each.command) };
  return { ...first, command, sheets: made.map(({ sheet }) => sheet), told: made.flatMap(({ told }) => told) };
}

/** What was asked, by the names of the cells that say the same. */
function askedTexts({ rules, ways, price, reach }: Wanted, { rules: read, subs }: ShortlistQuestion) {
  const typed = typedTexts(rules);
  const usual = new Map(ruleFields(ways).map((field) => [field.name as string, usualTexts(field, 'metric')]));
  const ruled = (name: string): string => typed[name]?.[0] || (usual.get(name)?.[0] ?? '');
  const decibels = (value: number): string => `${Number(value.toFixed(2))} dB`;
  return {
    Target: decibels(read.target),
    Slope: read.slope,
    SubSlope: read.slope,
    PriceCap: withUnit(price, '¤'),
    Angle: ruled('angle'),
    Gap: ruled('gap'),
    MakeUp: ruled('makeUp'),
    ...(subs && {
      SubTarget: decibels(read.target + subs.above),
      LowestNote: reach === '' ? ruled('lowest') : withUnit(reach, defaultUnit('frequency', 'metric')),
    }),
  };
}

const withUnit = (text: string, unit: string): string => (/^[\d.,]+$/.test(text) ? `${text} ${unit}` : text);

/** The boxes in which mains and subs were judged, and the ohms that the amplifiers of the subs are rated into. */
function boxTexts(
  { box }: Row,
  { sub, mains }: Opened[number]['drivers'],
  { rules }: ShortlistQuestion,
): Readonly<Record<string, string>> {
  if (!sub || !mains) return {};
  const driver = driverOf(sub);
  const nominal = driver instanceof Problem ? undefined : driver.nominal;
  return {
    Volume: litresFor(mains, rules.qtc),
    SubVolume: typed(box.volume, 'volume'),
    SubStyle: box.style,
    SubTuning: typed(box.tuning, 'frequency'),
    // No area asks nothing of the port.
    SubPort: typed(rules.port ?? 0, 'area'),
    PortSpeed: typed(rules.air, 'speed'),
    LeakageQ: String(rules.leakage),
    SeriesOhms: '0 Ω',
    ...(nominal !== undefined && { SubRated: `${nominal} Ω` }),
  };
}

const DIGITS = 5;

/** A number as one would type it, finely enough to be judged alike. */
function typed(value: number | undefined, quantity: QuantityName): string {
  if (value === undefined) return '';
  const { number, unit } = show(value, { quantity, system: 'metric', digits: DIGITS });
  return `${Number(number.replaceAll('\u2009', ''))} ${unit}`;
}

function litresFor(entry: DriverEntry, qtc: number): string {
  const driver = driverOf(entry);
  if (driver instanceof Problem || driver.qts === undefined || driver.vas === undefined) return '';
  const volume = closedVolume.compute({ qts: driver.qts, vas: driver.vas, qtc }, { quantity: 'volume' });
  return volume instanceof Problem ? '' : typed(volume, 'volume');
}
