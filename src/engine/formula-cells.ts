import { TreeAddress, type FormulaTree } from './formula-tree.ts';
import type { EngineAddress } from './spots.ts';

/** A cell or a range as `compile` writes it: `B4`, `$B$4`, `'id'!B4:C18`. */
const written = String.raw`(?:'([^']*)'!)?(\$?)([A-Z]+)(\$?)(\d+)(?::(\$?)([A-Z]+)(\$?)(\d+))?`;
const here = new RegExp(written, 'y');
/** A text in quotes, where no cell is meant, or cells. The name of a function may look like one: `LOG10(`. */
const anywhere = new RegExp(String.raw`"(?:[^"]|"")*"|(?<![\w.$])${written}(?![\w.(])`, 'g');

/** Gives the engine's number of the sheet of that id. */
export type SheetNumber = (id: string) => number;

/** Cells as they lie in their sheet, from its corner or from the cell of the formula. */
interface Cells {
  readonly sheet: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** 1 where columns count from the formula's own. */
  readonly byCol: 0 | 1;
  readonly byRow: 0 | 1;
  readonly isRange: boolean;
}

/** The cells that are written from a place of a text on, and where they end; nothing where there are none. */
export function cellsFrom(
  text: string,
  from: number,
  at: EngineAddress,
  sheetNumber: SheetNumber,
): readonly [cells: FormulaTree, end: number] | undefined {
  here.lastIndex = from;
  const found = here.exec(text);
  return found ? [treeOf(cellsOf(found, at, sheetNumber)), here.lastIndex] : undefined;
}

/** What formulas have in common that say the same of where they stand. */
export function shapeOf(text: string, at: EngineAddress, sheetNumber: SheetNumber): string {
  const cells = (...found: readonly string[]): string =>
    found[3] === undefined ? (found[0] ?? '') : JSON.stringify(Object.values(cellsOf(found, at, sheetNumber)));
  return String(at.sheet) + text.replaceAll(anywhere, cells);
}

/** A range with a sign at one of its corners alone counts as one with signs at both. */
function cellsOf(
  [, id, dollar, letters = '', sign, digits, lastDollar, lastLetters, lastSign, lastDigits]: readonly (
    string | undefined
  )[],
  at: EngineAddress,
  sheetNumber: SheetNumber,
): Cells {
  const byCol = dollar === '' && !lastDollar ? 1 : 0;
  const byRow = sign === '' && !lastSign ? 1 : 0;
  const col = columnOf(letters) - byCol * at.col;
  const row = Number(digits) - 1 - byRow * at.row;
  const isRange = lastLetters !== undefined;
  const lastCol = isRange ? columnOf(lastLetters) - byCol * at.col : col;
  const lastRow = isRange ? Number(lastDigits) - 1 - byRow * at.row : row;
  return {
    sheet: id === undefined ? at.sheet : sheetNumber(id),
    left: Math.min(col, lastCol),
    top: Math.min(row, lastRow),
    right: Math.max(col, lastCol),
    bottom: Math.max(row, lastRow),
    byCol,
    byRow,
    isRange,
  };
}

function treeOf({ sheet, left, top, right, bottom, byCol, byRow, isRange }: Cells): FormulaTree {
  const start = new TreeAddress(sheet, left, top, byCol, byRow);
  return isRange
    ? { type: 'CELL_RANGE', start, end: new TreeAddress(sheet, right, bottom, byCol, byRow) }
    : { type: 'CELL_REFERENCE', reference: start };
}

const columnOf = (letters: string): number => {
  let column = 0;
  for (let at = 0; at < letters.length; at++) column = column * 26 + letters.charCodeAt(at) - 64;
  return column - 1;
};
