import type { HighPass } from '../values/box.ts';

type Parts = readonly [real: Float64Array, imaginary: Float64Array];

/** Multiplies complex values over the frequencies by a Butterworth high-pass, in place. */
export function applyHighPass({ frequency, order }: HighPass, at: Float64Array, targets: readonly Parts[]): void {
  for (let index = 0; index < at.length; index += 1) {
    const x = at[index]! / frequency;
    let real = 1;
    let imaginary = 0;
    for (let section = 0; section < Math.ceil(order / 2); section += 1) {
      // First-order section for the odd one, otherwise the pole pair at this angle: 2·cos(angle) is 1/Q.
      const single = order % 2 === 1 && section === (order - 1) / 2;
      const damping = 2 * Math.sin(((2 * section + 1) * Math.PI) / (2 * order));
      const numerator = single ? x : -x * x;
      const dRe = single ? 1 : 1 - x * x;
      const dIm = single ? x : damping * x;
      const size = dRe * dRe + dIm * dIm;
      const hRe = single ? (numerator * dIm) / size : (numerator * dRe) / size;
      const hIm = single ? (numerator * dRe) / size : (-numerator * dIm) / size;
      const next = real * hRe - imaginary * hIm;
      imaginary = real * hIm + imaginary * hRe;
      real = next;
    }
    for (const [re, im] of targets) {
      if (re.length === 0) continue;
      const next = re[index]! * real - im[index]! * imaginary;
      im[index] = re[index]! * imaginary + im[index]! * real;
      re[index] = next;
    }
  }
}
