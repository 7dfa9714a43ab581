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
  const ranked = Array.from(cells, ([address, value]) => ({ address, value, rank: rankOf(address) }));
  const record: Record<string, U> = {};
  for (const { address, value } of ranked.sort((a, b) => a.rank - b.rank)) record[address] = encoded(value);
  return record;
}

/** More columns than a sheet can have. */
const ROW = 2 ** 15;
const [BEFORE_A, ZERO] = [64, 48];

/** By hand, for a document is written after every edit. */
function rankOf(address: string): number {
  let column = 0;
  let row = 0;
  for (let index = 0; index < address.length; index++) {
    const code = address.charCodeAt(index);
    if (code > BEFORE_A) column = column * 26 + code - BEFORE_A;
    else row = row * 10 + code - ZERO;
  }
  return row * ROW + column;
}
