import type { AnyFunction } from '../../../functions/define.ts';
import { Refused } from '../../engine/arguments.ts';
import { formatAddress } from '../../formula/address.ts';
import { readRectangle, sizeOf } from '../../formula/area.ts';
import { slotsOf } from '../../formula/compile-call.ts';
import { sheetName } from '../../formula/compile-reference.ts';
import { childNamed, treeOf, type FormulaNode } from '../../formula/tree.ts';
import type { Held } from './datum.ts';
import { numberIn, operation } from './operators.ts';
import { fieldCall, ownCall } from './own-calls.ts';
import { plainCalls, type Run } from './plain-calls.ts';

/** Where a compiled formula finds the cells that it refers to. */
export interface Cells {
  /** Reads a cell at the time of the run; nothing where the cell cannot be followed. */
  reader(sheet: string, cell: string): (() => Held) | undefined;
  readonly functions: ReadonlyMap<string, AnyFunction>;
}

/** So many cells of a range are read one by one. */
const MOST_CELLS = 5000;

/** Compiles a formula into a closure, from the canonical text that the engine is told: addresses, SI numbers, sheets by
 *  quoted ids. Nothing where a part of it is left to the engine. */
export function compileFormula(text: string, sheet: string, cells: Cells): Run | undefined {
  const { body } = treeOf(text);
  return body ? new FormulaCompiler(text, sheet, cells).part(body) : undefined;
}

class FormulaCompiler {
  readonly #text: string;
  readonly #sheet: string;
  readonly #cells: Cells;

  constructor(text: string, sheet: string, cells: Cells) {
    this.#text = text;
    this.#sheet = sheet;
    this.#cells = cells;
  }

  part(node: FormulaNode): Run | undefined {
    const text = this.#slice(node);
    switch (node.name) {
      case 'Number':
        return constant(Number(text));
      case 'Text':
        return constant(text.slice(1, -1).replaceAll('""', '"'));
      case 'Paren':
        return this.#child(node, 1);
      case 'Cell':
        return this.#cell(node);
      case 'Range':
        return this.#range(node);
      case 'Call':
        return this.#call(node);
      case 'Signed':
        return this.#signed(node);
      case 'Percent':
        return this.#percent(node);
      case 'Binary':
        return this.#binary(node);
      default:
        return undefined;
    }
  }

  #slice(node: FormulaNode): string {
    return this.#text.slice(node.from, node.to);
  }

  #child(node: FormulaNode, index: number): Run | undefined {
    const child = node.children[index];
    return child && this.part(child);
  }

  #sheetOf(node: FormulaNode): string {
    const written = childNamed(node, 'Sheet');
    return written ? sheetName(this.#slice(written)) : this.#sheet;
  }

  #addresses(node: FormulaNode): string[] {
    return node.children
      .filter(({ name }) => name === 'Address')
      .map((child) => this.#slice(child).replaceAll('$', ''));
  }

  #cell(node: FormulaNode): Run | undefined {
    const [address = ''] = this.#addresses(node);
    return this.#cells.reader(this.#sheetOf(node), address);
  }

  #range(node: FormulaNode): Run | undefined {
    const sheet = this.#sheetOf(node);
    const area = readRectangle(this.#addresses(node).join(':'));
    if (!area || sizeOf(area) > MOST_CELLS) return undefined;
    const { top, left, bottom, right } = area;
    const rows: (() => Held)[][] = [];
    for (let row = top; row <= bottom; row++) {
      const readers: (() => Held)[] = [];
      for (let column = left; column <= right; column++) {
        const reader = this.#cells.reader(sheet, formatAddress({ row, column }));
        if (!reader) return undefined;
        readers.push(reader);
      }
      rows.push(readers);
    }
    return () => {
      const table = rows.map((row) => row.map((read) => read()));
      const refused = table.flat().find((each) => each instanceof Refused);
      return refused ?? (table as Exclude<Held, Refused>[][]);
    };
  }

  #call(node: FormulaNode): Run | undefined {
    const [name] = node.children;
    const called = name ? this.#slice(name).toUpperCase() : '';
    const slots = slotsOf(childNamed(node, 'Arguments'));
    const parts = slots.map((slot) => slot && this.part(slot));
    if (slots.some((slot, index) => slot && !parts[index])) return undefined;
    const own = this.#cells.functions.get(called);
    if (own) return ownCall(own, parts);
    if (called === 'FIELD') return fieldCall(parts);
    const given = parts.filter((part) => part !== undefined);
    return given.length === slots.length && Object.hasOwn(plainCalls, called) ? plainCalls[called]?.(given) : undefined;
  }

  #signed(node: FormulaNode): Run | undefined {
    const [sign] = node.children;
    const operand = this.#child(node, 1);
    if (!operand || !sign) return undefined;
    if (this.#slice(sign) === '+') return operand;
    return () => {
      const value = numberIn(operand());
      return value instanceof Refused ? value : -value;
    };
  }

  #percent(node: FormulaNode): Run | undefined {
    const operand = this.#child(node, 0);
    return (
      operand &&
      (() => {
        const value = numberIn(operand());
        return value instanceof Refused ? value : value / 100;
      })
    );
  }

  #binary(node: FormulaNode): Run | undefined {
    const [leftNode, operatorNode, rightNode] = node.children;
    const left = leftNode && this.part(leftNode);
    const right = rightNode && this.part(rightNode);
    const work = operatorNode && operation(this.#slice(operatorNode));
    return left && right && work && (() => work(left(), right()));
  }
}

const constant =
  (value: number | string): Run =>
  () =>
    value;
