/** A field: a number to be written as machines read it, a text, or nothing. */
export type CsvField = number | string | undefined;

/** Rows as comma-separated text (RFC 4180): lines end with CR LF, fields are quoted where they must be. A text that a
 *  spreadsheet would take for a formula gets an apostrophe before it, so that it does nothing there. */
export const writeCsv = (rows: readonly (readonly CsvField[])[]): string =>
  rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');

function written(field: CsvField): string {
  if (field === undefined) return '';
  if (typeof field === 'number') return Number.isFinite(field) ? plain(field) : '';
  const harmless = BEGINS_LIKE_A_FORMULA.test(field) ? `'${field}` : field;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** Also the wide forms of the signs, and behind spaces, tabs and line breaks: programs differ in what they skip. */
const BEGINS_LIKE_A_FORMULA = /^\s*[=+\-@\u2212\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;

/** Twelve digits: what two units differ in beyond that is rounding. */
const plain = (number: number): string => String(Number(number.toPrecision(12)));
