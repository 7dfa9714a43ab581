import { roundUp, type Scale } from './scale.ts';

/** A line of the rule; written on when there is room. */
export interface Mark {
  readonly value: number;
  readonly rank: 'long' | 'middle' | 'short';
  readonly labelled: boolean;
}

/** Closest that two lines, and two numbers, may stand in pixels. */
const LINES_APART = 5;
const NUMBERS_APART = 46;
/** The ends also carry the unit. */
const END_APART = 60;

/** The lines of a rule of a width in pixels: as fine as the eye can tell, numbers on the roundest values. */
export function marksOf(scale: Scale, pixels: number): Mark[] {
  const numbers = labelledValues(scale, pixels);
  const isNumber = (value: number): boolean => numbers.some((other) => same(other, value));
  const lines = scale.logarithmic ? logarithmicLines(scale, pixels) : evenLines(scale, pixels);
  const all = [
    ...lines,
    ...numbers
      .filter((value) => !lines.some((line) => same(line.value, value)))
      .map((value) => ({ value, middle: true })),
  ];
  return all
    .map(({ value, middle }): Mark => {
      const labelled = isNumber(value);
      return { value, rank: labelled ? 'long' : middle ? 'middle' : 'short', labelled };
    })
    .toSorted((a, b) => a.value - b.value);
}

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** The ends first, then ever less round values, each where it leaves room to the others. */
function labelledValues(scale: Scale, pixels: number): number[] {
  const kept: number[] = [scale.from, scale.to];
  const at = (value: number): number => scale.place(value) * pixels;
  const offer = (value: number): void => {
    if (value <= scale.from || value >= scale.to) return;
    const clear = (other: number, index: number): boolean =>
      Math.abs(at(other) - at(value)) >= (index < 2 ? END_APART : NUMBERS_APART);
    if (kept.every(clear)) kept.push(value);
  };
  if (!scale.logarithmic) {
    const step = roundUp(((scale.to - scale.from) * NUMBERS_APART) / pixels);
    for (let index = Math.ceil(scale.from / step); index * step < scale.to; index++)
      offer(Number((index * step).toPrecision(12)));
    return kept;
  }
  for (const digits of [[1], [2], [5], [3], [1.5, 4, 7], [2.5, 3.5, 6, 8]])
    for (let power = Math.floor(Math.log10(scale.from)); power <= Math.log10(scale.to); power++)
      for (const digit of digits) offer(Number((digit * 10 ** power).toPrecision(3)));
  return kept;
}

function logarithmicLines(scale: Scale, pixels: number): { value: number; middle: boolean }[] {
  const lines: { value: number; middle: boolean }[] = [];
  const perLog = pixels / Math.log(scale.to / scale.from);
  for (let power = Math.floor(Math.log10(scale.from)); power <= Math.log10(scale.to); power++)
    for (const [low, high] of [
      [1, 2],
      [2, 5],
      [5, 10],
    ] as const) {
      const step = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1].find(
        (size) => perLog * Math.log(high / (high - size)) >= LINES_APART,
      );
      if (step === undefined) continue;
      const count = Math.round((high - low) / step);
      const bold = step < 0.1 ? 0.1 : 0.5;
      for (let index = 0; index < count; index++) {
        const digit = Number((low + index * step).toFixed(2));
        const value = Number((digit * 10 ** power).toPrecision(6));
        const middle = Math.abs(digit / bold - Math.round(digit / bold)) < 1e-6;
        if (value >= scale.from && value <= scale.to) lines.push({ value, middle });
      }
    }
  return lines;
}

function evenLines(scale: Scale, pixels: number): { value: number; middle: boolean }[] {
  const even = roundUp(((scale.to - scale.from) * LINES_APART) / pixels);
  const lines: { value: number; middle: boolean }[] = [];
  for (let index = Math.ceil(scale.from / even - 1e-9); index * even <= scale.to * (1 + 1e-9); index++)
    lines.push({ value: Number((index * even).toPrecision(12)), middle: index % 5 === 0 });
  return lines;
}
