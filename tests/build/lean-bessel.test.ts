import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { assign } from '../../.config/lean-bessel.ts';

const bessel = createRequire(import.meta.url).resolve('@stdlib/math-base-special-besselj1');
const theirs = createRequire(bessel)('@stdlib/math-base-special-sincos') as { readonly assign: typeof assign };

test('sine and cosine of the browser are those that the Bessel function had, to the last digit but one', () => {
  for (let x = 8; x < 3000; x += 0.377) {
    const [own, before] = [assign, theirs.assign].map((each) => {
      const pair = [0, 0];
      each(x, pair, 1, 0);
      return pair;
    }) as [number[], number[]];
    for (const index of [0, 1]) expect(Math.abs(own[index]! - before[index]!)).toBeLessThan(2.3e-16);
  }
});
