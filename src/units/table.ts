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

/** All units. Exact factors by definition of the inch (0.0254 m) and the pound (0.45359237 kg). The first of a quantity and
 *  system is not special; defaults are in `defaults.ts`. */
export const units: readonly Unit[] = [
  { symbol: 'Hz', also: ['hz', 'HZ', 'cps', '1/s'], quantity: 'frequency', si: 1 },
  { symbol: 'kHz', also: ['khz', 'KHz', 'KHZ', 'Khz'], quantity: 'frequency', si: 1e3 },
  { symbol: 'MHz', quantity: 'frequency', si: 1e6 },
  {
    symbol: 'L',
    also: ['l', 'ltr', 'litre', 'litres', 'liter', 'liters', 'dm3'],
    quantity: 'volume',
    si: 1e-3,
    system: 'metric',
  },
  { symbol: 'mL', also: ['ml', 'cm3', 'cc', 'ccm'], quantity: 'volume', si: 1e-6, system: 'metric' },
  { symbol: 'm³', also: ['m3'], quantity: 'volume', si: 1, system: 'metric' },
  {
    symbol: 'ft³',
    also: ['ft3', 'cuft', 'cu.ft', 'cu.ft.', 'cubicfeet', 'cubicfoot'],
    quantity: 'volume',
    si: FOOT ** 3,
    system: 'imperial',
  },
  {
    symbol: 'in³',
    also: ['in3', 'cuin', 'cu.in', 'cu.in.', 'cubicinches', 'cubicinch'],
    quantity: 'volume',
    si: INCH ** 3,
    system: 'imperial',
  },
  { symbol: 'mm', quantity: 'length', si: 1e-3, system: 'metric' },
  { symbol: 'cm', quantity: 'length', si: 1e-2, system: 'metric' },
  { symbol: 'm', quantity: 'length', si: 1, system: 'metric' },
  {
    symbol: 'in',
    also: ['in.', 'inch', 'inches', '"', '″', '”', "''"],
    quantity: 'length',
    si: INCH,
    system: 'imperial',
  },
  { symbol: 'ft', also: ['foot', 'feet', "'", '′'], quantity: 'length', si: FOOT, system: 'imperial' },
  { symbol: 'mm p-p', also: ['mmpp', 'mmptp', 'mmpeak-to-peak', 'mmpk-pk', 'mmp-p'], quantity: 'travel', si: 0.5e-3 },
  { symbol: 'cm²', also: ['cm2', 'sqcm'], quantity: 'area', si: 1e-4, system: 'metric' },
  { symbol: 'mm²', also: ['mm2', 'sqmm'], quantity: 'area', si: 1e-6, system: 'metric' },
  { symbol: 'm²', also: ['m2', 'sqm'], quantity: 'area', si: 1, system: 'metric' },
  { symbol: 'in²', also: ['in2', 'sqin', 'sq.in', 'sq.in.'], quantity: 'area', si: INCH ** 2, system: 'imperial' },
  { symbol: 'ft²', also: ['ft2', 'sqft', 'sq.ft', 'sq.ft.'], quantity: 'area', si: FOOT ** 2, system: 'imperial' },
  { symbol: 'g', also: ['gram', 'grams', 'gr'], quantity: 'mass', si: 1e-3, system: 'metric' },
  { symbol: 'kg', quantity: 'mass', si: 1, system: 'metric' },
  { symbol: 'mg', quantity: 'mass', si: 1e-6, system: 'metric' },
  { symbol: 'oz', quantity: 'mass', si: POUND / 16, system: 'imperial' },
  { symbol: 'lb', also: ['lbs', 'lb.'], quantity: 'mass', si: POUND, system: 'imperial' },
  { symbol: 'Ω', also: ['ohm', 'ohms', 'Ohm', 'Ohms', 'OHM', '\u2126'], quantity: 'resistance', si: 1 },
  { symbol: 'kΩ', also: ['kohm', 'kOhm', 'kohms', 'k\u2126'], quantity: 'resistance', si: 1e3 },
  { symbol: 'mΩ', also: ['mohm', 'mOhm', 'm\u2126'], quantity: 'resistance', si: 1e-3 },
  { symbol: 'mH', also: ['mh'], quantity: 'inductance', si: 1e-3 },
  { symbol: 'µH', also: ['uH'], quantity: 'inductance', si: 1e-6 },
  { symbol: 'H', quantity: 'inductance', si: 1 },
  { symbol: 'µF', also: ['uF', 'uf', 'mfd'], quantity: 'capacitance', si: 1e-6 },
  { symbol: 'nF', also: ['nf'], quantity: 'capacitance', si: 1e-9 },
  { symbol: 'pF', also: ['pf'], quantity: 'capacitance', si: 1e-12 },
  { symbol: 'mF', quantity: 'capacitance', si: 1e-3 },
  { symbol: 'F', quantity: 'capacitance', si: 1 },
  { symbol: 'V', also: ['volt', 'volts', 'Vrms'], quantity: 'voltage', si: 1 },
  { symbol: 'mV', quantity: 'voltage', si: 1e-3 },
  { symbol: 'A', also: ['amp', 'amps'], quantity: 'current', si: 1 },
  { symbol: 'mA', quantity: 'current', si: 1e-3 },
  { symbol: 'W', also: ['watt', 'watts'], quantity: 'power', si: 1 },
  { symbol: 'kW', quantity: 'power', si: 1e3 },
  { symbol: 'mW', quantity: 'power', si: 1e-3 },
  { symbol: 'mm/N', also: ['mmN', 'mm/n'], quantity: 'compliance', si: 1e-3 },
  { symbol: 'µm/N', also: ['um/N'], quantity: 'compliance', si: 1e-6 },
  { symbol: 'm/N', quantity: 'compliance', si: 1 },
  { symbol: 'kg/s', also: ['N·s/m', 'Ns/m', 'N*s/m', 'mechohm'], quantity: 'mechanicalResistance', si: 1 },
  { symbol: 'g/s', quantity: 'mechanicalResistance', si: 1e-3 },
  { symbol: 'T·m', also: ['Tm', 'T*m', 'T.m', 'N/A', 'Wb/m'], quantity: 'forceFactor', si: 1 },
  { symbol: 'm/s', quantity: 'speed', si: 1, system: 'metric' },
  { symbol: 'ft/s', quantity: 'speed', si: FOOT, system: 'imperial' },
  { symbol: 'm³/s', also: ['m3/s'], quantity: 'volumeVelocity', si: 1 },
  { symbol: 'L/s', also: ['l/s'], quantity: 'volumeVelocity', si: 1e-3 },
  { symbol: 'kg/m³', also: ['kg/m3'], quantity: 'density', si: 1 },
  { symbol: 'Pa', quantity: 'pressure', si: 1 },
  { symbol: 'kPa', quantity: 'pressure', si: 1e3 },
  { symbol: 'MPa', quantity: 'pressure', si: 1e6 },
  { symbol: 'GPa', quantity: 'pressure', si: 1e9 },
  { symbol: 'hPa', also: ['mbar'], quantity: 'pressure', si: 100 },
  { symbol: 's', also: ['sec'], quantity: 'time', si: 1 },
  { symbol: 'ms', quantity: 'time', si: 1e-3 },
  { symbol: 'µs', also: ['us'], quantity: 'time', si: 1e-6 },
  { symbol: 'min', quantity: 'time', si: 60 },
  { symbol: 'h', quantity: 'time', si: 3600 },
  { symbol: 'dB', also: ['db', 'DB', 'dBSPL', 'decibel', 'decibels'], quantity: 'level', si: 1 },
  { symbol: 'dB/oct', also: ['dB/octave', 'db/oct'], quantity: 'slope', si: 1 },
  { symbol: '°', also: ['deg', 'degree', 'degrees'], quantity: 'angle', si: Math.PI / 180 },
  { symbol: 'rad', quantity: 'angle', si: 1 },
  { symbol: 'oct', also: ['octave', 'octaves'], quantity: 'octaves', si: 1 },
  { symbol: '°C', also: ['degC', '℃'], quantity: 'temperature', si: 1, offset: 273.15, system: 'metric' },
  {
    symbol: '°F',
    also: ['degF', '℉'],
    quantity: 'temperature',
    si: 5 / 9,
    offset: 459.67 * (5 / 9),
    system: 'imperial',
  },
  { symbol: 'K', quantity: 'temperature', si: 1 },
  { symbol: '%', quantity: 'ratio', si: 0.01 },
  { symbol: '×', also: ['x'], quantity: 'ratio', si: 1 },
  { symbol: 'pcs', quantity: 'ratio', si: 1, whole: true },
  { symbol: 'λ', quantity: 'ratio', si: 1 },
  { symbol: '¤', quantity: 'price', si: 1 },
];

/** What is thrown away in a spelling: spaces of every width, and the marks without width that come with pasted text. */
const GAPS = new RegExp(`[\\s${WIDTHLESS}]+`, 'g');
const MINUS = new RegExp(`[${DASHES}]`, 'g');
/** Whatever is thrown away or written in another way; most spellings have none of it. */
const OTHERWISE = new RegExp(`[\\s${WIDTHLESS}${DASHES}²³^\\u03BC\\u2126º˚⋅∙•]`);

/** Makes spellings comparable: `²` and `^2` to 2, all micro, ohm, degree, dot, dash and inch signs to one each, no spaces. */
export const plainSymbol = (text: string): string =>
  OTHERWISE.test(text)
    ? text
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

/** The unit of that spelling; nothing where there is none. */
export const unitNamed = (text: string): Unit | undefined => bySymbol.get(plainSymbol(text));

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
