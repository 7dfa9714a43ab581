import type { FunctionDescription, FunctionWords } from '../../functions/define.ts';
import type { Currency, Dimension, QuantityName } from '../../functions/quantities.ts';
import type { RecordKind } from '../../functions/values/record.ts';

/** What a cell or a formula holds, known without computing it. */
export type CellType =
  | { readonly kind: 'number'; readonly dimension: Dimension; readonly quantity: QuantityName | undefined }
  | {
      readonly kind: 'record';
      readonly record: RecordKind;
      readonly quantity?: QuantityName;
      /** The sign of its price. */
      readonly money?: Currency | undefined;
    }
  | { readonly kind: 'text' }
  | { readonly kind: 'truth' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unknown' };

/** A cell or a rectangle of cells, as `B4` or `B4:C18`; `sheet` is an id. */
export interface Reference {
  readonly sheet: string;
  readonly cells: string;
}

/** Something wrong or doubtful in a formula or a text, placed in what was typed. */
export interface Finding {
  /** `error` keeps the cell from a result; `doubt` only asks. */
  readonly level: 'error' | 'doubt';
  readonly message: string;
  /** What would put it right, as text to type where that is known. */
  readonly fix?: string;
  /** Character positions in the typed text. */
  readonly from: number;
  readonly to: number;
}

/** The functions of the catalogue by their names, as far as a formula must know them. */
export type Functions = ReadonlyMap<string, FunctionDescription>;

export const functionsByName = (
  functions: Iterable<FunctionDescription>,
  words?: ReadonlyMap<string, FunctionWords>,
): Functions =>
  new Map(
    [...functions].map((each) => {
      const said = words?.get(each.name);
      return [each.name, said ? { ...each, words: said } : each];
    }),
  );

/** How a formula looks up what lies around it. */
export interface Scope {
  readonly functions: Functions;
  /** The sheet in which the formula stands (its id). */
  readonly sheet: string;
  /** The id of the sheet of that name, without regard to case. */
  sheetNamed(name: string): string | undefined;
  /** What a name stands for on a sheet: `D12` or `A4:B9`; without regard to case. */
  cellsNamed(sheet: string, name: string): string | undefined;
  /** All names of a sheet, for suggestions. */
  namesOf(sheet: string): readonly string[];
  typeOf(sheet: string, cell: string): CellType;
  /** What is typed in a cell. */
  textOf(sheet: string, cell: string): string;
}

/** A formula made ready for the engine. */
export interface Compiled {
  /** Canonical engine text with the leading `=`: names resolved to addresses, sheets to quoted ids, unit literals to SI numbers. */
  readonly text: string;
  readonly type: CellType;
  readonly references: readonly Reference[];
  readonly findings: readonly Finding[];
}
