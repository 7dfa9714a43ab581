import type { Limit, Window } from '../../../functions/values/window.ts';
import type { UnitSystem } from '../../document/types.ts';
import type { PlotMark } from './data.ts';
import { unbroken } from '../../units/show.ts';
import { spellFrequency } from './unit.ts';

/** What a plot of the shared window shows. */
export interface WindowPlotData {
  readonly title: string;
  readonly window: Window;
  readonly ghost?: Window | undefined;
  readonly marks: readonly PlotMark[];
  /** Ends of the frequency axis in hertz. */
  readonly horizontal: readonly [number, number];
  readonly system: UnitSystem;
  readonly baseline?: string | undefined;
}

/** One rule as a bar: open on one side, closed at the limit. */
export interface WindowRow {
  readonly side: 'floor' | 'ceiling';
  readonly limit: Limit;
  /** It is the one that decides. */
  readonly binding: boolean;
  /** Where it was at the baseline, if elsewhere. */
  readonly was: number | undefined;
}

/** Floors from the lowest, then ceilings from the highest: the closing of the band reads downwards. */
export function rowsOf({ window, ghost }: WindowPlotData): WindowRow[] {
  const row = (side: WindowRow['side'], limit: Limit): WindowRow => {
    const before = (side === 'floor' ? ghost?.floors : ghost?.ceilings)?.find(({ name }) => name === limit.name)?.at;
    const deciding = side === 'floor' ? window.low : window.high;
    return {
      side,
      limit,
      binding: limit.name === deciding.name && limit.at === deciding.at,
      was: before === undefined || before === limit.at ? undefined : before,
    };
  };
  return [
    ...window.floors.toSorted((a, b) => a.at - b.at).map((limit) => row('floor', limit)),
    ...window.ceilings.toSorted((a, b) => b.at - a.at).map((limit) => row('ceiling', limit)),
  ];
}

/** How its limits stand to those of the baseline. */
export function comparisonOf(data: WindowPlotData): 'none' | 'same' | 'changed' {
  if (!data.ghost) return 'none';
  return rowsOf(data).some(({ was }) => was !== undefined) ? 'changed' : 'same';
}

/** The outcome in words and how good it is: met strictly, only when the rules are stretched, or not at all. */
export function outcomeOf({ window, system }: WindowPlotData): {
  readonly status: 'good' | 'caution' | 'fail';
  readonly text: string;
} {
  const { low, high, octaves, stretchedOctaves } = window;
  const band = (from: number, to: number): string =>
    unbroken(`${spellFrequency(from, system)} to ${spellFrequency(to, system)}`);
  if (octaves >= 0) return { status: 'good', text: `${band(low.at, high.at)} shared, ${octaveText(octaves)}` };
  const gap = `${octaveText(-octaves)} apart, ${band(high.at, low.at)}`;
  if (stretchedOctaves < 0) return { status: 'fail', text: `No shared window: ${gap}` };
  return {
    status: 'caution',
    text: `Shared only with stretched rules (${octaveText(stretchedOctaves)}); strictly ${gap}`,
  };
}

/** What the rules say of a frequency, in words and how good that is. */
export function rulesAt(
  data: WindowPlotData,
  frequency: number,
): { readonly status: 'good' | 'caution' | 'fail'; readonly text: string } {
  const beyond = (end: 'at' | 'stretched'): string[] =>
    rowsOf(data).flatMap(({ side, limit }) =>
      (side === 'floor' ? frequency < limit[end] : frequency > limit[end]) ? [limit.name] : [],
    );
  const broken = beyond('stretched');
  const bent = beyond('at').filter((name) => !broken.includes(name));
  const words = [
    ...(broken.length > 0 ? [`forbidden by ${broken.join(', ')}`] : []),
    ...(bent.length > 0 ? [`${bent.join(', ')} only when stretched`] : []),
  ];
  return {
    status: broken.length > 0 ? 'fail' : bent.length > 0 ? 'caution' : 'good',
    text: `${spellFrequency(frequency, data.system)}: ${words.join('; ') || 'allowed by every rule'}`,
  };
}

/** `0.42 octaves`, `1 octave`. */
export const octaveText = (octaves: number): string => {
  const number = octaves.toFixed(2).replace(/\.?0+$/, '') || '0';
  return `${number} ${number === '1' ? 'octave' : 'octaves'}`;
};

/** What the picture shows, in sentences. */
export function windowFinding(data: WindowPlotData): string {
  const { window, marks, system } = data;
  const rule = ({ side, limit }: WindowRow): string =>
    `${limit.name} ${side === 'floor' ? 'from' : 'up to'} ${spellFrequency(limit.at, system)}, stretched ${spellFrequency(limit.stretched, system)}`;
  const needles = marks.map(({ label, frequency }) => {
    const inside = frequency >= window.low.at && frequency <= window.high.at;
    return `${label} at ${spellFrequency(frequency, system)} is ${inside ? 'inside' : 'outside'} the shared window.`;
  });
  return [
    `${data.title}.`,
    `${outcomeOf(data).text}.`,
    `Decided by ${window.low.name} and ${window.high.name}.`,
    `${rowsOf(data).map(rule).join('; ')}.`,
    ...needles,
  ].join(' ');
}
