import type { EngineAddress } from './spots.ts';

/** A formula as the engine calculates it: its own tree, as far as our formulas need it. */
export type FormulaTree =
  | { readonly type: 'EMPTY' }
  | { readonly type: 'NUMBER'; readonly value: number }
  | { readonly type: 'STRING'; readonly value: string }
  | { readonly type: 'ERROR'; readonly error: unknown }
  | { readonly type: 'CELL_REFERENCE'; readonly reference: FixedAddress }
  | { readonly type: 'CELL_RANGE'; readonly start: FixedAddress; readonly end: FixedAddress }
  | { readonly type: 'PARENTHESES'; readonly expression: FormulaTree }
  | { readonly type: 'FUNCTION_CALL'; readonly procedureName: string; readonly args: readonly FormulaTree[] }
  | { readonly type: 'MINUS_UNARY_OP' | 'PLUS_UNARY_OP' | 'PERCENT_OP'; readonly value: FormulaTree }
  | { readonly type: Operation; readonly left: FormulaTree; readonly right: FormulaTree };

export type Operation =
  | 'EQUALS_OP'
  | 'NOT_EQUAL_OP'
  | 'LESS_THAN_OP'
  | 'GREATER_THAN_OP'
  | 'LESS_THAN_OR_EQUAL_OP'
  | 'GREATER_THAN_OR_EQUAL_OP'
  | 'CONCATENATE_OP'
  | 'PLUS_OP'
  | 'MINUS_OP'
  | 'TIMES_OP'
  | 'DIV_OP'
  | 'POWER_OP';

/** A cell that a formula refers to. Nothing is ever moved inside the engine, so it is the same from wherever it is asked. */
export class FixedAddress implements EngineAddress {
  readonly sheet: number;
  readonly col: number;
  readonly row: number;

  constructor(sheet: number, col: number, row: number) {
    this.sheet = sheet;
    this.col = col;
    this.row = row;
  }

  toSimpleCellAddress(): EngineAddress {
    return { sheet: this.sheet, col: this.col, row: this.row };
  }

  isInvalid(): boolean {
    return false;
  }
}
