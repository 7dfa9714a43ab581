import { labelOf as meaningOf } from '../../../functions/driver/labels.ts';
import { formatAddress, parseAddress } from '../../formula/address.ts';
import { parseQuantity } from '../../units/parse.ts';
import type { Cell, OctavoDocument, Origin, Sheet } from '../types.ts';

/** Where an input comes from: as the reader said of it; else what is no number of a driver was decided by who made the
 *  sheet; of a driver's number nobody knows. */
export const originOf = ({ origin }: Cell, isOfDriver: boolean): Origin | undefined =>
  origin ?? (isOfDriver ? undefined : 'chosen');

/** A starter sheet with its made-up numbers marked, those below a heading that calls them invented. Whoever types over
 *  one takes its mark away. */
export const markInvented = (document: OctavoDocument): OctavoDocument => ({
  ...document,
  sheets: document.sheets.map((sheet) => {
    const invented = sectionsOf(sheet).filter(({ title }) => /\binvented\b/i.test(title));
    const isInvented = (address: string): boolean => {
      const row = parseAddress(address)?.row ?? -1;
      return invented.some(({ first, last }) => row > first && row <= last);
    };
    const mark = ([address, cell]: [string, Cell]): [string, Cell] => {
      const isNumber = cell.look === undefined && parseQuantity(cell.text) !== undefined;
      return [address, isNumber && !cell.origin && isInvented(address) ? { ...cell, origin: 'invented' } : cell];
    };
    return { ...sheet, cells: new Map([...sheet.cells].map(mark)) };
  }),
});

/** The rows from a heading to the next one, counted from 0, both ends inside. */
export interface SheetSection {
  readonly title: string;
  readonly first: number;
  readonly last: number;
  /** Its rows are the data of drivers. */
  readonly isDriver: boolean;
}

export function sectionsOf(sheet: Sheet): readonly SheetSection[] {
  const rows = [...sheet.cells.keys()].flatMap((address) => parseAddress(address)?.row ?? []);
  const last = Math.max(0, ...rows);
  const heads = [...sheet.cells]
    .filter(([, { look }]) => look === 'section')
    .map(([address, { text }]) => ({ title: text, first: parseAddress(address)?.row ?? 0 }))
    .toSorted((a, b) => a.first - b.first);
  const starts = heads[0]?.first === 0 ? heads : [{ title: '', first: 0 }, ...heads];
  return starts.map((start, index) => {
    const end = (starts[index + 1]?.first ?? last + 1) - 1;
    const rows = Array.from({ length: Math.max(0, end - start.first + 1) }, (_, down) => start.first + down);
    return { ...start, last: end, isDriver: holdsDriver(sheet, rows) };
  });
}

/** Fewer numbers of a driver than this may stand together for any other reason. */
const FEWEST_NUMBERS = 5;

/** Whether so many rows that are labelled as a driver's numbers, its resonance among them, hold typed numbers. */
function holdsDriver(sheet: Sheet, rows: readonly number[]): boolean {
  const found = new Set<string>();
  for (const row of rows) {
    const textAt = (column: number): string => sheet.cells.get(formatAddress({ row, column }))?.text ?? '';
    const meaning = meaningOf(textAt(0));
    const isTyped = sheet.columns.some((_, column) => column > 0 && parseQuantity(textAt(column)) !== undefined);
    if (typeof meaning === 'object' && isTyped) found.add(meaning.field);
  }
  return found.has('fs') && found.size >= FEWEST_NUMBERS;
}
