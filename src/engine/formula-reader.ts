import { cellsFrom, type SheetNumber } from './formula-cells.ts';
import type { FormulaTree, Operation } from './formula-tree.ts';
import type { EngineAddress } from './spots.ts';

/** How strongly the signs between two values bind, and what they are for the engine. */
const operators: Readonly<Record<string, { readonly strength: number; readonly type: Operation } | undefined>> = {
  '=': { strength: 1, type: 'EQUALS_OP' },
  '<>': { strength: 1, type: 'NOT_EQUAL_OP' },
  '<=': { strength: 1, type: 'LESS_THAN_OR_EQUAL_OP' },
  '>=': { strength: 1, type: 'GREATER_THAN_OR_EQUAL_OP' },
  '<': { strength: 1, type: 'LESS_THAN_OP' },
  '>': { strength: 1, type: 'GREATER_THAN_OP' },
  '&': { strength: 2, type: 'CONCATENATE_OP' },
  '+': { strength: 3, type: 'PLUS_OP' },
  '-': { strength: 3, type: 'MINUS_OP' },
  '*': { strength: 4, type: 'TIMES_OP' },
  '/': { strength: 4, type: 'DIV_OP' },
  '^': { strength: 5, type: 'POWER_OP' },
};
const WEAKEST = 1;

const number = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const quoted = /"((?:[^"]|"")*)"/y;
const called = /([A-Za-z][\w.]*)\(/y;

/** Reads what `compile` gives, which holds no blanks and only plain addresses; whatever else is a mistake of ours, and throws. */
export class FormulaReader {
  readonly #sheetNumber: SheetNumber;
  #text = '';
  #at = 0;
  /** Where the formula stands. */
  #place: EngineAddress = { sheet: 0, col: 0, row: 0 };

  constructor(sheetNumber: SheetNumber) {
    this.#sheetNumber = sheetNumber;
  }

  read(text: string, place: EngineAddress): FormulaTree {
    this.#text = text;
    this.#at = 1;
    this.#place = place;
    const tree = this.#expression(WEAKEST);
    if (this.#at < text.length) this.#fail();
    return tree;
  }

  /** Everything from here on that binds so strongly; of equal signs the first binds first. */
  #expression(weakest: number): FormulaTree {
    let left = this.#operand();
    for (;;) {
      const sign = this.#text.charAt(this.#at);
      const both = sign + this.#text.charAt(this.#at + 1);
      const long = operators[both];
      const operator = long ?? operators[sign];
      if (!operator || operator.strength < weakest) return left;
      this.#at += long ? 2 : 1;
      left = { type: operator.type, left, right: this.#expression(operator.strength + 1) };
    }
  }

  #operand(): FormulaTree {
    if (this.#skip('-')) return { type: 'MINUS_UNARY_OP', value: this.#operand() };
    if (this.#skip('+')) return { type: 'PLUS_UNARY_OP', value: this.#operand() };
    let value = this.#value();
    while (this.#skip('%')) value = { type: 'PERCENT_OP', value };
    return value;
  }

  #value(): FormulaTree {
    if (this.#skip('(')) {
      const expression = this.#expression(WEAKEST);
      if (!this.#skip(')')) this.#fail();
      return { type: 'PARENTHESES', expression };
    }
    const call = this.#match(called);
    if (call) return { type: 'FUNCTION_CALL', procedureName: (call[1] ?? '').toUpperCase(), args: this.#arguments() };
    const cells = cellsFrom(this.#text, this.#at, this.#place, this.#sheetNumber);
    if (cells) {
      [, this.#at] = cells;
      return cells[0];
    }
    const digits = this.#match(number);
    if (digits) return { type: 'NUMBER', value: Number(digits[0]) };
    const text = this.#match(quoted);
    if (text) return { type: 'STRING', value: (text[1] ?? '').replaceAll('""', '"') };
    return this.#fail();
  }

  #arguments(): FormulaTree[] {
    if (this.#skip(')')) return [];
    const given: FormulaTree[] = [];
    do {
      const next = this.#text.charAt(this.#at);
      given.push(next === ',' || next === ')' ? { type: 'EMPTY' } : this.#expression(WEAKEST));
    } while (this.#skip(','));
    if (!this.#skip(')')) this.#fail();
    return given;
  }

  #skip(sign: string): boolean {
    if (this.#text.charAt(this.#at) !== sign) return false;
    this.#at++;
    return true;
  }

  #match(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text);
    if (found) this.#at = pattern.lastIndex;
    return found;
  }

  #fail(): never {
    throw new Error(`A formula is compiled wrongly, from character ${String(this.#at + 1)} on: ${this.#text}`);
  }
}
