import type { FormulaNode, FormulaTree } from './tree.ts';

/** More brackets, calls or signs inside one another than this are no formula that anyone reads, and overflow the engine. */
const DEEPEST = 100;
/** So many signs in a row, as in 1+1+1; the engine goes down one step for each. */
const LONGEST = 300;

/** Why a formula cannot be read, and where. */
export interface Broken {
  readonly node: FormulaNode;
  readonly message: string;
}

/** What is wrong with a formula as it is written; nothing where it can be read. */
export function brokenIn(text: string, { whole: node, depth, signs, unread }: FormulaTree): Broken | undefined {
  if (depth > DEEPEST) {
    const message = `More than ${String(DEEPEST)} brackets stand inside one another: put parts of the formula into cells of their own.`;
    return { node, message };
  }
  if (signs > LONGEST) {
    const message = `The formula has more than ${String(LONGEST)} signs: put parts of it into cells of their own, or use SUM over a range.`;
    return { node, message };
  }
  return unread && { node: unread, message: messageAt(text, unread) };
}

function messageAt(text: string, at: FormulaNode): string {
  const rest = text.slice(at.from, at.to) || text.slice(at.from).trim().slice(0, 12);
  if (outsideTexts(text).includes('"')) return 'A text is opened and not closed: put a " behind it.';
  const open = openBrackets(text);
  if (open > 0)
    return `A closing bracket is missing: ${String(open)} more ${open === 1 ? 'is' : 'are'} opened than closed.`;
  if (rest === '') return 'The formula ends where a value should follow: complete it, or take away the last sign.';
  if (/^,\s*\d/.test(text.slice(at.from)) && /\d$/.test(text.slice(0, at.from)))
    return 'In a formula the decimal mark is a point, because a comma parts arguments: write 2.5, not 2,5.';
  return `The formula cannot be read from “${rest}” on, character ${String(at.from + 1)}: check the sign or word before it.`;
}

/** How many brackets are opened and not closed; below zero where more are closed. */
export function openBrackets(text: string): number {
  const outside = outsideTexts(text);
  return (outside.match(/\(/g)?.length ?? 0) - (outside.match(/\)/g)?.length ?? 0);
}

const outsideTexts = (text: string): string => text.replaceAll(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, '');
