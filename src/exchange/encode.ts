import { parseAddress } from '../formula/address.ts';
import type { Cell, OctavoDocument, Sheet } from '../document/types.ts';
import { VERSION } from './migrations.ts';

/** The content of a file: plain JSON that says what was typed. With `ids` it can take the place of the document it came
 *  from, as storage needs; without, it is a document to give away. */
export function encodeDocument(document: OctavoDocument, { ids = false } = {}): Record<string, unknown> {
  const nameOf = new Map(document.sheets.map((sheet) => [sheet.id, sheet.name]));
  const { baseline } = document;
  return {
    octavo: VERSION,
    ...(ids && { id: document.id }),
    title: document.title,
    system: document.system,
    sheets: document.sheets.map((sheet) => ({ ...(ids && { id: sheet.id }), ...encodeSheet(sheet) })),
    ...(baseline && {
      baseline: {
        pinned: baseline.pinned,
        cells: Object.fromEntries(
          [...baseline.cells].flatMap(([id, cells]) => {
            const name = nameOf.get(id);
            return name === undefined ? [] : [[name, inReadingOrder(cells, (text) => text)]];
          }),
        ),
      },
    }),
  };
}

const encodeSheet = (sheet: Sheet): Record<string, unknown> => ({
  name: sheet.name,
  summary: sheet.summary,
  rows: sheet.rows,
  columns: sheet.columns,
  names: Object.fromEntries(sheet.names),
  cells: inReadingOrder(sheet.cells, encodeCell),
  plots: sheet.plots,
  ...(sheet.lesson && { lesson: sheet.lesson }),
});

const encodeCell = (cell: Cell): string | Cell => (Object.keys(cell).length === 1 ? cell.text : cell);

/** Row by row, so that the same document always gives the same file. */
function inReadingOrder<T, U>(cells: ReadonlyMap<string, T>, encoded: (value: T) => U): Record<string, U> {
  const addresses = [...cells.keys()].sort((a, b) => rankOf(a) - rankOf(b));
  const record: Record<string, U> = {};
  for (const address of addresses) record[address] = encoded(cells.get(address) as T);
  return record;
}

/** More columns than a sheet can have. */
const ROW = 2 ** 15;
const MOST_KEPT = 50_000;
const ranks = new Map<string, number>();

/** Kept, for a document is written after every edit. */
function rankOf(address: string): number {
  const known = ranks.get(address);
  if (known !== undefined) return known;
  if (ranks.size >= MOST_KEPT) ranks.clear();
  const { row, column } = parseAddress(address) ?? { row: 0, column: 0 };
  ranks.set(address, row * ROW + column);
  return row * ROW + column;
}
