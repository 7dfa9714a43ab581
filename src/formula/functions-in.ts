import { piecesOf, treeOf } from './tree.ts';

/** The functions that a formula calls, in capitals, each once, in the order in which they are written. */
export function functionsIn(text: string): readonly string[] {
  const found = new Set<string>();
  if (!text.startsWith('=')) return [];
  for (const { name, from, to } of piecesOf(treeOf(text)))
    if (name === 'Function') found.add(text.slice(from, to).toUpperCase());
  return [...found];
}
