import type { QuantityName } from '../../../functions/quantities.ts';
import { settingText } from '../../analysis/subject/setting-text.ts';
import { standings, type Input, type Standing } from '../../analysis/subject/types.ts';
import type { Axis, Setting } from '../../components/ask/data.ts';
import type { CellValue } from '../../engine/types.ts';

/** So many digits a picked value is typed with. */
export const DIGITS = 4;

export const settingOf = (input: Input, value: number): Setting => ({
  sheet: input.sheet,
  cell: input.cell,
  label: input.label,
  text: settingText(input, value, DIGITS),
});

export const numberOf = (value: CellValue | undefined): number => (value?.kind === 'number' ? value.value : Number.NaN);

/** How all verdicts together stand. */
export const standingWords = {
  good: 'every verdict good',
  caution: 'a verdict at caution',
  fail: 'a verdict fails',
  problem: 'a verdict has no answer',
} as const satisfies Record<Standing, string>;

/** Better upwards. */
export const heightOf = (standing: Standing): number => -standings.indexOf(standing);
export const levels = standings.map((text) => ({ value: heightOf(text), text }));

export function axisOf(label: string, quantity: QuantityName, values: readonly number[]): Axis {
  const finite = values.filter(Number.isFinite);
  const [low, high] = [Math.min(...finite), Math.max(...finite)];
  if (low < high) return { label, quantity, from: low, to: high };
  const middle = Number.isFinite(low) ? low : 0;
  const room = Math.abs(middle) / 10 || 1;
  return { label, quantity, from: middle - room, to: middle + room };
}

/** Spaced as its values are. */
export function inputAxis(input: Input, values: readonly number[]): Axis {
  const [first = 0, second = 0, third = 0] = values;
  const isLogarithmic = first > 0 && third - second > (second - first) * (1 + 1e-6);
  return { ...axisOf(input.label, input.quantity, values), isLogarithmic };
}

export const withRoom = (axis: Axis): Axis => {
  const room = (axis.to - axis.from) * 0.05;
  return { ...axis, from: axis.from - room, to: axis.to + room };
};

/** Halfway to the neighbours on both sides. */
export function cellEnds(values: readonly number[], first: number, last = first): readonly [number, number] {
  const at = (index: number): number => values[Math.min(Math.max(index, 0), values.length - 1)] ?? 0;
  return [(at(first - 1) + at(first)) / 2, (at(last) + at(last + 1)) / 2];
}

/** Stretches of neighbours that are good, by their places. */
export function goodStretches(isGood: (index: number) => boolean, count: number): (readonly [number, number])[] {
  const stretches: (readonly [number, number])[] = [];
  for (let index = 0, start = -1; index <= count; index++) {
    const good = index < count && isGood(index);
    if (good && start < 0) start = index;
    if (!good && start >= 0) {
      stretches.push([start, index - 1]);
      start = -1;
    }
  }
  return stretches;
}
