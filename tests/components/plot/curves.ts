import type { QuantityName } from '../../../functions/quantities.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { PlotData, PlotSeries } from '../../../src/components/plot/data.ts';

/** A curve by its course over frequency. */
export const curveOf = (
  quantity: QuantityName,
  course: (hertz: number) => number,
  [from, to]: readonly [number, number] = [10, 40960],
): Curve => ({ kind: 'curve', title: 'A curve', quantity, y: Float64Array.from(frequencies, course), from, to });

export const seriesOf = (label: string, curve: Curve, more: Partial<PlotSeries> = {}): PlotSeries => ({
  label,
  line: 'system',
  curve,
  ...more,
});

/** A plot of these curves from 20 Hz to 20 kHz. */
export const plotOf = (series: readonly PlotSeries[], more: Partial<PlotData> = {}): PlotData => ({
  title: 'Response',
  series,
  limits: [],
  marks: [],
  horizontal: [20, 20000],
  system: 'metric',
  ...more,
});

/** A second-order high pass of 87 dB with its corner at 55 Hz. */
export const closedBox = (gain = 0): Curve =>
  curveOf('level', (hertz) => 87 + gain - 10 * Math.log10(1 + (55 / hertz) ** 4));
