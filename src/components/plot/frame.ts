import type { VerticalRange } from './vertical.ts';

/** Where the drawing stands inside its element. The left edge is the same for every plot, so that the frequencies
 *  of plots that stand above each other line up. */
const MARGIN = { left: 38, right: 10, top: 8, bottom: 20 } as const;

/** The geometry of a plot: pixels for hertz and for values in the axis unit, relative to the drawing's corner. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly horizontal: readonly [number, number];
  readonly vertical: VerticalRange;
  x(hertz: number): number;
  y(value: number): number;
  hertz(x: number): number;
}

export function frameOf(
  outer: { readonly width: number; readonly height: number },
  horizontal: readonly [number, number],
  vertical: VerticalRange,
): Frame {
  const width = Math.max(40, outer.width - MARGIN.left - MARGIN.right);
  const height = Math.max(40, outer.height - MARGIN.top - MARGIN.bottom);
  const [low, high] = horizontal;
  const perLog = width / Math.log(high / low);
  const perUnit = height / (vertical.to - vertical.from);
  return {
    left: MARGIN.left,
    top: MARGIN.top,
    width,
    height,
    horizontal,
    vertical,
    x: (hertz) => perLog * Math.log(hertz / low),
    y: (value) => height - perUnit * (value - vertical.from),
    hertz: (x) => low * Math.exp(x / perLog),
  };
}
