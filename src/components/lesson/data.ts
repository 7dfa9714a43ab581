import type { ShownCell } from '../../document/shown.ts';
import type { DrawingData } from '../drawing/data.ts';
import type { PlotData } from '../plot/data.ts';
import type { WindowPlotData } from '../plot/window-data.ts';

/** A cell that a reader answers in: a guess, or a line of a check-list. */
export interface LessonInput {
  readonly cell: string;
  readonly label: string;
  readonly text: string;
  readonly choices?: readonly string[];
  /** The unit that a bare number is meant in; empty for plain numbers. */
  readonly unit: string;
}

/** A step of a lesson as it stands now. */
export interface LessonStep {
  readonly title: string;
  readonly text: string;
  readonly guess: LessonInput;
  /** Inputs that belong to the question. */
  readonly asked: readonly LessonInput[];
  /** The answer first. */
  readonly reveal: readonly { readonly label: string; readonly shown: ShownCell }[];
  readonly why: string;
  readonly next: string;
  readonly curves?: PlotData;
  readonly window?: WindowPlotData;
  readonly drawing?: DrawingData;
}
