/** Hyphens, dashes and minus signs that stand for a minus in pasted text. */
export const DASHES = '\u2010\u2011\u2013\u2212\uFE63\uFF0D';
/** Spaces of every width but the usual one, as a range of signs. */
export const SPACES = '\u00A0\u2000-\u200A\u202F\u205F\u3000';
/** Marks without width that come with pasted text. */
export const WIDTHLESS = '\u200B\u2060\uFEFF';
