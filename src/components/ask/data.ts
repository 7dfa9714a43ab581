import type { QuantityName } from '../../../functions/quantities.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { PlotData } from '../plot/data.ts';

/** What can be asked of a sheet. */
export type Kind = 'seek' | 'best' | 'cheapest' | 'combine' | 'sweep' | 'map' | 'scatter' | 'drives' | 'follows';

export const kinds: Readonly<Record<Kind, string>> = {
  seek: 'Find a value',
  best: 'Best within bounds',
  cheapest: 'Cheapest change',
  combine: 'Every combination',
  sweep: 'Move one input',
  map: 'Move two inputs',
  scatter: 'How sure is it',
  drives: 'What drives it',
  follows: 'What follows',
};

/** A cell to choose. */
export interface CellChoice {
  readonly id: string;
  readonly label: string;
  /** Under which heading it stands. */
  readonly group: string;
}

/** An input with the ends between which it may move, as typed. */
export interface Moved {
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

/** An input that may be set: between its ends, or to values as typed (`8 L, 10 L`, `5 L to 20 L in 4`, `E12`). */
export interface Varied extends Moved {
  readonly label: string;
  readonly values: string;
  /** What one costs, as a formula of `value`, its number in this unit. */
  readonly price?: string;
  readonly unit?: string;
}

/** Where a kind keeps the inputs that it sets. */
export const variedIn = (kind: Kind): 'varied' | 'settings' => (kind === 'cheapest' ? 'settings' : 'varied');

/** What is to be best: of a number the least, the most or the nearest to a target; a curve at its flattest. */
export const aims = {
  least: 'the least',
  most: 'the most',
  nearest: 'nearest to',
  flattest: 'the flattest',
} as const;
export type Aim = keyof typeof aims;

/** A result that is to be kept at least, or at most, at what is typed. */
export interface LimitWish {
  readonly id: string;
  readonly label: string;
  readonly at: 'least' | 'most';
  readonly text: string;
}

/** What spreads: the causes behind a driver, or one input; shares as typed (`3 %`) or amounts (`0.3 L`). */
export interface SpreadWish {
  readonly id: string;
  readonly label: string;
  readonly texts: readonly { readonly name: string; readonly label: string; readonly text: string }[];
}

/** All that stands in the form, as it was typed. */
export interface Wish {
  readonly kind: Kind;
  readonly result: string;
  /** A quantity; for a verdict `good` or `clear`. */
  readonly target: string;
  readonly input: Moved;
  readonly second: Moved;
  readonly steps: string;
  /** Every number of the sheet stands in the table of a sweep. */
  readonly isWhole: boolean;
  readonly spreads: readonly SpreadWish[];
  readonly runs: string;
  readonly seed: string;
  /** Inputs set to something else first, in words: `Target 106 dB`. */
  readonly given: string;
  /** Inputs that vary together. */
  readonly varied: readonly Varied[];
  /** Inputs that may be set in place of buying a driver. */
  readonly settings: readonly Varied[];
  readonly aim: Aim;
  /** Between which frequencies a curve is to be flat. */
  readonly band: readonly [from: string, to: string];
  /** What results keep while the best is looked for. */
  readonly limits: readonly LimitWish[];
  /** What becomes of the verdicts: all good, none fails, or whatever comes. */
  readonly keep: 'good' | 'clear' | 'any';
  /** Results that stand in the table of combinations beside the one that ranks them. */
  readonly listed: readonly string[];
  readonly order: 'least' | 'most' | 'typed';
  readonly rows: string;
  /** Drivers that may be changed, by name. */
  readonly drivers: readonly string[];
  readonly isOwnShelf: boolean;
  /** What is counted: money, changes, or the id of a number of the sheet. */
  readonly cost: string;
  /** How many changes at once. */
  readonly changes: string;
}

/** The cells of the form. */
export interface Choices {
  readonly inputs: readonly CellChoice[];
  readonly results: readonly CellChoice[];
  /** What could spread beside what does. */
  readonly spreads: readonly CellChoice[];
  /** What could be set beside what may be. */
  readonly varied: readonly CellChoice[];
  /** What could stand in the table beside what does. */
  readonly listed: readonly CellChoice[];
  /** The results that are numbers. */
  readonly numbers: readonly CellChoice[];
  /** The names of all drivers of the document. */
  readonly drivers: readonly string[];
  /** What changes could be counted by. */
  readonly costs: readonly CellChoice[];
  readonly isVerdict: boolean;
  readonly unit: string;
}

export interface Place {
  readonly sheet: string;
  readonly cell: string;
}

export interface Setting extends Place {
  readonly label: string;
  readonly text: string;
}

/** An axis of a plot; SI. */
export interface Axis {
  readonly label: string;
  readonly quantity: QuantityName;
  readonly from: number;
  readonly to: number;
  /** Equal ratios are equally far apart. */
  readonly isLogarithmic?: boolean;
  /** Words that stand in place of numbers. */
  readonly words?: readonly { readonly value: number; readonly text: string }[];
}

export type Point = readonly [across: number, up: number];

/** Lines over two axes, with the region where everything is good, and points of a grid that can be picked. */
export interface FieldData {
  readonly title: string;
  readonly across: Axis;
  readonly up: Axis;
  readonly lines: readonly { readonly points: readonly Point[]; readonly label: string; readonly isEdge?: true }[];
  /** Corners of rectangles where all verdicts are good. */
  readonly good: readonly (readonly [Point, Point])[];
  /** The values of the grid. Without `ups` only `across` is picked. */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  /** Where the sheet stands now. */
  readonly present: Point;
  /** What holds at a point of the grid, in words. */
  readonly reading: (column: number, row: number) => string;
  readonly settings: (column: number, row: number) => readonly Setting[];
}

export interface Bar {
  readonly label: string;
  /** 0 to 1. */
  readonly share: number;
  readonly text: string;
  readonly place?: Place;
  readonly status?: 'good' | 'caution' | 'fail' | 'problem';
}

export interface Branch extends Place {
  readonly label: string;
  readonly text: string;
  readonly branches: readonly Branch[];
}

/** One thing done, and each verdict that it turns. */
export interface Step {
  readonly words: string;
  readonly turns: readonly (Place & { readonly label: string; readonly text: string; readonly reason: string })[];
}

/** A table that can be kept as a sheet; `live` are cells whose present value stands at the end of each row. */
export interface AnswerTable {
  readonly table: TableRecord;
  readonly live?: readonly (Place | undefined)[];
  /** Cells whose values the first columns hold, and after them those of the results that follow from them. */
  readonly over?: { readonly inputs: readonly Place[]; readonly results: readonly Place[] };
  /** What is typed when a row is picked. */
  readonly sets?: readonly (readonly Setting[])[];
  /** The page says the same in another way. */
  readonly isForSheet?: true;
}

/** An answer, made ready to be shown. */
export interface Answer {
  readonly said: string;
  readonly found: readonly {
    readonly words: string;
    readonly consequence: string;
    readonly sets: readonly Setting[];
  }[];
  readonly field?: FieldData;
  readonly curves?: PlotData;
  readonly bars: readonly { readonly title: string; readonly rows: readonly Bar[] }[];
  readonly tree?: Branch;
  readonly steps?: readonly Step[];
  readonly tables: readonly AnswerTable[];
  /** What was asked, with all settings: stands on the sheet that keeps it. */
  readonly note: string;
}
