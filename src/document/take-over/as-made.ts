import type { OctavoDocument, Sheet } from '../types.ts';
import type { Left } from './types.ts';
import { isAlike } from './whole-way.ts';

/** What found no place, apart from what still stands as the starter sheet gave it that the old sheet was made from: nobody
 *  misses the rules of a sheet that brings its own. The gathered drivers are formulas there, so they are never apart. */
export function changedOf(
  left: readonly Left[],
  from: Sheet,
  starters: Iterable<OctavoDocument>,
): { readonly changed: readonly Left[]; readonly asMade: number } {
  const made = [...starters].map(({ sheets: [sheet] }) => sheet).find((sheet) => sheet && isAlike(from, sheet));
  const changed = left.filter(({ cell, text }) => made?.cells.get(cell)?.text !== text);
  return { changed, asMade: left.length - changed.length };
}
