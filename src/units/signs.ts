/** Hyphens, dashes and minus signs that stand for a minus in pasted text. */
export const DASHES = '\u2010-\u2014\u2212\uFE63\uFF0D';
/** Spaces of every width but the usual one, as a range of signs. */
export const SPACES = '\u00A0\u2000-\u200A\u202F\u205F\u3000';
/** Marks without width that come with pasted text. */
export const WIDTHLESS = '\u200B\u2060\uFEFF';
/** Signs as wide as a Chinese one, and units squeezed into one sign, as ranges. */
export const WIDE = '\uFF01-\uFF5E\u3300-\u33FF';
/** Signs of money that are written before a number, as alternatives. */
export const MONEY = '€|(?:US)?\\$|£|¥|₹|CHF';
