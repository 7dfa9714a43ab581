import type { Place } from '../engine/types.ts';
import type { Baseline, Cell, Column, OctavoDocument, Plot, Sheet, UnitSystem } from './types.ts';

/** A rectangle of cells of a sheet, `B4` or `B4:C18`; `sheet` is an id. */
export interface Area {
  readonly sheet: string;
  readonly cells: string;
}

/** What a copy took with it: cells by address, as they stood. Kept apart from the document, so that later edits of the
 *  source do not change what is pasted. */
export interface Clip extends Area {
  readonly contents: ReadonlyMap<string, Cell>;
}

/** Everything that can be done to a document, as a value. Rows and columns count from 0; ids of new things come with the
 *  command, so that doing it again gives the same document. */
export type Command =
  /** Writes texts by address; other attributes of the cells stay. An empty text clears the text. */
  | { readonly kind: 'write'; readonly sheet: string; readonly texts: ReadonlyMap<string, string> }
  /** Sets whole cells; `undefined` removes one. The sheet grows to hold them, or takes the size given. */
  | {
      readonly kind: 'put-cells';
      readonly sheet: string;
      readonly cells: ReadonlyMap<string, Cell | undefined>;
      readonly extent?: { readonly rows: number; readonly columns: readonly Column[] };
    }
  /** Sets attributes of all cells of the area; `undefined` removes an attribute, one not named stays. */
  | ({ readonly kind: 'describe'; readonly attributes: CellAttributes } & Area)
  /** Empties the texts of an area; `whole` takes the attributes too. */
  | ({ readonly kind: 'clear'; readonly whole?: true } & Area)
  /** Tab-separated text into a block whose first cell is given. */
  | { readonly kind: 'paste-text'; readonly to: Place; readonly text: string }
  /** Cells copied inside Octavo; relative references shift by the distance. `over` repeats the clip over a larger area. */
  | { readonly kind: 'paste'; readonly to: Place; readonly clip: Clip; readonly over?: string }
  /** Cut and paste: what referred to the cells follows them. */
  | { readonly kind: 'move'; readonly from: Area; readonly to: Place }
  /** The first row (or column) of the area is copied into the rest. */
  | ({ readonly kind: 'fill'; readonly direction: 'down' | 'right' } & Area)
  | {
      readonly kind: 'insert' | 'delete';
      readonly sheet: string;
      readonly axis: Axis;
      readonly at: number;
      readonly count: number;
    }
  | { readonly kind: 'column'; readonly sheet: string; readonly column: number; readonly attributes: ColumnAttributes }
  /** At the end, or before the sheet now at `at`. */
  | { readonly kind: 'add-sheet'; readonly sheet: Sheet; readonly at?: number }
  | { readonly kind: 'rename-sheet'; readonly sheet: string; readonly name: string }
  | { readonly kind: 'summarise-sheet'; readonly sheet: string; readonly summary: string }
  | { readonly kind: 'move-sheet'; readonly sheet: string; readonly to: number }
  | { readonly kind: 'delete-sheet'; readonly sheet: string }
  /** The copy stands right behind its original; its name is found ("Two drivers 2") where none is given. */
  | { readonly kind: 'duplicate-sheet'; readonly sheet: string; readonly id: string; readonly name?: string }
  | { readonly kind: 'define-name'; readonly sheet: string; readonly name: string; readonly cells: string }
  | { readonly kind: 'rename-name'; readonly sheet: string; readonly from: string; readonly to: string }
  | { readonly kind: 'delete-name'; readonly sheet: string; readonly name: string }
  /** Adds the plot, or replaces the one of the same id. */
  | { readonly kind: 'put-plot'; readonly sheet: string; readonly plot: Plot; readonly at?: number }
  | { readonly kind: 'delete-plot'; readonly sheet: string; readonly plot: string }
  | { readonly kind: 'title'; readonly title: string }
  | { readonly kind: 'system'; readonly system: UnitSystem }
  | { readonly kind: 'pin'; readonly baseline: Baseline }
  | { readonly kind: 'unpin' }
  /** Several as one; refused as a whole where one is refused. */
  | { readonly kind: 'all'; readonly commands: readonly Command[] }
  /** Puts an earlier document back: the undoing of what reaches across sheets. Unchanged parts are shared. */
  | { readonly kind: 'restore'; readonly document: OctavoDocument };

export type Axis = 'rows' | 'columns';

export type CellAttributes = { readonly [K in keyof Omit<Cell, 'text'>]?: Cell[K] | undefined };
export type ColumnAttributes = { readonly [K in keyof Column]?: Column[K] | undefined };

/** Why a command changes nothing: a whole sentence with the remedy. */
export interface Refusal {
  readonly refused: string;
}

/** The document after a command, and the command that takes it back. */
export interface Applied {
  readonly document: OctavoDocument;
  readonly undo: Command;
}

export const isRefusal = (outcome: object): outcome is Refusal => 'refused' in outcome;
