import { FixedAddress, type FormulaTree, type Operation } from './formula-tree.ts';

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
const cells = /(?:'([^']*)'!)?([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?/y;

/** What a reader must know of the engine in which its formulas are calculated. */
interface Surroundings {
  readonly rows: number;
  readonly columns: number;
  /** The error that a cell beyond the last is. */
  readonly beyond: unknown;
  /** The engine's number of the sheet of that id. */
  sheetNumber(id: string): number;
}

/** Reads what `compile` gives, which holds no blanks and only plain addresses; whatever else is a mistake of ours, and throws. */
export class FormulaReader {
  readonly #surroundings: Surroundings;
  #text = '';
  #at = 0;
  /** The sheet in which the formula stands. */
  #sheet = 0;

  constructor(surroundings: Surroundings) {
    this.#surroundings = surroundings;
  }

  read(text: string, sheet: number): FormulaTree {
    this.#text = text;
    this.#at = 1;
    this.#sheet = sheet;
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
    const reference = this.#match(cells);
    if (reference) return this.#cells(reference);
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

  #cells([, id, letters = '', digits, lastLetters, lastDigits]: RegExpExecArray): FormulaTree {
    const { rows, columns, beyond, sheetNumber } = this.#surroundings;
    const sheet = id === undefined ? this.#sheet : sheetNumber(id);
    const col = columnOf(letters);
    const row = Number(digits) - 1;
    const lastCol = lastLetters === undefined ? col : columnOf(lastLetters);
    const lastRow = lastDigits === undefined ? row : Number(lastDigits) - 1;
    if (Math.max(col, lastCol) >= columns || Math.max(row, lastRow) >= rows) return { type: 'ERROR', error: beyond };
    const start = new FixedAddress(sheet, Math.min(col, lastCol), Math.min(row, lastRow));
    if (lastLetters === undefined) return { type: 'CELL_REFERENCE', reference: start };
    return {
      type: 'CELL_RANGE',
      start,
      end: new FixedAddress(sheet, Math.max(col, lastCol), Math.max(row, lastRow)),
    };
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

const columnOf = (letters: string): number => {
  let column = 0;
  for (let at = 0; at < letters.length; at++) column = column * 26 + letters.charCodeAt(at) - 64;
  return column - 1;
};
