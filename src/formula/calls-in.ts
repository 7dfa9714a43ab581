import { childNamed, piecesOf, treeOf } from './tree.ts';

/** A call in a formula, and which of its arguments are written: `F(1,,2)` has the first and the third. */
export interface CallIn {
  /** In capitals. */
  readonly name: string;
  readonly given: readonly boolean[];
}

/** Every call of a formula, outer ones before those inside them; nothing for what is no formula. */
export function callsIn(text: string): readonly CallIn[] {
  const found: CallIn[] = [];
  if (!text.startsWith('=')) return [];
  for (const node of piecesOf(treeOf(text))) {
    const called = node.name === 'Call' && childNamed(node, 'Function');
    if (!called) continue;
    const given: boolean[] = [false];
    for (const { name } of childNamed(node, 'Arguments')?.children ?? []) {
      if (name === 'Separator') given.push(false);
      else if (name === 'Argument') given[given.length - 1] = true;
    }
    found.push({ name: text.slice(called.from, called.to).toUpperCase(), given });
  }
  return found;
}
