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
  const known = [...new Set(sheets.flatMap(({ names }) => [...names.keys()]))];
  const near = nearest(rest, known);
  if (near !== undefined) return { wrong: `Nothing is called "${rest}" here; is "${near}" meant?` };
  const listed = known.length === 0 ? 'There are no names.' : `Names are ${known.join(', ')}.`;
  return { wrong: `Nothing is called "${rest}" here. ${listed}` };
}

/** The word that differs least, where few letters differ. */
function nearest(wanted: string, words: readonly string[]): string | undefined {
  const distances = words.map((word) => ({ word, distance: distance(wanted.toLowerCase(), word.toLowerCase()) }));
  const [best] = distances.sort((a, b) => a.distance - b.distance);
  return best && best.distance <= Math.max(1, wanted.length / 3) ? best.word : undefined;
}

/** How many letters must be put in, taken out or changed. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (const [index, letter] of [...a].entries()) {
    const next = [index + 1];
    for (const [at, other] of [...b].entries()) {
      const changed = (row[at] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(changed, (row[at + 1] ?? 0) + 1, (next[at] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
