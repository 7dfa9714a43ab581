/** The one frequency grid on which all curves lie: logarithmic, so that curves add point by point. */
const LOWEST = 10;
const POINTS_PER_OCTAVE = 48;
const POINTS = 577;

/** 577 frequencies in hertz from 10 Hz, 48 an octave; the last is 10 Hz · 2^12 = 40.96 kHz. */
export const frequencies: Float64Array = Float64Array.from(
  { length: POINTS },
  (_, index) => LOWEST * 2 ** (index / POINTS_PER_OCTAVE),
);

/** The (fractional) place of a frequency on the grid; 0 is the first point. */
export const placeOf = (frequency: number): number => POINTS_PER_OCTAVE * Math.log2(frequency / LOWEST);
