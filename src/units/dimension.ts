import { quantities, type Base, type Dimension, type QuantityName } from '../../functions/quantities.ts';
import { currencyOf, isCurrency } from './currency.ts';

export const PLAIN: Dimension = {};

const clean = (dimension: Partial<Record<Base, number>>): Dimension =>
  Object.fromEntries(
    Object.entries(dimension)
      .map(([base, power]) => [base, nearFraction(power)] as const)
      .filter(([base, power]) => power !== 0 && (!isCurrency(base) || dimension.money)),
  );

/** Powers and roots taken one after another leave 2.9999999999999996 behind; twelfths cover every root one takes. */
function nearFraction(power: number): number {
  const twelfths = Math.round(power * 12);
  return Math.abs(power * 12 - twelfths) < 1e-6 ? twelfths / 12 : power;
}

/** Multiplies dimensions: a times b to the power given. */
export function times(a: Dimension, b: Dimension, power = 1): Dimension {
  const sum: Partial<Record<Base, number>> = { ...a };
  for (const [base, exponent] of Object.entries(b) as [Base, number][]) sum[base] = (sum[base] ?? 0) + exponent * power;
  return clean(sum);
}

/** A price without a sign of its own fits every other. */
export const sameDimension = (a: Dimension, b: Dimension): boolean => a === b || (isWithin(a, b) && isWithin(b, a));

/** Whether another dimension has the same power of every base that one has. */
function isWithin(one: Dimension, other: Dimension): boolean {
  for (const [base, power] of Object.entries(one) as [Base, number][])
    if (Math.abs(power - (other[base] ?? 0)) >= 1e-9 && !(isCurrency(base) && !currencyOf(other))) return false;
  return true;
}

export const isPlain = (dimension: Dimension): boolean => sameDimension(dimension, PLAIN);

/** The first quantity of that dimension; nothing for a dimension without a name. */
export const quantityOf = (dimension: Dimension): QuantityName | undefined =>
  (Object.keys(quantities) as QuantityName[]).find((name) => sameDimension(quantities[name].dimension, dimension));

/** A dimension in SI symbols: `m³`, `kg·m/s²`, `m^1.5`. */
export function symbolOf(dimension: Dimension): string {
  const named = quantityOf(dimension);
  const currency = currencyOf(dimension);
  if (named) return (named === 'price' && currency) || quantities[named].si;
  const power = (exponent: number): string => {
    if (!Number.isInteger(exponent)) return `^${String(Number(exponent.toFixed(3)))}`;
    return exponent === 1 ? '' : String(exponent).replaceAll(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? '');
  };
  const part = (sign: 1 | -1): string =>
    (Object.entries(dimension) as [Base, number][])
      .filter(([base, exponent]) => exponent * sign > 0 && !(currency && base === 'money'))
      .map(([base, exponent]) => base + power(Math.abs(exponent)))
      .join('·');
  const below = part(-1);
  return below === '' ? part(1) : `${part(1) || '1'}/${below}`;
}
