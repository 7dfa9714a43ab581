export interface Complex {
  readonly re: number;
  readonly im: number;
}

/** 1/z. */
export function reciprocal(z: Complex): Complex {
  const square = z.re ** 2 + z.im ** 2;
  return { re: z.re / square, im: -z.im / square };
}

export const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

export const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

export const divided = (a: Complex, b: Complex): Complex => times(a, reciprocal(b));

export const polar = (size: number, angle: number): Complex => ({
  re: size * Math.cos(angle),
  im: size * Math.sin(angle),
});

export const sizeOf = (z: Complex): number => Math.hypot(z.re, z.im);

export const angleOf = (z: Complex): number => Math.atan2(z.im, z.re);

/** z1·z2/(z1 + z2). */
export const across = (a: Complex, b: Complex): Complex => reciprocal(plus(reciprocal(a), reciprocal(b)));
