export interface Root {
  readonly re: number;
  readonly im: number;
}

/** Product of two polynomials, coefficients from the constant term up. */
export function multiplied(a: readonly number[], b: readonly number[]): number[] {
  const product = Array.from({ length: a.length + b.length - 1 }, () => 0);
  a.forEach((one, i) => b.forEach((other, k) => (product[i + k]! += one * other)));
  return product;
}

/** All roots of a polynomial of low order with distinct roots, coefficients from the constant term up, by simultaneous
 *  iteration (Durand and Kerner) to the last digits. */
export function rootsOf(coefficients: readonly number[]): Root[] {
  const order = coefficients.length - 1;
  const leading = coefficients[order]!;
  const size = Math.abs(coefficients[0]! / leading) ** (1 / order);
  const roots = Array.from({ length: order }, (_, index) => ({
    re: size * Math.cos((2 * Math.PI * index) / order + 0.4),
    im: size * Math.sin((2 * Math.PI * index) / order + 0.4),
  }));
  for (let step = 0; step < 200; step += 1) {
    let moved = 0;
    roots.forEach((root, own) => {
      let re = 0;
      let im = 0;
      for (let power = order; power >= 0; power -= 1) {
        const next = re * root.re - im * root.im + coefficients[power]! / leading;
        im = re * root.im + im * root.re;
        re = next;
      }
      for (const [index, other] of roots.entries()) {
        if (index === own) continue;
        const gapRe = root.re - other.re;
        const gapIm = root.im - other.im;
        const square = gapRe ** 2 + gapIm ** 2;
        [re, im] = [(re * gapRe + im * gapIm) / square, (im * gapRe - re * gapIm) / square];
      }
      root.re -= re;
      root.im -= im;
      moved = Math.max(moved, Math.hypot(re, im));
    });
    if (moved < 1e-15 * size) break;
  }
  return roots;
}
