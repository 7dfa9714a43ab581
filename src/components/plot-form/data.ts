import type { BetterEnd, Line, Plot } from '../../document/types.ts';

export type PlotKind = Plot['kind'];

/** A plot while its form is filled: everything as typed, empty where nothing is. */
export interface PlotDraft {
  readonly id: string;
  readonly title: string;
  readonly kind: PlotKind;
  readonly series: readonly SeriesDraft[];
  readonly limits: readonly LimitDraft[];
  readonly marks: readonly MarkDraft[];
  readonly horizontal: Ends;
  readonly vertical: Ends;
  readonly best: readonly [BetterEnd | '', BetterEnd | ''];
  readonly ground: Ends;
}

type Ends = readonly [string, string];

export interface MarkDraft {
  readonly cell: string;
  readonly label: string;
}

export interface LimitDraft extends MarkDraft {
  readonly forbidden: 'above' | 'below';
}

export interface SeriesDraft extends MarkDraft {
  readonly line: Line;
  readonly column: string;
  readonly across: string;
  readonly names: string;
}

/** What is said at a field. Only what is wrong keeps the plot from being kept. */
export interface Remark {
  readonly text: string;
  readonly isWrong: boolean;
}

/** By field: `title`, `series.0.cell`, `limits.1.label`, `horizontal.0`. */
export type Remarks = ReadonlyMap<string, Remark>;

/** A cell that a field offers, as it would be typed, and what it is called. */
export interface Offer {
  readonly cell: string;
  readonly words: string;
}

/** What the fields of a draft offer. */
export interface Offers {
  readonly kinds: readonly PlotKind[];
  readonly series: readonly Offer[];
  /** Cells with the names of values, and with their places along the bottom. */
  readonly beside: readonly Offer[];
  readonly limits: readonly Offer[];
  readonly marks: readonly Offer[];
  readonly sizes: readonly Offer[];
  /** Of each series that is a table: the names of its columns with words, and with numbers. */
  readonly columns: readonly (TableColumns | undefined)[];
  /** What the plot, a series, a limit or a mark is called where nothing is typed, by the field. */
  readonly labels: ReadonlyMap<string, string>;
  /** The ends that are found for an axis, as they would be typed. */
  readonly horizontal: Ends;
}

interface TableColumns {
  readonly numbers: readonly string[];
  readonly words: readonly string[];
}

/** What is asked of a kind of plot. */
interface KindFields {
  readonly words: string;
  /** What one of its series is called. */
  readonly series: string;
  readonly add: string;
  readonly hint: string;
  readonly several: boolean;
  /** A series may be many cells. */
  readonly area: boolean;
  /** Its line style is the reader's. */
  readonly lines: boolean;
  /** A name stands beside each series. */
  readonly labels: boolean;
  readonly across: boolean;
  readonly names: boolean;
  readonly limits: boolean;
  readonly marks: boolean;
  readonly horizontal: boolean;
  readonly vertical: boolean;
  readonly best: boolean;
  readonly ground: boolean;
}

const none = {
  several: true,
  area: true,
  lines: true,
  labels: true,
  across: false,
  names: false,
  limits: false,
  marks: false,
  horizontal: true,
  vertical: false,
  best: false,
  ground: false,
} as const;

export const kinds: Readonly<Record<PlotKind, KindFields>> = {
  curves: {
    ...none,
    words: 'Curves over frequency',
    series: 'Curve',
    add: 'Add a curve',
    area: false,
    hint: 'Cells that hold a curve, all of one quantity.',
    limits: true,
    marks: true,
    vertical: true,
  },
  window: {
    ...none,
    words: 'Shared window',
    series: 'Window',
    add: '',
    hint: 'A cell that holds a shared window: its floors and ceilings as bars.',
    several: false,
    area: false,
    lines: false,
    labels: false,
    marks: true,
  },
  bars: {
    ...none,
    words: 'Bars',
    series: 'Bars',
    add: 'Add bars',
    hint: 'A bar for each row. Several series of the same rows lie end to end.',
    names: true,
    limits: true,
  },
  points: {
    ...none,
    words: 'Points, one column over another',
    series: 'Points',
    add: 'Add points',
    hint: 'Each row is a point: its place along the bottom, and how high it stands.',
    across: true,
    names: true,
    limits: true,
    marks: true,
    vertical: true,
    best: true,
  },
  lines: {
    ...none,
    words: 'Lines, one column over another',
    series: 'Line',
    add: 'Add a line',
    hint: 'A line through all rows: their places along the bottom, and how high they stand.',
    across: true,
    names: true,
    limits: true,
    marks: true,
    vertical: true,
  },
  shapes: {
    ...none,
    words: 'Drawing to scale',
    series: 'Shapes',
    add: 'Add shapes',
    hint: 'In each row a name, from left, from below, width and height; without a height it is a circle around its middle. Or a table with the columns From left, From below, Along and Across.',
    labels: false,
    horizontal: false,
    ground: true,
  },
};

export const lineWords: Readonly<Record<Line, string>> = {
  woofer: 'Woofer',
  tweeter: 'Tweeter',
  system: 'System',
  other: 'Other',
};
