import type { DrawingData } from '../drawing/data.ts';
import type { PlotData } from '../plot/data.ts';
import type { WindowPlotData } from '../plot/window-data.ts';

/** A starter sheet as the gallery lists it. */
export interface GalleryEntry {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** What one wants to know; entries of one group stand together. */
  readonly group: string;
  /** Everything of the sheet that can be searched for: its sections, labels and notes. */
  readonly words: string;
}

/** A section of a sheet with its verdicts counted. */
export interface PictureSection {
  readonly title: string;
  readonly good: number;
  readonly caution: number;
  readonly fail: number;
}

/** What a sheet looks like, small: its sections with their verdicts, and its first plot or else its first numbers. */
export interface SheetImage {
  readonly sections: readonly PictureSection[];
  readonly curves?: PlotData;
  readonly window?: WindowPlotData;
  readonly drawing?: DrawingData;
  readonly figures?: readonly { readonly label: string; readonly text: string }[];
}
