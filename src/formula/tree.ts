import { remembering } from '../../functions/remembering.ts';
import { parser } from './parser.ts';

/** A piece of a formula as the grammar parts it. */
export interface FormulaNode {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** What stands directly in it, punctuation included. */
  readonly children: readonly FormulaNode[];
}

/** A formula in pieces, and what is counted on the way. */
export interface FormulaTree {
  /** What stands behind the `=`; nothing where that is nothing. */
  readonly body: FormulaNode | undefined;
  /** The whole, from the `=` on. */
  readonly whole: FormulaNode;
  /** The first piece that the grammar has no place for, or that it lacks. */
  readonly unread: FormulaNode | undefined;
  /** Most brackets, calls and signs of values inside one another. */
  readonly depth: number;
  /** All signs between values and behind them. */
  readonly signs: number;
}

interface Growing extends FormulaNode {
  readonly children: Growing[];
}

const isNested = (name: string): boolean => name === 'Call' || name === 'Paren' || name === 'Signed';

/** So many formulas stay parted: a formula is compiled anew whenever something around it means something else. */
const KEPT = 3000;

/** Parts a formula. */
export const treeOf = remembering(parted, KEPT);

/** One walk over the parser's own nodes, which are dear to go through. */
function parted(text: string): FormulaTree {
  const whole: Growing = { name: 'Formula', from: 0, to: text.length, children: [] };
  const open = [whole];
  let unread: FormulaNode | undefined;
  let nested = 0;
  let depth = 0;
  let signs = 0;
  parser.parse(text).iterate({
    enter: ({ type, from, to }) => {
      const { name } = type;
      if (type.isTop) return;
      const node: Growing = { name, from, to, children: [] };
      open.at(-1)?.children.push(node);
      open.push(node);
      if (isNested(name)) depth = Math.max(depth, ++nested);
      else if (name === 'Binary' || name === 'Percent') signs++;
      else if (type.isError) unread ??= node;
    },
    leave: ({ name }) => {
      open.pop();
      if (isNested(name)) nested--;
    },
  });
  return { body: whole.children[0], whole, unread, depth, signs };
}

/** The first piece of that name directly in another. */
export const childNamed = ({ children }: FormulaNode, name: string): FormulaNode | undefined =>
  children.find((child) => child.name === name);

/** All pieces, in the order in which they begin. */
export function* piecesOf({ whole }: FormulaTree): Generator<FormulaNode> {
  const waiting = [whole];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    yield node;
    waiting.push(...node.children.toReversed());
  }
}
