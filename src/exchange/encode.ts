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
            return name === undefined ? [] : [[name, Object.fromEntries(inReadingOrder(cells))]];
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
  cells: Object.fromEntries(inReadingOrder(sheet.cells).map(([address, cell]) => [address, encodeCell(cell)])),
  plots: sheet.plots,
  ...(sheet.lesson && { lesson: sheet.lesson }),
});

const encodeCell = (cell: Cell): string | Cell => (Object.keys(cell).length === 1 ? cell.text : cell);

/** Row by row, so that the same document always gives the same file. */
const inReadingOrder = <T>(cells: ReadonlyMap<string, T>): [address: string, value: T][] =>
  [...cells].sort(([a], [b]) => rankOf(a) - rankOf(b));

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
