import { currencies, quantities, type Currency, type QuantityName } from '../../functions/quantities.ts';
import { currencyOf, isCurrency } from '../units/currency.ts';
import { isPlain, quantityOf, sameDimension, symbolOf } from '../units/dimension.ts';
import type { Content } from './content.ts';
import type { CellType } from './types.ts';

export type NumberType = Extract<CellType, { kind: 'number' }>;

export const UNKNOWN: CellType = { kind: 'unknown' };
export const TEXT: CellType = { kind: 'text' };
export const TRUTH: CellType = { kind: 'truth' };

/** One and the same for every number of a quantity: thousands of cells hold it, and it crosses to the page once. */
export const numberOf = (quantity: QuantityName): NumberType => numbers[quantity];

const numbers = Object.fromEntries(
  Object.entries(quantities).map(([quantity, { dimension }]) => [quantity, { kind: 'number', dimension, quantity }]),
) as Readonly<Record<QuantityName, NumberType>>;

export const RATIO = numberOf('ratio');

/** The type of a number in a unit: a price keeps the sign of its money. */
export const numberIn = (unit: string, quantity: QuantityName): NumberType =>
  (quantity === 'price' && isCurrency(unit) ? prices[unit] : undefined) ?? numberOf(quantity);

const prices = Object.fromEntries(
  currencies.map((sign) => [sign, { ...numbers.price, dimension: { ...numbers.price.dimension, [sign]: 1 } }]),
) as Readonly<Record<Currency, NumberType>>;

/** The type of what was typed, formulas apart. */
export function typeOfContent(content: Exclude<Content, { kind: 'formula' }>): CellType {
  switch (content.kind) {
    case 'number':
      return RATIO;
    case 'quantity':
      return numberIn(content.unit, content.quantity);
    default:
      return { kind: content.kind };
  }
}

export const isPlainNumber = (type: CellType): boolean => type.kind === 'number' && isPlain(type.dimension);

/** Whether the type says nothing that could be checked. */
export const isOpen = (type: CellType): boolean => type.kind === 'unknown' || type.kind === 'empty';

/** As it stands in a sentence: "a volume", "ohms", "a curve", "a text". */
export function nounOf(type: CellType): string {
  switch (type.kind) {
    case 'number': {
      const named = type.quantity ?? quantityOf(type.dimension);
      const currency = currencyOf(type.dimension);
      if (named === 'price' && currency) return `a price in ${currency}`;
      return named ? quantities[named].noun : `a number in ${symbolOf(type.dimension)}`;
    }
    case 'record':
      return `a ${type.record}`;
    case 'text':
      return 'a text';
    case 'truth':
      return 'a truth';
    case 'empty':
      return 'nothing';
    case 'unknown':
      return 'something unknown';
  }
}

/** The type of "this or that": what both share; unknown where they share nothing. */
export function either(a: CellType, b: CellType): CellType {
  if (isOpen(a)) return b.kind === 'empty' ? a : b;
  if (isOpen(b)) return a;
  if (a.kind === 'number' && b.kind === 'number') {
    if (!sameDimension(a.dimension, b.dimension)) return UNKNOWN;
    const { dimension } = currencyOf(a.dimension) ? a : b;
    return { ...a, dimension, quantity: a.quantity === b.quantity ? a.quantity : quantityOf(dimension) };
  }
  if (a.kind === 'record' && b.kind === 'record') {
    if (a.record !== b.record) return UNKNOWN;
    return a.quantity === b.quantity && a.money === b.money ? a : { kind: 'record', record: a.record };
  }
  return a.kind === b.kind ? a : UNKNOWN;
}

export function sameType(a: CellType, b: CellType): boolean {
  if (a.kind !== b.kind) return false;
  if (a.kind === 'number' && b.kind === 'number')
    return (
      a.quantity === b.quantity &&
      sameDimension(a.dimension, b.dimension) &&
      currencyOf(a.dimension) === currencyOf(b.dimension)
    );
  if (a.kind === 'record' && b.kind === 'record')
    return a.record === b.record && a.quantity === b.quantity && a.money === b.money;
  return true;
}
