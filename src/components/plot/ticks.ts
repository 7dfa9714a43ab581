/** A line of an axis: where it is, and what is written there. */
export interface Tick {
  readonly value: number;
  readonly text: string;
}

const MINUS = '\u2212';

/** `2k`, `500`, `2.5k`: a frequency as written on an axis. */
export const frequencyText = (hertz: number): string =>
  hertz >= 1000 ? `${Number((hertz / 1000).toPrecision(3))}k` : `${Number(hertz.toPrecision(3))}`;

/** All multiples 1 to 9 of the powers of ten between two frequencies, ends included. */
export function decadeLines(from: number, to: number): number[] {
  const lines: number[] = [];
  for (let power = Math.floor(Math.log10(from)); power <= Math.log10(to); power++)
    for (let digit = 1; digit < 10; digit++) {
      const value = digit * 10 ** power;
      if (value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9)) lines.push(Number(value.toPrecision(1)));
    }
  return lines;
}

/** The labels 1-2-5 of a logarithmic axis, thinned where two would stand closer than `apart` pixels;
 *  powers of ten and the ends go first. */
export function frequencyTicks(from: number, to: number, pixels: number, apart = 22): Tick[] {
  const at = (value: number): number => (pixels * Math.log(value / from)) / Math.log(to / from);
  const leading = (value: number): number => Math.round(value / 10 ** Math.floor(Math.log10(value) + 1e-9));
  const wanted = decadeLines(from, to).filter((value) => [1, 2, 5].includes(leading(value)));
  const isEnd = (value: number): boolean => Math.abs(at(value)) < 1 || Math.abs(at(value) - pixels) < 1;
  const rank = (value: number): number => (leading(value) === 1 ? 0 : isEnd(value) ? 1 : leading(value) === 2 ? 2 : 3);
  const kept: number[] = [];
  for (const value of wanted.toSorted((a, b) => rank(a) - rank(b)))
    if (kept.every((other) => Math.abs(at(other) - at(value)) >= apart)) kept.push(value);
  return kept.toSorted((a, b) => a - b).map((value) => ({ value, text: frequencyText(value) }));
}

/** The smallest of 1, 2, 2.5, 4, 5, 8 times a power of ten that is not below the size. */
export function roundStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  const digit = [1, 2, 2.5, 4, 5, 8, 10].find((candidate) => candidate * power >= size * (1 - 1e-9)) ?? 10;
  return digit * power;
}

/** Multiples of the step between the ends, with as many decimals as the step needs. */
export function evenTicks(from: number, to: number, step: number): Tick[] {
  const whole = (places: number): boolean => Math.abs(step * 10 ** places - Math.round(step * 10 ** places)) < 1e-6;
  const places = [0, 1, 2, 3, 4, 5].find(whole) ?? 6;
  const ticks: Tick[] = [];
  for (let index = Math.ceil(from / step - 1e-9); index * step <= to + step * 1e-9; index++) {
    const value = index * step;
    ticks.push({
      value,
      text: value
        .toFixed(places)
        .replace(/^-(?=.*[1-9])/, MINUS)
        .replace(/^-/, ''),
    });
  }
  return ticks;
}

/** One in so many; zero stays, where there is one. */
export function thinned(ticks: readonly Tick[], every: number): readonly Tick[] {
  const zero = ticks.findIndex(({ value }) => value === 0);
  const first = Math.max(0, zero) % every;
  return ticks.filter((_, index) => index % every === first);
}
