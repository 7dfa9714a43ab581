import type { UnitSystem } from '../../document/types.ts';
import { evenTicks, frequencyTicks, roundStep, type Tick } from '../plot/ticks.ts';
import { axisUnit } from '../plot/unit.ts';
import type { Axis } from './data.ts';

/** An axis laid over some pixels, with round numbers in the reader's unit. */
export interface LaidAxis {
  /** SI to pixels. */
  readonly at: (value: number) => number;
  readonly ticks: readonly (Tick & { readonly pixel: number })[];
  readonly unit: string;
}

/** @param pixels - Where the two ends lie.
 *  @param apart - Pixels between two numbers, at least. */
export function layAxis(
  { quantity, from, to, isLogarithmic, words }: Axis,
  system: UnitSystem,
  pixels: readonly [number, number],
  apart: number,
): LaidAxis {
  const [start, end] = pixels;
  const unit = axisUnit(quantity, Math.max(Math.abs(from), Math.abs(to)), system);
  const [low, high] = [unit.of(from), unit.of(to)].toSorted((a, b) => a - b) as [number, number];
  const share = (value: number): number =>
    isLogarithmic ? Math.log(value / from) / Math.log(to / from) : (value - from) / (to - from || 1);
  const at = (value: number): number => start + (end - start) * share(value);
  const step = roundStep(((high - low) * apart) / Math.max(Math.abs(end - start), apart));
  const length = Math.abs(end - start);
  const rounded = isLogarithmic ? frequencyTicks(low, high, length, apart) : evenTicks(low, high, step);
  const ticks = high > low ? rounded : [];
  const back = (value: number): number =>
    from + ((to - from) * (value - unit.of(from))) / (unit.of(to) - unit.of(from));
  if (words) return { at, unit: '', ticks: words.map((word) => ({ ...word, pixel: at(word.value) })) };
  return { at, unit: unit.symbol, ticks: ticks.map((tick) => ({ ...tick, pixel: at(back(tick.value)) })) };
}

/** The place of the value that is nearest. */
export function nearestTo(values: readonly number[], value: number): number {
  let best = 0;
  for (const [index, each] of values.entries())
    if (Math.abs(each - value) < Math.abs((values[best] ?? 0) - value)) best = index;
  return best;
}
