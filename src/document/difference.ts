import type { SheetContent, Writing } from '../engine/types.ts';
import type { OctavoDocument, Sheet } from './types.ts';

/** What the engine must be told to go from one document to another: some texts, or everything anew. */
export type Difference = { readonly kind: 'texts'; readonly writings: readonly Writing[] } | { readonly kind: 'all' };

/** More texts than this are quicker loaded than written. */
const MOST_WRITINGS = 2000;

export function difference(before: OctavoDocument, after: OctavoDocument): Difference {
  if (before.sheets.length !== after.sheets.length) return { kind: 'all' };
  const writings: Writing[] = [];
  for (const [index, sheet] of after.sheets.entries()) {
    const earlier = before.sheets[index];
    if (earlier === sheet) continue;
    if (earlier?.id !== sheet.id || earlier.name !== sheet.name || !sameNames(earlier, sheet)) return { kind: 'all' };
    writings.push(...changedTexts(earlier, sheet));
    if (writings.length > MOST_WRITINGS) return { kind: 'all' };
  }
  return { kind: 'texts', writings };
}

const sameNames = ({ names: a }: Sheet, { names: b }: Sheet): boolean =>
  a === b || (a.size === b.size && [...a].every(([name, cells]) => b.get(name) === cells));

function changedTexts(before: Sheet, after: Sheet): Writing[] {
  if (before.cells === after.cells) return [];
  const writings: Writing[] = [];
  // Not by entries: a pair for each cell of the sheet would be thrown away at every edit.
  after.cells.forEach((held, cell) => {
    const earlier = before.cells.get(cell);
    if (earlier !== held && (earlier?.text ?? '') !== held.text)
      writings.push({ sheet: after.id, cell, text: held.text });
  });
  before.cells.forEach(({ text }, cell) => {
    if (text !== '' && !after.cells.has(cell)) writings.push({ sheet: after.id, cell, text: '' });
  });
  return writings;
}

/** The document as the engine reads it. */
export const contentOf = (sheets: readonly Sheet[]): readonly SheetContent[] =>
  sheets.map(({ id, name, cells, names }) => ({
    id,
    name,
    cells: typedIn(cells),
    names,
  }));

function typedIn(cells: Sheet['cells']): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const [address, { text }] of cells) if (text !== '') texts.set(address, text);
  return texts;
}

/** The texts that a baseline remembers. */
export const textsOf = (document: OctavoDocument): ReadonlyMap<string, ReadonlyMap<string, string>> =>
  new Map(contentOf(document.sheets).map(({ id, cells }) => [id, cells]));
