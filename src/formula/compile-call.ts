import { childNamed, type FormulaNode } from './tree.ts';
import { type Compilation, type Part, type Slot } from './part.ts';
import { compileField } from './compile-reference.ts';
import { compileEngineCall } from './engine-call.ts';
import { engineFunctions } from './engine-functions.ts';
import { nearest } from './nearest.ts';
import { compileOwnCall } from './own-call.ts';
import { numberIn, UNKNOWN } from './type-of.ts';
import { parseQuantity } from '../units/parse.ts';
import { engineNumber } from './numbers.ts';

/** Compiles a call: of an own function by its declaration, of an engine's function by a rule. */
export function compileCall(node: FormulaNode, compilation: Compilation): Part {
  const written = compilation.slice(node.children[0] ?? node);
  const name = written.toUpperCase();
  const slots = slotsOf(childNamed(node, 'Arguments'));
  const own = compilation.scope.functions.get(name);
  if (own) return compileOwnCall(node, own, slots, compilation);
  if (name === 'FIELD') return field(node, slots, compilation);
  if (name === 'QTY') return quantity(node, slots, compilation);
  if (engineFunctions.has(name)) return compileEngineCall(node, name, slots, compilation);
  const close = nearest(name, [...compilation.scope.functions.keys(), ...engineFunctions]);
  const cells = compilation.scope.cellsNamed(compilation.scope.sheet, written);
  const advice =
    cells !== undefined
      ? `${written} is ${cells}; a part of it is written with a point, as in Woofer.fs.`
      : close === undefined
        ? 'the function guide lists all of them.'
        : `did you mean ${close}?`;
  compilation.report('error', node.children[0] ?? node, `There is no function ${written}: ${advice}`, close);
  return { text: '#NAME?', type: UNKNOWN, node };
}

/** The arguments between the separators; `undefined` where one is left out. */
export function slotsOf(list: FormulaNode | undefined): Slot[] {
  if (!list) return [];
  const slots: Slot[] = [];
  let last: Slot;
  for (const child of list.children) {
    if (child.name === 'Argument') last = child.children[0];
    else if (child.name === 'Separator') {
      slots.push(last);
      last = undefined;
    }
  }
  if (last !== undefined || slots.length > 0) slots.push(last);
  return slots;
}

function field(node: FormulaNode, [record, name]: readonly Slot[], compilation: Compilation): Part {
  if (!record || name?.name !== 'Text') {
    compilation.report(
      'error',
      node,
      'FIELD wants a record and the name of a part in quotes, such as FIELD(Woofer, "fs").',
    );
    return { text: '#VALUE!', type: UNKNOWN, node };
  }
  return compileField(node, compilation.part(record), compilation.slice(name).slice(1, -1), compilation);
}

function quantity(node: FormulaNode, [text]: readonly Slot[], compilation: Compilation): Part {
  const read = text?.name === 'Text' ? parseQuantity(compilation.slice(text).slice(1, -1)) : undefined;
  if (!read) {
    compilation.report('error', node, 'QTY wants one quantity in quotes, such as QTY("12 L").');
    return { text: '#VALUE!', type: UNKNOWN, node };
  }
  return { text: engineNumber(read.value), type: numberIn(read.unit, read.quantity), constant: read.value, node };
}
