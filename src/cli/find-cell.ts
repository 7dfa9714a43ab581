import { readRectangle, formatRectangle } from '../document/area.ts';
import { sameWord } from '../document/sheets.ts';
import type { OctavoDocument, Sheet } from '../document/types.ts';
import { nearest } from '../formula/nearest.ts';

/** Cells found in a document by what a reader wrote: `HandOver`, `B4`, `Sheet!B4`, `'My sheet'!B4:C7`. */
export interface Found {
  readonly sheet: Sheet;
  readonly cells: string;
}

/** Without a sheet, an address is meant on the first sheet, and a name on the first sheet that has it. */
export function findCells(document: OctavoDocument, written: string): Found | { readonly wrong: string } {
  const [, quoted, plain, rest = written] = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(written) ?? [];
  const wanted = quoted?.replaceAll("''", "'") ?? plain;
  const sheets = wanted === undefined ? document.sheets : document.sheets.filter(({ name }) => sameWord(name, wanted));
  const [first] = sheets;
  if (!first) {
    const names = document.sheets.map(({ name }) => `"${name}"`).join(', ');
    return { wrong: `There is no sheet "${wanted}" in this document; there are ${names}.` };
  }
  const address = rest.replaceAll('$', '').toUpperCase();
  const area = readRectangle(address);
  if (area && area.bottom < first.rows && area.right < first.columns.length)
    return { sheet: first, cells: formatRectangle(area) };
  if (area || /^[A-Z]{1,3}\d+$/.test(address)) {
    return {
      wrong: `${rest} lies outside the ${first.rows} rows and ${first.columns.length} columns of "${first.name}".`,
    };
  }
  for (const sheet of sheets) {
    for (const [name, cells] of sheet.names) if (sameWord(name, rest)) return { sheet, cells };
  }
  const known = [...new Set(sheets.flatMap(({ names }) => [...names.keys()]))];
  const near = nearest(rest, known);
  if (near !== undefined) return { wrong: `Nothing is called "${rest}" here; is "${near}" meant?` };
  const listed = known.length === 0 ? 'There are no names.' : `Names are ${known.join(', ')}.`;
  return { wrong: `Nothing is called "${rest}" here. ${listed}` };
}
