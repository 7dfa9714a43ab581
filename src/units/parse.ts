import type { QuantityName } from '../../functions/quantities.ts';
import { DASHES, MONEY, SPACES, WIDE, WIDTHLESS } from './signs.ts';
import { unitNamed, type Unit } from './table.ts';

/** A typed number with its unit. */
export interface ParsedQuantity {
  /** SI. */
  readonly value: number;
  /** The symbol of the unit; empty for a plain number. */
  readonly unit: string;
  readonly quantity: Unit['quantity'];
  /** Significant digits as typed, trailing zeros included. */
  readonly digits: number;
}

const SPACE = new RegExp(`[${SPACES}]`, 'g');
const NO_WIDTH = new RegExp(`[${WIDTHLESS}]`, 'g');
const MINUS = new RegExp(`[${DASHES}]`, 'g');
const HALVES = / ?([¼½¾⅛⅜⅝⅞])/;
/** As on an inch rule and in parts of an octave, and of these alone: 4/8 ohm are two numbers. */
const FRACTION = /^([+-]?)(\d+[ -])?(\d+)\/(\d+)(?= ?(?:in|f[oet]|oct|["″'′λ]))/i;
/** `6' 2 1/2"`. */
const FEET_AND_INCHES = /^([+-]?)(\d+) ?(?:['′’]|ft|feet|foot) ?(\d[^a-z]*?) ?(?:["″”]|''|in\.?|inch(?:es)?)$/i;
/** IEC 60062: a letter in the place of the decimal mark, in `4k7`, and in `0m33H`, which must say what it is: m alone may be a
 *  mF or a mH. Between digits alone: R47 and 10R may be names; and without M: 12M5 is rather a driver than 12.5 MΩ. */
const CODE = /^([+-]?\d+)([RkKmuµμnp])(\d{1,3}) ?([ΩFH]?)$/;
/** Any of these; most texts have none. */
const OTHERWISE = new RegExp(`[${SPACES}${WIDTHLESS}${DASHES}¼½¾⅛⅜⅝⅞${WIDE}\u2044±]|\\+/?-`);
const WIDE_SIGNS = new RegExp(`[${WIDE}]`, 'g');
/** A travel of so much either way, a tolerance: the number says how much. */
const EITHER_WAY = /^(?:±|\+\/?-) ?/;
const NUMBER = /^([+-]?) ?(\d{1,3}(?: \d{3})+(?:[.,]\d+)?|\d+(?:[.,]\d*)?|[.,]\d+)/;
/** Money is mostly written before its number. */
const MONEY_FIRST = new RegExp(`^([+-]?) ?(${MONEY}) ?(?=[\\d.,])(.+)$`);
const EXPONENT = /^(?:[eE]([+-]?\d+)| ?[·⋅×*x] ?10\^([+-]?\d+)| ?[·⋅×*x] ?10([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))/;
/** A third has no end. */
const FEW_DIGITS = 5;
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * Reads `38 Hz`, `12,1 L`, `0.2 ft3`, `1 1/2 in`, `1 900 Hz`, `−1.5 dB`, `45°`, `0.386`, `1.2·10^−6 m/N`. The decimal mark is a
 * point or a comma; thousands may be set apart by spaces, never by a comma or a point: `1,900 Hz` is 1.9 Hz, and shown as
 * that. Gives nothing where the text is anything else, so that text stays text.
 */
export function parseQuantity(text: string): ParsedQuantity | undefined {
  const written = OTHERWISE.test(text) ? inPlainSigns(text) : text.trim();
  const typed = written.replace(FRACTION, decimal).replace(MONEY_FIRST, '$1$3 $2');
  const isFraction = typed !== written;
  const match = NUMBER.exec(typed);
  if (!match) return undefined;
  const [whole, sign = '', mantissa = ''] = match;
  const [power, exponent] = exponentOf(typed.slice(whole.length));
  const rest = typed.slice(whole.length + power.length).trim();
  const unit = rest === '' ? undefined : unitNamed(rest);
  if (rest !== '' && !unit) {
    const meant = written.replace(FEET_AND_INCHES, inInches).replace(CODE, decoded);
    return meant === written ? undefined : parseQuantity(meant);
  }
  const plain = mantissa.replaceAll(' ', '').replace(',', '.');
  const number = Number(`${sign}${plain}e${exponent}`);
  const value = toSi(number, unit);
  if (!Number.isFinite(value) || (value === 0 && number !== 0) || (number === 0 && /[1-9]/.test(plain)))
    return undefined;
  return {
    // Adding 0 makes a negative zero a zero.
    value: value + 0,
    unit: unit?.symbol ?? '',
    quantity: unit?.quantity ?? 'ratio',
    digits: Math.min(isFraction ? FEW_DIGITS : Infinity, Math.max(1, plain.replace('.', '').replace(/^0+/, '').length)),
  };
}

/** SI value where a quantity is wanted: `100 °C` of warming is a rise by 100 K, nobody means one by 373 K. */
export const valueAs = ({ value, unit }: ParsedQuantity, wanted: QuantityName): number =>
  wanted === 'warming' ? value - (unitNamed(unit)?.offset ?? 0) : value;

const inPlainSigns = (text: string): string =>
  text
    .replaceAll(NO_WIDTH, '')
    .replaceAll(WIDE_SIGNS, (sign) => sign.normalize('NFKC'))
    .replace('\u2044', '/')
    .replaceAll(SPACE, ' ')
    .replaceAll(MINUS, '-')
    .replace(HALVES, (_, half: string) => ` ${half.normalize('NFKD').replace('\u2044', '/')}`)
    .trim()
    .replace(EITHER_WAY, '');

const decimal = (_: string, sign: string, whole: string | undefined, above: string, below: string): string =>
  sign + String(Number.parseInt(whole ?? '0') + Number(above) / Number(below));

const inInches = (_: string, sign: string, feet: string, inches: string): string =>
  `${sign}${String(12 * Number(feet) + Number(`${inches}"`.replace(FRACTION, decimal).slice(0, -1)))} in`;

function decoded(typed: string, whole: string, letter: string, part: string, written: string): string {
  const unit = written || (/[Rk]/i.test(letter) ? 'Ω' : letter === 'm' ? '' : 'F');
  return unit === '' ? typed : `${whole}.${part} ${letter}${unit}`.replace('R', '');
}

/** The power of ten behind a number: as it is written, and which. */
function exponentOf(text: string): [written: string, exponent: string] {
  const match = EXPONENT.exec(text);
  if (!match) return ['', '0'];
  const [written, typed, printed, raised = ''] = match;
  const plain = raised.replaceAll(/[⁺⁻]/g, (sign) => (sign === '⁺' ? '+' : '-'));
  const digits = plain.replaceAll(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(RAISED.indexOf(digit)));
  return [written, (typed ?? printed ?? digits) || '0'];
}

/** A divided rather than a multiplied factor keeps `38 mm` at 0.038 and not at 0.038000000000000006. */
function toSi(number: number, unit: Unit | undefined): number {
  if (!unit) return number;
  const scaled =
    unit.si < 1 && Number.isInteger(Math.round(1 / unit.si)) && Math.abs(1 / unit.si - Math.round(1 / unit.si)) < 1e-6
      ? number / Math.round(1 / unit.si)
      : number * unit.si;
  return scaled + (unit.offset ?? 0);
}
