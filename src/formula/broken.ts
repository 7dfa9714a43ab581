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
  const ahead = text.slice(at.from);
  const before = text.slice(0, at.from).trimEnd();
  const rest = text.slice(at.from, at.to) || ahead.trim().slice(0, 12);
  const outside = outsideTexts(text);
  const inches = /[\d.]+(?=")/.exec(outside)?.[0];
  if (inches !== undefined) return `In a formula a " opens a text: write inches as ${inches} in.`;
  if (outside.includes('"')) return 'A text is opened and not closed: put a " behind it.';
  const open = openBrackets(text);
  if (open > 0)
    return `A closing bracket is missing: ${String(open)} more ${open === 1 ? 'is' : 'are'} opened than closed.`;
  if (rest === '') return 'The formula ends where a value should follow: complete it, or take away the last sign.';
  const decimals = /^,\s*(\d+)/.exec(ahead)?.[1];
  const whole = decimals === undefined ? undefined : /\d+$/.exec(before)?.[0];
  if (whole !== undefined)
    return `In a formula the decimal mark is a point, because a comma parts arguments: write ${whole}.${decimals}, not ${whole},${decimals}.`;
  const remedy =
    remedies.find(([signs]) => signs.test(`${before}\n${ahead}`))?.[1] ?? 'check the sign or word before it';
  return `The formula cannot be read from “${rest}” on, character ${String(at.from + 1)}: ${remedy}.`;
}

/** What is mostly meant by signs that a formula has no place for, by what stands before and behind (from the line end on). */
const remedies: readonly (readonly [RegExp, string])[] = [
  [/\n(in|to)\b/i, 'take that away; the unit shown is chosen in the menu of the cell'],
  [/\d\n\s*(k|M|R)\d/, 'write the unit behind the number, as in 6.8 kΩ'],
  [/[\d)]\n(x|×|·|⋅|\()/i, 'write * for times'],
  [/[\d)]\n[÷:]/, 'write / for divided by'],
  [/\*\n\*|\n[²³⁰-⁹]|\^\n\^/, 'write ^ for a power, as in 2^3'],
  [/\n√/, 'write SQRT(…) for a root'],
  [/[=!<>]\n[=<>]|\n!=/, 'comparisons are written =, <>, <, >, <= and >='],
  [/\)\n\./, 'write FIELD(…, "fs") for a part of what a function gives'],
  [/[A-Z(]\n:|\n:/i, 'write a range with both its corners, as in B4:B18'],
  [/\n[[{]/, 'write cells as B4, and several as B4:B18'],
  [/\d\n['½¼¾]/, 'write feet as 5 ft, and parts as 6.5'],
  [/\d\n[\p{L}°]/u, 'that is no unit; between two values stands a sign'],
  [/[A-Z]\n.*!/i, "put a sheet's name of several words between two '"],
  [/[A-Z]\n[\w"]/i, 'put brackets round what a function takes, and a sign between two values'],
  [/\d\n[\d"]/, 'put a sign or a comma between two values'],
];

/** How many brackets are opened and not closed; below zero where more are closed. */
export function openBrackets(text: string): number {
  const outside = outsideTexts(text);
  return (outside.match(/\(/g)?.length ?? 0) - (outside.match(/\)/g)?.length ?? 0);
}

const outsideTexts = (text: string): string => text.replaceAll(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, '');
