import { brokenIn, openBrackets } from './broken.ts';
import { treeOf } from './tree.ts';

/** A formula with the closing brackets that its end lacks, where it lacks nothing else; any other text as it is. */
export function withClosing(text: string): string {
  const open = text.startsWith('=') ? openBrackets(text) : 0;
  if (open <= 0) return text;
  const closed = text + ')'.repeat(open);
  return brokenIn(closed, treeOf(closed)) ? text : closed;
}
