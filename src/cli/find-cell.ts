import { readRectangle, formatRectangle } from '../document/area.ts';
import { sameWord } from '../document/sheets.ts';
import type { OctavoDocument, Sheet } from '../document/types.ts';

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
  const area = readRectangle(rest.replaceAll('$', '').toUpperCase());
  if (area) {
    if (area.bottom < first.rows && area.right < first.columns.length)
      return { sheet: first, cells: formatRectangle(area) };
    return {
      wrong: `${rest} lies outside the ${first.rows} rows and ${first.columns.length} columns of "${first.name}".`,
    };
  }
  for (const sheet of sheets) {
    for (const [name, cells] of sheet.names) if (sameWord(name, rest)) return { sheet, cells };
  }
  const known = sheets.flatMap(({ names }) => [...names.keys()]);
  const near = known.filter((name) => name.toLowerCase().includes(rest.toLowerCase().slice(0, 3)));
  const listed = (near.length > 0 ? near : known).slice(0, 12).join(', ');
  return {
    wrong: `Nothing is called "${rest}" here.${listed === '' ? '' : ` Names are ${listed}${known.length > 12 ? ', …' : ''}.`}`,
  };
}
