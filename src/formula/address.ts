/** A cell by numbers counted from 0. */
export interface CellAddress {
  readonly row: number;
  readonly column: number;
}

/** The most that a sheet can hold; beyond it no browser scrolls exactly. */
export const MOST_ROWS = 1_000_000;
export const MOST_COLUMNS = 18_278;

const LETTERS = 26;

/** 0 -> `A`, 25 -> `Z`, 26 -> `AA`. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / LETTERS)) {
    letters = String.fromCharCode(65 + ((rest - 1) % LETTERS)) + letters;
  }
  return letters;
}

export const formatAddress = ({ row, column }: CellAddress): string => `${columnLetters(column)}${String(row + 1)}`;

/** Reads `B4`, `$B$4` or `b4`; nothing where the text is no address. At most three letters and seven digits. */
export function parseAddress(text: string): CellAddress | undefined {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(text);
  if (!match) return undefined;
  const [, letters = '', digits = ''] = match;
  const column = [...letters.toUpperCase()].reduce((sum, letter) => sum * LETTERS + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
}
