/** A rule between two values: logarithmic, or even where the range holds zero or spans less than a factor of two.
 *  Works in the unit that is shown, so that steps are round numbers of it. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly logarithmic: boolean;
  /** Place of a value along the rule, 0 to 1; beyond for values outside. */
  place(value: number): number;
  /** The value at a place. */
  value(place: number): number;
}

export function scaleOf(first: number, second: number): Scale {
  const from = Math.min(first, second);
  const to = Math.max(first, second);
  const logarithmic = from > 0 && to / from >= 2;
  if (!logarithmic) {
    const span = to - from || 1;
    return { from, to, logarithmic, place: (value) => (value - from) / span, value: (place) => from + place * span };
  }
  const span = Math.log(to / from);
  return {
    from,
    to,
    logarithmic,
    place: (value) => (value > 0 ? Math.log(value / from) / span : -1),
    value: (place) => from * Math.exp(place * span),
  };
}

/** About a two-hundredth of the rule where the value stands, as 1, 2 or 5 times a power of ten. */
export function stepAt(scale: Scale, value: number): number {
  const inside = Math.min(Math.max(value, scale.from), scale.to);
  const size = scale.logarithmic ? (inside * Math.log(scale.to / scale.from)) / 200 : (scale.to - scale.from) / 200;
  return roundDown(size || 1);
}

/** The largest of 1, 2, 5 times a power of ten that is not above the size. */
export function roundDown(size: number): number {
  const power = Math.floor(Math.log10(size) + 1e-9);
  const digit = [5, 2, 1].find((candidate) => candidate * 10 ** power <= size * (1 + 1e-9)) ?? 1;
  return Number((digit * 10 ** power).toPrecision(1));
}

/** The smallest of 1, 2, 5 times a power of ten that is not below the size. */
export function roundUp(size: number): number {
  const below = roundDown(size);
  return below >= size * (1 - 1e-9) ? below : Number((below * (`${below}`.includes('2') ? 2.5 : 2)).toPrecision(1));
}

/** Decimals that multiples of a step need. */
export const decimalsOf = (step: number): number =>
  [0, 1, 2, 3, 4, 5, 6, 7, 8].find((places) => {
    const scaled = step * 10 ** places;
    return Math.abs(scaled - Math.round(scaled)) < 1e-6;
  }) ?? 9;

/** The nearest multiple of the step inside the rule, free of binary dust. */
export function snap(scale: Scale, value: number, step: number): number {
  const inside = Math.min(Math.max(value, scale.from), scale.to);
  const rounded = Number((Math.round(inside / step) * step).toFixed(decimalsOf(step)));
  return Math.min(Math.max(rounded, scale.from), scale.to);
}

/** The next multiple of the step in a direction, so that odd values come to even ones. */
export function stepFrom(scale: Scale, value: number, step: number, direction: 1 | -1): number {
  const steps = value / step;
  const next = direction === 1 ? Math.floor(steps + 1e-6) + 1 : Math.ceil(steps - 1e-6) - 1;
  return snap(scale, next * step, step);
}

/** A limit rounded to a step without stepping over it: a lower one up, an upper one down. */
export const roundInward = (step: number, value: number, side: 'low' | 'high'): number => {
  const steps = side === 'low' ? Math.ceil(value / step - 1e-6) : Math.floor(value / step + 1e-6);
  return Number((steps * step).toFixed(decimalsOf(step)));
};
