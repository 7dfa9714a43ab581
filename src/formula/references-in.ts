import { formatAddress, parseAddress } from './address.ts';
import { sheetName } from './compile-reference.ts';
import { piecesOf, treeOf } from './tree.ts';
import type { Reference, Scope } from './types.ts';

/** A reference and where it stands in the text. */
export interface PlacedReference extends Reference {
  readonly from: number;
  readonly to: number;
}

/** Every reference of a formula that leads to cells, in order; a formula that is not finished gives those that can be read. */
export function referencesIn(text: string, scope: Scope): PlacedReference[] {
  if (!text.startsWith('=')) return [];
  const found: PlacedReference[] = [];
  for (const { name, from, to } of piecesOf(treeOf(text))) {
    if (name !== 'Cell' && name !== 'Range' && name !== 'Name') continue;
    const written = text.slice(from, to);
    const mark = written.lastIndexOf('!');
    const sheet = mark < 0 ? scope.sheet : scope.sheetNamed(sheetName(written.slice(0, mark).trim()));
    const word = written.slice(mark + 1).trim();
    const cells = sheet === undefined ? undefined : cellsOf(name, word, sheet, scope);
    if (sheet !== undefined && cells !== undefined) found.push({ from, to, sheet, cells });
  }
  return found;
}

function cellsOf(kind: string, word: string, sheet: string, scope: Scope): string | undefined {
  if (kind !== 'Name') return word.replaceAll(/[$\s]/g, '').toUpperCase();
  const [head = word] = word.split('.');
  const at = head === word ? undefined : parseAddress(head);
  return scope.cellsNamed(sheet, word) ?? scope.cellsNamed(sheet, head) ?? (at && formatAddress(at));
}
