import { quantities, type Dimension, type QuantityName } from '../../functions/quantities.ts';
import type { Sentence } from '../../functions/values/say.ts';
import { currencyOf } from './currency.ts';
import { defaultUnit } from './defaults.ts';
import { quantityOf, sameDimension, symbolOf } from './dimension.ts';
import { unitNamed, units, type Unit } from './table.ts';

export interface ShowOptions {
  readonly quantity?: QuantityName | undefined;
  readonly dimension?: Dimension;
  /** The unit of the cell. In the other unit system its counterpart is shown instead. */
  readonly unit?: string | undefined;
  readonly system: 'metric' | 'imperial';
  /** Significant digits; chosen by the quantity where absent. */
  readonly digits?: number;
  /** Most significant digits of what has no fixed decimals. */
  readonly most?: number | undefined;
}

export interface Shown {
  readonly number: string;
  readonly unit: string;
}

const THIN_SPACE = '\u2009';
/** More decimals than this are told by a power of ten. */
const MOST_DECIMALS = 12;

/** A value (SI) in words for a reader: number and unit apart. */
export function show(value: number, options: ShowOptions): Shown {
  const quantity = options.quantity ?? (options.dimension && quantityOf(options.dimension));
  if (options.dimension && !quantity)
    return { number: formatNumber(value, MOST_DIGITS), unit: symbolOf(options.dimension) };
  const money = quantity === 'price' && options.dimension ? currencyOf(options.dimension) : undefined;
  const wanted = money ?? options.unit;
  const asked = wanted === undefined ? undefined : unitNamed(wanted);
  const fits = asked && sameDimension(dimensionOf(asked.quantity), dimensionOf(quantity ?? 'ratio'));
  const isForeign = asked?.system !== undefined && asked.system !== options.system;
  const unit = fits && !isForeign ? asked : unitNamed(defaultUnit(quantity ?? 'ratio', options.system));
  const inUnit = unit ? numberIn(unit, value) : value;
  const [number, chosen] = fits && !isForeign ? [inUnit, unit] : prefixed(inUnit, unit, value, quantity);
  const digits = options.digits ?? 0;
  return {
    number: digits > 0 && !isForeign ? typedDigits(number, digits) : forReaders(number, chosen, quantity, options.most),
    unit: chosen?.symbol ?? '',
  };
}

const dimensionOf = (quantity: QuantityName): Dimension => quantities[quantity].dimension;

/** A difference of two numbers is no finer than they are: 273.15 K less 273.15 must be 0 °C, not 5.7·10^−14. */
function numberIn({ si, offset }: Unit, value: number): number {
  if (offset === undefined) return value / si;
  const number = (value - offset) / si;
  return Number.isFinite(number) ? Number(number.toFixed(9)) : number;
}

/** What has no larger and smaller units: a level, an amount of money, a temperature, an angle. */
const UNSCALED: ReadonlySet<QuantityName | undefined> = new Set(['level', 'price', 'temperature', 'angle'] as const);

/** Takes a larger or smaller unit of the same system where the number would be out of hand. */
function prefixed(
  number: number,
  unit: Unit | undefined,
  value: number,
  quantity: QuantityName | undefined,
): [number, Unit | undefined] {
  const size = Math.abs(number);
  const most = quantity === 'mass' ? 1000 : 100_000;
  if (!unit || number === 0 || UNSCALED.has(quantity) || (size >= 0.01 && size < most)) return [number, unit];
  const family = units.filter(
    (each) =>
      each.quantity === unit.quantity && each.offset === undefined && (each.system ?? unit.system) === unit.system,
  );
  const handy = family.find((each) => Math.abs(value / each.si) >= 1 && Math.abs(value / each.si) < 1000);
  // Where none is handy, the one that leaves the fewest noughts: 0.001 mL rather than 1·10^−6 L.
  const noughts = (each: Unit): number => Math.abs(Math.log10(Math.abs(value / each.si)));
  const chosen = handy ?? family.reduce((best, each) => (noughts(each) < noughts(best) ? each : best), unit);
  return [chosen === unit ? number : value / chosen.si, chosen];
}

/** The digits that were typed: an exact echo of the precision. */
function typedDigits(number: number, digits: number): string {
  if (!Number.isFinite(number)) return formatNumber(number, digits);
  const rounded = Number(number.toPrecision(Math.min(digits + 2, 15)));
  const decimals = Math.max(0, digits - (rounded === 0 ? 1 : Math.floor(Math.log10(Math.abs(rounded))) + 1));
  const isPlain = decimals <= MOST_DECIMALS && Math.abs(rounded) < 1e15;
  return isPlain ? group(rounded.toFixed(decimals)) : powerOfTen(rounded, digits);
}

const decimalsByQuantity: Partial<Record<QuantityName, number>> = {
  level: 1,
  angle: 1,
  octaves: 2,
  slope: 1,
};

const MOST_DIGITS = 4;
const ROUGH_DIGITS = 2;

function forReaders(
  number: number,
  unit: Unit | undefined,
  quantity: QuantityName | undefined,
  most = MOST_DIGITS,
): string {
  if (!Number.isFinite(number) || Math.abs(number) >= 1e15) return formatNumber(number, most);
  if (quantity === 'price') return group(number.toFixed(2).replace('.00', ''));
  const fixed = unit?.symbol === 'rad' ? undefined : quantity && decimalsByQuantity[quantity];
  if (fixed !== undefined) return group(number.toFixed(fixed));
  if (quantity === 'frequency' && unit?.symbol === 'Hz' && Math.abs(number) >= 100) return group(number.toFixed(0));
  return formatNumber(number, most);
}

/** To so many significant digits, without needless zeros; thousands set apart; a real minus. */
export function formatNumber(number: number, digits: number): string {
  if (Number.isNaN(number)) return 'no number';
  if (!Number.isFinite(number)) return number < 0 ? '\u2212∞' : '∞';
  if (number === 0) return '0';
  const size = Math.abs(number);
  if (size >= 1e7 || size < 1e-4) return powerOfTen(number, digits, /\.?0+$/);
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  const text = number.toFixed(Math.min(decimals, MOST_DECIMALS));
  return group(text.includes('.') ? text.replace(/\.?0+$/, '') : text);
}

function powerOfTen(number: number, digits: number, needless?: RegExp): string {
  const [mantissa = '', exponent = '0'] = number.toExponential(Math.min(digits, 16) - 1).split('e');
  const shown = needless && mantissa.includes('.') ? mantissa.replace(needless, '') : mantissa;
  return `${shown}·10^${String(Number(exponent))}`.replaceAll('-', '\u2212');
}

function group(text: string): string {
  const [whole = '', decimals] = text.replace('-', '').split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE);
  const isZero = Number(text) === 0;
  return `${text.startsWith('-') && !isZero ? '\u2212' : ''}${grouped}${decimals === undefined ? '' : `.${decimals}`}`;
}

/** Words within whose numbers, and before whose units, no line may end. */
export const unbroken = (words: string): string =>
  words.replaceAll(THIN_SPACE, '\u202F').replaceAll(/(\d) (?=\S{1,4}(?:\s|$))/g, '$1\u00a0');

/** A sentence with its numbers in the reader's units. */
export function speak(sentence: Sentence, system: 'metric' | 'imperial'): string {
  return sentence
    .map((part) => {
      if (typeof part === 'string') return part;
      const { value, quantity, money, rough } = part;
      const { number, unit } = show(value, { quantity, system, unit: money, most: rough && ROUGH_DIGITS });
      if (unit === '') return number;
      return unit === '°' ? number + unit : `${number} ${unit}`;
    })
    .join('');
}
