import type { EngineAddress } from './spots.ts';

/** A formula as the engine calculates it: its own tree, as far as our formulas need it. */
export type FormulaTree =
  | { readonly type: 'EMPTY' }
  | { readonly type: 'NUMBER'; readonly value: number }
  | { readonly type: 'STRING'; readonly value: string }
  | { readonly type: 'CELL_REFERENCE'; readonly reference: TreeAddress }
  | { readonly type: 'CELL_RANGE'; readonly start: TreeAddress; readonly end: TreeAddress }
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

/** A cell that a formula refers to. Its column and its row count from the formula's own, or from the corner of the sheet: so
 *  formulas that say the same of where they stand share one tree. */
export class TreeAddress implements EngineAddress {
  readonly sheet: number;
  readonly col: number;
  readonly row: number;
  /** 1 where the column counts from the formula's own, 0 where it counts from the corner. */
  readonly byCol: 0 | 1;
  readonly byRow: 0 | 1;

  constructor(sheet: number, col: number, row: number, byCol: 0 | 1, byRow: 0 | 1) {
    this.sheet = sheet;
    this.col = col;
    this.row = row;
    this.byCol = byCol;
    this.byRow = byRow;
  }

  toSimpleCellAddress({ col, row }: EngineAddress): EngineAddress {
    return { sheet: this.sheet, col: this.col + this.byCol * col, row: this.row + this.byRow * row };
  }

  isInvalid(): boolean {
    return false;
  }
}
