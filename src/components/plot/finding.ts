import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { PlotData, PlotLimit, PlotSeries } from './data.ts';
import { Kept } from './kept.ts';
import { type AxisUnit, spellFrequency, spellRoughly } from './unit.ts';

/** A value of a curve and where it is. */
export interface Extreme {
  readonly value: number;
  readonly frequency: number;
}

interface Extremes {
  readonly minimum: Extreme;
  readonly maximum: Extreme;
}

const extremes = new Kept<Curve, { readonly found: Extremes | undefined }>();

/** Lowest and highest value of a curve inside a band and inside its own validity; undefined when it has none there. */
export const extremesOf = (curve: Curve, band: readonly [number, number]): Extremes | undefined =>
  extremes.get(curve, band.join(' '), () => ({ found: findExtremes(curve, band) })).found;

function findExtremes(curve: Curve, [low, high]: readonly [number, number]): Extremes | undefined {
  const { y } = curve;
  const [from, to] = [Math.max(low, curve.from), Math.min(high, curve.to)];
  let lowest = -1;
  let highest = -1;
  for (let index = 0; index < frequencies.length; index++) {
    const frequency = frequencies[index] ?? 0;
    const value = y[index] ?? Number.NaN;
    if (frequency < from || frequency > to || Number.isNaN(value)) continue;
    if (lowest < 0 || value < (y[lowest] ?? 0)) lowest = index;
    if (highest < 0 || value > (y[highest] ?? 0)) highest = index;
  }
  const at = (index: number): Extreme => ({
    value: y[index] ?? Number.NaN,
    frequency: frequencies[index] ?? Number.NaN,
  });
  return lowest < 0 ? undefined : { minimum: at(lowest), maximum: at(highest) };
}

/** Whether a curve and its ghost are the same to a reader. */
export function isSame(curve: Curve, ghost: Curve): boolean {
  const near = (a: number, b: number): boolean => Object.is(a, b) || Math.abs(a - b) <= 1e-6 * Math.abs(a);
  const alike = (): boolean => curve.y.every((value, index) => near(value, ghost.y[index] ?? Number.NaN));
  return curve === ghost || (curve.from === ghost.from && curve.to === ghost.to && alike());
}

/** `changed` when any curve differs from its ghost, `same` when all have an equal ghost, `none` without a baseline. */
export function comparison(data: PlotData): 'none' | 'same' | 'changed' {
  const pairs = data.series.filter((one) => one.ghost);
  if (pairs.length === 0) return 'none';
  return pairs.every(({ curve, ghost }) => ghost && isSame(curve, ghost)) ? 'same' : 'changed';
}

type Bands = readonly (readonly [number, number])[];

const breached = new Kept<Curve, Bands>();

/** The bands in which a curve is on the wrong side of a limit, in hertz. */
export const breaches = (curve: Curve, limit: PlotLimit, band: readonly [number, number]): Bands =>
  breached.get(curve, [limit.forbidden, limit.value, ...band].join(' '), () => findBreaches(curve, limit, band));

function findBreaches(curve: Curve, limit: PlotLimit, [low, high]: readonly [number, number]): Bands {
  const bands: [number, number][] = [];
  let open = false;
  for (let index = 0; index < frequencies.length; index++) {
    const frequency = frequencies[index] ?? 0;
    const value = curve.y[index] ?? Number.NaN;
    const within = frequency >= Math.max(low, curve.from) && frequency <= Math.min(high, curve.to);
    const wrong = within && (limit.forbidden === 'above' ? value > limit.value : value < limit.value);
    if (wrong && open) bands[bands.length - 1] = [bands.at(-1)?.[0] ?? frequency, frequency];
    else if (wrong) bands.push([frequency, frequency]);
    open = wrong;
  }
  return bands;
}

/** What the plot shows, in sentences: the label of the picture for those who do not see it. */
export function findingOf(data: PlotData, unit: AxisUnit): string {
  const hertz = (value: number): string => spellFrequency(value, data.system);
  const band = `${hertz(data.horizontal[0])} to ${hertz(data.horizontal[1])}`;
  const sentences = [`${data.title}, ${band}.`];
  if (data.series.length === 0) sentences.push('No curve yet.');
  for (const series of data.series) sentences.push(courseOf(series, data, unit));
  for (const limit of data.limits) sentences.push(judge(limit, data, unit));
  for (const mark of data.marks) sentences.push(`${capital(mark.label)} at ${hertz(mark.frequency)}.`);
  const compared = comparison(data);
  if (compared === 'same') sentences.push('Same as baseline.');
  if (compared === 'changed') sentences.push(`${list(changedLabels(data))} changed since the baseline.`);
  return sentences.join(' ');
}

const changedLabels = (data: PlotData): string[] =>
  data.series.filter(({ curve, ghost }) => ghost && !isSame(curve, ghost)).map((series) => series.label);

function courseOf(series: PlotSeries, data: PlotData, unit: AxisUnit): string {
  const found = extremesOf(series.curve, data.horizontal);
  if (!found) return `${series.label} has no values in this band.`;
  const at = (extreme: Extreme): string =>
    `${unit.text(extreme.value)} at ${spellRoughly(extreme.frequency, data.system)}`;
  return `${capital(series.label)}: highest ${at(found.maximum)}, lowest ${at(found.minimum)}.`;
}

function judge(limit: PlotLimit, data: PlotData, unit: AxisUnit): string {
  const wrong = data.series.flatMap((series) => {
    const bands = breaches(series.curve, limit, data.horizontal);
    const [first] = bands;
    if (!first) return [];
    const found = extremesOf(series.curve, data.horizontal);
    const worst = limit.forbidden === 'above' ? found?.maximum : found?.minimum;
    const where = list(bands.slice(0, 3).map(([low, high]) => bandText(low, high, data)));
    const reach = worst ? `, as far as ${unit.text(worst.value)}` : '';
    return [`${series.label} is ${limit.forbidden} it ${where}${reach}`];
  });
  const name = `${capital(limit.label)} (${unit.exactly(limit.value)})`;
  return wrong.length === 0 ? `${name} is kept.` : `${name} is broken: ${wrong.join('; ')}.`;
}

const bandText = (low: number, high: number, { system }: PlotData): string =>
  low === high
    ? `at ${spellRoughly(low, system)}`
    : `from ${spellRoughly(low, system)} to ${spellRoughly(high, system)}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `a, b and c`. */
export const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
