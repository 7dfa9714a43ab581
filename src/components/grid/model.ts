import type { Cell, Column } from '../../document/types.ts';
import type { ShownCell } from '../../document/shown.ts';
import type { Counts } from '../../document/verdicts.ts';

/** A cell by numbers counted from 0. */
export interface CellAt {
  readonly row: number;
  readonly column: number;
}

/** A rectangle between two corners; `focus` is the active cell. */
export interface Selection {
  readonly anchor: CellAt;
  readonly focus: CellAt;
}

/** What the grid shows. Asked anew for every visible cell when it draws. */
export interface GridModel {
  readonly rows: number;
  readonly columns: readonly Column[];
  cell(row: number, column: number): Cell | undefined;
  shown(row: number, column: number): ShownCell;
  /** What the cell showed before, where the last edit or the distance to the baseline changed it. */
  before?(row: number, column: number): string | undefined;
  finding?(row: number, column: number): 'error' | 'doubt' | undefined;
  /** Verdicts below the heading of a section. */
  tally?(row: number): Counts;
}

/** An outlined rectangle, as a formula being edited refers to it. */
export interface Outline {
  readonly cells: string;
  readonly colour: string;
}
