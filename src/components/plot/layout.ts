import type { Box } from './labels.ts';
import type { VerticalRange } from './vertical.ts';

/** What a drawing takes over from the one before, so that axes and labels stay put while a number is dragged. */
export interface Memory {
  range: VerticalRange | undefined;
  readonly labels: Map<string, Box>;
}

export const newMemory = (): Memory => ({ range: undefined, labels: new Map() });

/** The room there is, and the sizes of words in it. */
export interface Measures {
  readonly width: number;
  readonly height: number;
  /** Width of a text as a label, in pixels. */
  label(text: string): number;
  /** Width of a text as small print. */
  small(text: string): number;
}

/** Height of a name beside a curve or a limit. */
export const LABEL_HEIGHT = 16;
