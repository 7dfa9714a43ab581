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
function inReadingOrder<T>(cells: ReadonlyMap<string, T>): [address: string, value: T][] {
  return [...cells]
    .map(([address, value]) => ({ address, value, at: parseAddress(address) ?? { row: 0, column: 0 } }))
    .sort((a, b) => a.at.row - b.at.row || a.at.column - b.at.column)
    .map(({ address, value }) => [address, value]);
}
