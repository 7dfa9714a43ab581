import type { FunctionDescription, FunctionWords } from '../../functions/define.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import type { CellType, Finding } from '../formula/types.ts';

/** What the engine is given of a sheet: what was typed, and what is called what. */
export interface SheetContent {
  /** Stable; never shown. */
  readonly id: string;
  readonly name: string;
  /** Typed text by address, `B4` -> `38 Hz`. */
  readonly cells: ReadonlyMap<string, string>;
  /** Names of this sheet, as written -> `D12` or `A4:B9`. Other sheets write `Sheet!Name`. */
  readonly names: ReadonlyMap<string, string>;
}

/** Where a cell is: sheet id and address. */
export interface Place {
  readonly sheet: string;
  readonly cell: string;
}

/** A cell's result. Numbers are SI. */
export type CellValue =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'record'; readonly record: CellRecord }
  | {
      readonly kind: 'problem';
      /** A whole sentence: the argument, the limit, the value, the remedy. */
      readonly message: string;
      /** The cell in which it arose, where that is another one. */
      readonly origin?: Place;
    };

/** Everything that the engine knows of a cell. */
export interface CellState extends Place {
  readonly value: CellValue;
  readonly type: CellType;
  /** The unit symbol that was typed with the number or that the formula suggests; absent for plain numbers. */
  readonly unit?: string;
  readonly findings: readonly Finding[];
}

/** The cells whose state changed, and how long the parts took (milliseconds, for the benchmarks and the status line). */
export interface Changes {
  readonly cells: readonly CellState[];
  readonly timing: { readonly compile: number; readonly evaluate: number };
}

export interface Writing extends Place {
  readonly text: string;
}

/** A calculation engine behind a seam of our own; a worker can stand behind it. */
export interface SheetEngine {
  /** Makes the engine hold exactly these sheets, in this order, by the smallest set of changes it can find. */
  load(sheets: readonly SheetContent[]): Promise<Changes>;
  /** Writes texts into cells; the fast path for typing and dragging. An empty text clears. */
  write(writings: readonly Writing[]): Promise<Changes>;
  /** The verdicts that another text in a cell would change. Afterwards the engine holds what it held. */
  probe(writing: Writing): Promise<readonly CellState[]>;
  /** The state of a formula that stands nowhere, computed as if typed into the sheet. */
  evaluate(sheet: string, text: string): Promise<CellState>;
  /** Every function of the catalogue that formulas can call, as it is declared. */
  functions(): Promise<readonly FunctionDescription[]>;
  /** What is said of them to people, by their names; answered as soon as it is to be had. */
  words(): Promise<ReadonlyMap<string, FunctionWords>>;
  /** The cells that follow directly from a cell. */
  dependents(place: Place): Promise<readonly Place[]>;
  dispose(): void;
}
