import type { QuantityName } from '../../functions/quantities.ts';
import { DASHES, WIDTHLESS } from './signs.ts';

/** A unit as it is typed and shown. SI value = number · si + offset. */
export interface Unit {
  readonly symbol: string;
  /** Other spellings, compared as `plainSymbol` makes them. */
  readonly also?: readonly string[];
  readonly quantity: QuantityName;
  readonly si: number;
  readonly offset?: number;
  /** It counts: there are no parts of one. */
  readonly whole?: boolean;
  /** Only shown in this system; units without one are shown in both. */
  readonly system?: 'metric' | 'imperial';
}

const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;

/** Symbol, SI value of one, and other spellings with a space between them. */
type Row = readonly [symbol: string, si: number, also?: string, more?: Pick<Unit, 'offset' | 'whole'>];

const of = (quantity: QuantityName, system: Unit['system'], ...rows: readonly Row[]): Unit[] =>
  rows.map(([symbol, si, also, more]) => ({
    symbol,
    quantity,
    si,
    ...(also !== undefined && { also: also.split(' ') }),
    ...(system && { system }),
    ...more,
  }));

/** All units. Exact factors by definition of the inch (0.0254 m) and the pound (0.45359237 kg). The first of a quantity and
 *  system is not special; defaults are in `defaults.ts`. */
export const units: readonly Unit[] = [
  ...of('frequency', undefined, ['Hz', 1, 'hz HZ cps 1/s hertz'], ['kHz', 1e3, 'khz KHz KHZ Khz kHZ'], ['MHz', 1e6]),
  ...of(
    'volume',
    'metric',
    ['L', 1e-3, 'l ℓ lt ltr litre litres liter liters dm3'],
    ['mL', 1e-6, 'ml cm3 cc ccm'],
    ['m³', 1],
    ['cL', 1e-5, 'cl'],
    ['dL', 1e-4, 'dl'],
  ),
  ...of(
    'volume',
    'imperial',
    ['ft³', FOOT ** 3, 'cuft cu.ft cu.ft. cubicfeet cubicfoot'],
    ['in³', INCH ** 3, 'cuin cu.in cu.in. cubicinches cubicinch'],
  ),
  ...of(
    'length',
    'metric',
    ['mm', 1e-3, 'mmpeak mmpk mmone-way mmoneway'],
    ['cm', 1e-2],
    ['m', 1, 'metre metres meter meters'],
    ['µm', 1e-6, 'um micron microns'],
  ),
  ...of('length', 'imperial', ['in', INCH, `in. inch inches " ″ ” ''`], ['ft', FOOT, "foot feet ' ′ ’"]),
  ...of(
    'travel',
    undefined,
    ['mm p-p', 0.5e-3, 'mmpp mmptp mmpeak-to-peak mmpeaktopeak mmpk-pk mmP-P'],
    ['in p-p', INCH / 2, 'inpp "p-p "pp ″p-p'],
  ),
  ...of('area', 'metric', ['cm²', 1e-4, 'sqcm sq.cm qcm'], ['mm²', 1e-6, 'sqmm'], ['m²', 1, 'sqm']),
  ...of(
    'area',
    'imperial',
    ['in²', INCH ** 2, 'sqin sq.in sq.in. squareinches'],
    ['ft²', FOOT ** 2, 'sqft sq.ft sq.ft.'],
  ),
  ...of('mass', 'metric', ['g', 1e-3, 'gram grams gr gm gms'], ['kg', 1], ['mg', 1e-6]),
  ...of('mass', 'imperial', ['oz', POUND / 16], ['lb', POUND, 'lbs lb. pounds']),
  ...of(
    'resistance',
    undefined,
    ['Ω', 1, 'ohm ohms Ohm OHM'],
    ['kΩ', 1e3, 'kohm kohms KΩ'],
    ['mΩ', 1e-3, 'mohm mOhm'],
    ['MΩ', 1e6, 'Mohm MOhm'],
  ),
  ...of('inductance', undefined, ['mH', 1e-3, 'mh'], ['µH', 1e-6, 'uH'], ['H', 1, 'henry']),
  ...of(
    'capacitance',
    undefined,
    ['µF', 1e-6, 'uF uf µf mfd MFD'],
    ['nF', 1e-9, 'nf'],
    ['pF', 1e-12, 'pf'],
    ['mF', 1e-3],
    ['F', 1],
  ),
  ...of('voltage', undefined, ['V', 1, 'volt volts Vrms'], ['mV', 1e-3]),
  ...of('current', undefined, ['A', 1, 'amp amps ampere'], ['mA', 1e-3]),
  ...of('power', undefined, ['W', 1, 'watt watts Wrms WRMS wattsrms'], ['kW', 1e3], ['mW', 1e-3]),
  ...of('compliance', undefined, ['mm/N', 1e-3, 'mmN mm/n'], ['µm/N', 1e-6, 'um/N'], ['m/N', 1]),
  ...of('mechanicalResistance', undefined, ['kg/s', 1, 'N·s/m Ns/m N*s/m N.s/m mechohm'], ['g/s', 1e-3]),
  ...of('forceFactor', undefined, ['T·m', 1, 'Tm T*m T.m N/A Wb/m']),
  ...of('speed', 'metric', ['m/s', 1]),
  ...of('speed', 'imperial', ['ft/s', FOOT]),
  ...of('volumeVelocity', undefined, ['m³/s', 1], ['L/s', 1e-3, 'l/s']),
  ...of('density', undefined, ['kg/m³', 1]),
  ...of('pressure', undefined, ['Pa', 1, 'N/m2'], ['kPa', 1e3], ['MPa', 1e6], ['GPa', 1e9], ['hPa', 100, 'mbar']),
  ...of(
    'time',
    undefined,
    ['s', 1, 'sec'],
    ['ms', 1e-3, 'msec'],
    ['µs', 1e-6, 'us usec µsec'],
    ['min', 60],
    ['h', 3600],
  ),
  ...of('level', undefined, ['dB', 1, 'db DB dBSPL decibel decibels'], ['dB(A)', 1, 'dBA']),
  ...of('slope', undefined, ['dB/oct', 1, 'dB/octave db/oct dB/Oct']),
  ...of('angle', undefined, ['°', Math.PI / 180, 'deg degree degrees'], ['rad', 1]),
  ...of('octaves', undefined, ['oct', 1, 'octave octaves Oct']),
  ...of('temperature', 'metric', ['°C', 1, 'C degC ℃ celsius degreesC', { offset: 273.15 }]),
  ...of('temperature', 'imperial', ['°F', 5 / 9, 'degF ℉', { offset: 459.67 * (5 / 9) }]),
  ...of('temperature', undefined, ['K', 1]),
  ...of('ratio', undefined, ['%', 0.01, 'percent'], ['×', 1, 'x'], ['pcs', 1, 'pc pieces', { whole: true }], ['λ', 1]),
  ...of(
    'price',
    undefined,
    ['¤', 1],
    ['€', 1, 'EUR euro euros'],
    ['$', 1, 'USD US$ dollar dollars'],
    ['£', 1, 'GBP'],
    ['¥', 1, 'JPY'],
    ['₹', 1, 'INR'],
    ['CHF', 1, 'Fr.'],
    ['kr', 1, 'kr.'],
    ['zł', 1, 'PLN'],
    ['Kč', 1, 'CZK'],
  ),
];

