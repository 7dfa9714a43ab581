import { currencies, type Currency, type Dimension } from '../../functions/quantities.ts';

const signs: ReadonlySet<string> = new Set(currencies);

export const isCurrency = (base: string): base is Currency => signs.has(base);

/** The sign of money that a dimension carries; nothing where it has none, or only the sign for any money. */
export const currencyOf = (dimension: Dimension): Currency | undefined =>
  dimension.money === undefined ? undefined : Object.keys(dimension).find(isCurrency);
