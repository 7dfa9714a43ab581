import type { SyntaxNode } from '@lezer/common';
import { catalogue } from '../../functions/index.ts';
import type { AnyFunction } from '../../functions/define.ts';
import { parser } from './parser.ts';
import { compileCall } from './compile-call.ts';
import { binary, percent, signed } from './operators.ts';
import { compileReference } from './compile-reference.ts';
import { canonicalNumber, engineNumber } from './numbers.ts';
import { numberOf, RATIO, TEXT, TRUTH, UNKNOWN } from './type-of.ts';
import type { Compiled, Finding, Reference, Scope } from './types.ts';
import { childrenOf, type Compilation, type Part } from './part.ts';
import { unitNamed } from '../units/table.ts';
import { parseQuantity } from '../units/parse.ts';

const byName = (definitions: readonly AnyFunction[]): ReadonlyMap<string, AnyFunction> =>
  new Map(definitions.map((definition) => [definition.name, definition]));

const ownFunctions = byName(catalogue);

/**
 * Makes a formula ready for the engine and finds out what it will give: names become addresses, quantities SI numbers.
 * Never throws; whatever is wrong is among the findings, placed in the text as typed.
 */
export function compile(text: string, scope: Scope, definitions?: readonly AnyFunction[]): Compiled {
  const findings: Finding[] = [];
  const references: Reference[] = [];
  const compilation: Compilation = {
    source: text,
    scope,
    functions: definitions ? byName(definitions) : ownFunctions,
    references,
    part: (node) => compilePartOf(node, compilation),
    slice: (node) => text.slice(node.from, node.to),
    report: (level, node, message, fix) => {
      findings.push({ level, message, ...(fix !== undefined && { fix }), from: node.from, to: node.to });
    },
  };
  const tree = parser.parse(text);
  const broken = firstError(tree.topNode);
  if (broken) {
    compilation.report('error', broken, brokenMessage(text, broken));
    return { text, type: UNKNOWN, references, findings };
  }
  const body = tree.topNode.firstChild;
  const part = body ? compilation.part(body) : undefined;
  return { text: `=${part?.text ?? ''}`, type: part?.type ?? UNKNOWN, references, findings };
}

function compilePartOf(node: SyntaxNode, compilation: Compilation): Part {
  const text = compilation.slice(node);
  switch (node.name) {
    case 'Number':
      return { text: canonicalNumber(text), type: RATIO, constant: Number(text), node };
    case 'Quantity':
      return quantity(node, compilation);
    case 'Text':
      return { text, type: TEXT, node };
    case 'Truth':
      return { text: `${text.toUpperCase()}()`, type: TRUTH, node };
    case 'ErrorValue':
      compilation.report('error', node, `${text} stands where a cell was deleted: put another reference in its place.`);
      return { text, type: UNKNOWN, node };
    case 'Cell':
    case 'Range':
    case 'Name':
      return compileReference(node, compilation);
    case 'Call':
      return compileCall(node, compilation);
    case 'Paren': {
      const inner = compilation.part(childrenOf(node)[1] ?? node);
      return { ...inner, text: `(${inner.text})`, node };
    }
    case 'Signed':
      return signed(node, compilation);
    case 'Percent':
      return percent(node, compilation);
    case 'Binary':
      return binary(node, compilation);
    default:
      return { text, type: UNKNOWN, node };
  }
}

function quantity(node: SyntaxNode, compilation: Compilation): Part {
  const text = compilation.slice(node);
  const unit = node.lastChild && unitNamed(compilation.slice(node.lastChild));
  const read = parseQuantity(text);
  if (!unit || !read) return { text, type: UNKNOWN, node };
  return { text: engineNumber(read.value), type: numberOf(unit.quantity), constant: read.value, node };
}

function firstError(node: SyntaxNode): SyntaxNode | undefined {
  const cursor = node.cursor();
  do if (cursor.type.isError) return cursor.node;
  while (cursor.next());
  return undefined;
}

function brokenMessage(text: string, at: SyntaxNode): string {
  const rest = text.slice(at.from, at.to) || text.slice(at.from).trim().slice(0, 12);
  const open = (text.match(/\(/g)?.length ?? 0) - (text.match(/\)/g)?.length ?? 0);
  if (open > 0)
    return `A closing bracket is missing: ${String(open)} more ${open === 1 ? 'is' : 'are'} opened than closed.`;
  if (rest === '') return 'The formula ends where a value should follow: complete it, or take away the last sign.';
  return `The formula cannot be read from “${rest}” on, character ${String(at.from + 1)}: check the sign or word before it.`;
}
