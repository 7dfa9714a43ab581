/** A document as it is kept in memory: readonly all the way down, changed only by commands. */
export interface OctavoDocument {
  readonly id: string;
  readonly title: string;
  readonly sheets: readonly Sheet[];
  /** How quantities are shown; never changes what was typed. */
  readonly system: UnitSystem;
  /** A remembered state to compare with. */
  readonly baseline?: Baseline;
}

export type UnitSystem = 'metric' | 'imperial';

export interface Sheet {
  readonly id: string;
  readonly name: string;
  /** One line under the title. */
  readonly summary: string;
  readonly rows: number;
  readonly columns: readonly Column[];
  /** By address, `B4`. Only cells that hold something. */
  readonly cells: ReadonlyMap<string, Cell>;
  /** Names of this sheet, as written -> `D12` or `A4:B9`. */
  readonly names: ReadonlyMap<string, string>;
  readonly plots: readonly Plot[];
  /** Guides a reader through the sheet: guess, reveal, why, next. */
  readonly lesson?: readonly Step[];
}

export interface Column {
  /** CSS pixels. */
  readonly width: number;
  readonly title?: string;
  /** The line style that stands for what the column describes, in heads and plots alike. */
  readonly line?: Line;
}

export type Line = 'woofer' | 'tweeter' | 'system' | 'other';

export interface Cell {
  /** What was typed. The truth. */
  readonly text: string;
  /** The unit in which a formula's result is shown; a typed quantity shows in its own unit. */
  readonly unit?: string;
  /** Plausible range of an input, as typed quantities: the ends of its ruler. */
  readonly range?: readonly [string, string];
  /** The words an input can take. */
  readonly choices?: readonly string[];
  readonly look?: 'section' | 'label' | 'note';
  /** Where the typed number comes from, as the reader said. Holds for this text: another one loses it. */
  readonly origin?: Origin;
}

export type Origin = 'measured' | 'datasheet' | 'invented' | 'assumed' | 'chosen';

/** A plot of a sheet. Every reference is an address or a name of the sheet, so that it follows inserted rows and copies. */
export interface Plot {
  readonly id: string;
  readonly title: string;
  /** `curves` draws curve records over frequency, `window` the floors and ceilings of a window record as bars, `bars` the
   *  numbers of cells (several series end to end), `points` and `lines` one column over another, `shapes` to scale what a
   *  table of sizes and places describes. */
  readonly kind: 'curves' | 'window' | 'bars' | 'points' | 'lines' | 'shapes';
  readonly series: readonly Series[];
  /** Cells with a number in the plot's quantity: a red line, the forbidden side hatched. */
  readonly limits: readonly { readonly cell: string; readonly label: string; readonly forbidden: 'above' | 'below' }[];
  /** Cells with a number of the axis along the bottom, a frequency in most plots: a vertical needle. */
  readonly marks: readonly { readonly cell: string; readonly label: string }[];
  /** Ends of the axes as typed quantities; found from the curves where absent. */
  readonly horizontal?: readonly [string, string];
  readonly vertical?: readonly [string, string];
  /** The better end of the axis along the bottom and of the other: points that no other beats in both are joined. */
  readonly best?: readonly [BetterEnd, BetterEnd];
  /** Cells with the width and the height of what shapes lie on. */
  readonly ground?: readonly [string, string];
}

export type BetterEnd = 'low' | 'high';

export interface Series {
  /** A cell; for all but curves and windows also a range of cells, or a cell that holds a table. */
  readonly cell: string;
  readonly label: string;
  readonly line: Line;
  /** Of a table: the name of the column with the values. */
  readonly column?: string;
  /** Cells with the place along the bottom, or the name of that column of a table. */
  readonly across?: string;
  /** Cells with the names, a row for each value, or the name of that column of a table. */
  readonly names?: string;
}

/** One step of a lesson. Cells are addresses or names of the sheet, so that they follow inserted rows and copies. */
export interface Step {
  /** The question. */
  readonly title: string;
  /** What one has to know to guess. */
  readonly text: string;
  /** The input that takes the guess; empty as long as none was made. */
  readonly guess: string;
  /** What is shown once it was: the answer first, then what belongs to it. */
  readonly reveal: readonly string[];
  readonly why: string;
  /** Where it leads. */
  readonly next: string;
  /** The id of a plot of the sheet that shows it. */
  readonly plot?: string;
}

/** The texts of all cells at a moment, by sheet id. */
export interface Baseline {
  readonly pinned: string;
  readonly cells: ReadonlyMap<string, ReadonlyMap<string, string>>;
}
