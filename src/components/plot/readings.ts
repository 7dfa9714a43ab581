import type { PlotData, PlotSeries } from './data.ts';
import { valueAt } from './path.ts';
import { type AxisUnit, spellFrequency } from './unit.ts';

/** One line of the table of values: a frequency and what every curve has there. */
export interface Reading {
  readonly frequency: number;
  readonly values: readonly {
    readonly label: string;
    readonly line: PlotSeries['line'];
    readonly value: number | undefined;
  }[];
}

/** Preferred numbers R10 (ISO 3), the third-octave series of measuring practice. */
const R10 = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8];

/** Third-octave frequencies between two ends. */
export function thirdOctaves(from: number, to: number): number[] {
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(from)); power <= Math.log10(to); power++)
    for (const digit of R10) {
      const value = Number((digit * 10 ** power).toPrecision(3));
      if (value >= from && value <= to) found.push(value);
    }
  return found;
}

/** What the curves of a plot have at a frequency. */
export const readingAt = (data: PlotData, frequency: number): Reading => ({
  frequency,
  values: data.series.map(({ label, line, curve }) => {
    const value = frequency < curve.from || frequency > curve.to ? Number.NaN : valueAt(curve, frequency);
    return { label, line, value: Number.isFinite(value) ? value : undefined };
  }),
});

/** A reading in words: "1 000 Hz: Woofer 86.2 dB, Tweeter no value". */
export const readingText = (reading: Reading, data: PlotData, unit: AxisUnit): string =>
  `${spellFrequency(reading.frequency, data.system)}: ${reading.values
    .map(({ label, value }) => `${label} ${value === undefined ? 'no value' : unit.text(value)}`)
    .join(', ')}`;

/** The next frequency of the crosshair: a twenty-fourth of an octave a step, an octave with `coarse`. */
export const stepFrequency = (
  hertz: number,
  direction: 1 | -1,
  coarse: boolean,
  [low, high]: readonly [number, number],
): number => Math.min(high, Math.max(low, hertz * 2 ** (direction * (coarse ? 1 : 1 / 24))));