/** What is thrown away in a spelling: spaces of every width, and the marks without width that come with pasted text. */
const GAPS = new RegExp(`[\\s${WIDTHLESS}]+`, 'g');
const PER = /\s+per\s+/g;
const MINUS = new RegExp(`[${DASHES}]`, 'g');
/** Whatever is thrown away or written in another way; most spellings have none of it. */
const OTHERWISE = new RegExp(`[\\s${WIDTHLESS}${DASHES}²³^\\u03BC\\u2126º˚⋅∙•]`);

/** Makes spellings comparable: `²` and `^2` to 2, all micro, ohm, degree, dot, dash and inch signs to one each, no spaces. */
export const plainSymbol = (text: string): string =>
  OTHERWISE.test(text)
    ? text
        .replaceAll(PER, '/')
        .replaceAll(GAPS, '')
        .replaceAll('²', '2')
        .replaceAll('³', '3')
        .replaceAll(/(?<=\p{L})\^(?=[23])/gu, '')
        .replaceAll('\u03BC', 'µ')
        .replaceAll('\u2126', 'Ω')
        .replaceAll(/[º˚]/g, '°')
        .replaceAll(/[⋅∙•]/g, '·')
        .replaceAll(MINUS, '-')
    : text;

const bySymbol = new Map<string, Unit>();
for (const unit of units) {
  for (const name of [unit.symbol, ...(unit.also ?? [])]) {
    const key = plainSymbol(name);
    if (!bySymbol.has(key)) bySymbol.set(key, unit);
  }
}

/** A word whose case says nothing; that of an m may be milli or mega. */
const ANY_CASE = /^(?!m)\p{L}{4,}$/iu;

/** The unit of that spelling; nothing where there is none. */
export function unitNamed(text: string): Unit | undefined {
  const plain = plainSymbol(text);
  return bySymbol.get(plain) ?? (ANY_CASE.test(plain) ? bySymbol.get(plain.toLowerCase()) : undefined);
}

/** No spelling has more characters, the spaces and the `^` that may stand in it counted in. */
export const LONGEST_UNIT = Math.max(...[...bySymbol.keys()].map((key) => key.length)) + 4;

/** What goes on after a unit makes it part of a longer word. */
const WORD_LIKE = /^[\p{L}\p{N}_.(!]/u;
/** A space may part words, `cu ft`, but not what a sign stands between: in `5 m / s` the s is a name. */
const PARTED_BY_SIGN = /\s[^\p{L}]|[^\p{L}.]\s/u;

/** The longest unit with which a text begins, as it is written there; nothing where it begins with none. Quotes and `%` mean
 *  something else in a formula, so they are no units here. */
export function unitAhead(text: string): string | undefined {
  for (let length = Math.min(LONGEST_UNIT, text.length); length > 0; length--) {
    const spelling = text.slice(0, length);
    if (/^\s|\s$|["'”%]/.test(spelling) || PARTED_BY_SIGN.test(spelling)) continue;
    if (unitNamed(spelling) && !WORD_LIKE.test(text.slice(length))) return spelling;
  }
  return undefined;
}
