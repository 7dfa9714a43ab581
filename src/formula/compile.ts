import { treeOf, type FormulaNode } from './tree.ts';
import { compileCall } from './compile-call.ts';
import { binary, percent, signed } from './operators.ts';
import { compileReference } from './compile-reference.ts';
import { brokenIn } from './broken.ts';
import { canonicalNumber, engineNumber } from './numbers.ts';
import { numberIn, RATIO, TEXT, TRUTH, UNKNOWN } from './type-of.ts';
import type { Compiled, Finding, Reference, Scope } from './types.ts';
import { type Compilation, type Part } from './part.ts';
import { unitNamed } from '../units/table.ts';
import { parseQuantity } from '../units/parse.ts';

/**
 * Makes a formula ready for the engine and finds out what it will give: names become addresses, quantities SI numbers.
 * Never throws; whatever is wrong is among the findings, placed in the text as typed.
 */
export function compile(text: string, scope: Scope): Compiled {
  const findings: Finding[] = [];
  const references: Reference[] = [];
  const compilation: Compilation = {
    source: text,
    scope,
    references,
    part: (node) => compilePartOf(node, compilation),
    slice: (node) => text.slice(node.from, node.to),
    report: (level, node, message, fix) => {
      findings.push({ level, message, ...(fix !== undefined && { fix }), from: node.from, to: node.to });
    },
  };
  const tree = treeOf(text);
  const broken = brokenIn(text, tree);
  if (broken) {
    compilation.report('error', broken.node, broken.message);
    return { text, type: UNKNOWN, references, findings };
  }
  const { body } = tree;
  const part = body ? compilation.part(body) : undefined;
  if (body && /^[^"(]*:[^"(]*$/.test(part?.text ?? '')) {
    const message = `A cell holds one value, but ${compilation.slice(body)} is several cells: take SUM of them, or refer to one.`;
    compilation.report('error', body, message);
  }
  return { text: `=${part?.text ?? ''}`, type: part?.type ?? UNKNOWN, references, findings };
}

function compilePartOf(node: FormulaNode, compilation: Compilation): Part {
  switch (node.name) {
    case 'Number': {
      const text = compilation.slice(node);
      return { text: canonicalNumber(text), type: RATIO, constant: Number(text), node };
    }
    case 'Quantity':
      return quantity(node, compilation);
    case 'Text':
      return { text: compilation.slice(node), type: TEXT, node };
    case 'Truth':
      return { text: `${compilation.slice(node).toUpperCase()}()`, type: TRUTH, node };
    case 'ErrorValue': {
      const text = compilation.slice(node);
      compilation.report(
        'error',
        node,
        text === '#REF!'
          ? `${text} stands where a cell was deleted: put another reference in its place.`
          : `${text} is no value: put a number or a reference in its place.`,
      );
      return { text, type: UNKNOWN, node };
    }
    case 'Cell':
    case 'Range':
    case 'Name':
      return compileReference(node, compilation);
    case 'Call':
      return compileCall(node, compilation);
    case 'Paren': {
      const inner = compilation.part(node.children[1] ?? node);
      return { ...inner, text: `(${inner.text})`, node };
    }
    case 'Signed':
      return signed(node, compilation);
    case 'Percent':
      return percent(node, compilation);
    case 'Binary':
      return binary(node, compilation);
    default:
      return { text: compilation.slice(node), type: UNKNOWN, node };
  }
}

function quantity(node: FormulaNode, compilation: Compilation): Part {
  const text = compilation.slice(node);
  const written = node.children.at(-1);
  const unit = written && unitNamed(compilation.slice(written));
  const read = parseQuantity(text);
  if (!unit || !read) {
    compilation.report('error', node, `“${text}” is no quantity that can be calculated with: check the number.`);
    return { text, type: UNKNOWN, node };
  }
  if (text.includes('^')) squared(node, text, unit.symbol, compilation);
  return { text: engineNumber(read.value), type: numberIn(read.unit, read.quantity), constant: read.value, node };
}

/** `5 cm^2` could be a square of 5 cm as well; an area is what one means by it. */
function squared(node: FormulaNode, text: string, symbol: string, { report }: Compilation): void {
  const number = /^[\d.eE+-]*[\d.]/.exec(text)?.[0] ?? '';
  const fix = `${number} ${symbol}`;
  report('doubt', node, `${text} is read as ${fix}: write it so, or put brackets round what is raised.`, fix);
}
