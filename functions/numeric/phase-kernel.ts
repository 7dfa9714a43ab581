/** Legendre's chi function of order 2, Σ x^n/n² over odd n, for 0 ≤ x ≤ 1. Near 1 through its relation to (1 − x)/(1 + x). */
export function legendreChi2(x: number): number {
  if (x >= 1) return Math.PI ** 2 / 8;
  if (x > 0.45) {
    const other = (1 - x) / (1 + x);
    return Math.PI ** 2 / 8 + 0.5 * Math.log(x) * Math.log((1 + x) / (1 - x)) - legendreChi2(other);
  }
  let sum = 0;
  for (let n = 1, power = x; power > 1e-18; n += 2, power *= x * x) sum += power / n ** 2;
  return sum;
}

/** ∫ ln coth(u/2) du from |u| to infinity. */
const tail = (u: number): number => 2 * legendreChi2(Math.exp(-Math.abs(u)));

/** ∫ ln coth(|t|/2) dt from minus infinity to u. */
const upTo = (u: number): number => (u <= 0 ? tail(u) : 2 * tail(0) - tail(u));

/**
 * The phase in radians of a minimum-phase system at each point of a geometric series of frequencies, from the natural
 * logarithm of its magnitude there: Bode’s relation φ = (1/π)·∫ (d ln|H|/du)·ln coth(|u|/2) du, u = ln(f/f0). Exact for a
 * magnitude that is straight between the points and goes on with the given slopes (nepers per neper) outside.
 */
export function minimumPhase(logarithm: Float64Array, step: number, below: number, above: number): Float64Array {
  const count = logarithm.length;
  const kernel = new Float64Array(2 * count);
  for (let place = 0; place < 2 * count; place += 1) kernel[place] = upTo((place - count) * step);
  return Float64Array.from({ length: count }, (_, here) => {
    let sum = below * upTo(-here * step) + above * (2 * tail(0) - upTo((count - 1 - here) * step));
    for (let cell = 0; cell < count - 1; cell += 1) {
      const slope = (logarithm[cell + 1]! - logarithm[cell]!) / step;
      sum += slope * (kernel[cell + 1 - here + count]! - kernel[cell - here + count]!);
    }
    return sum / Math.PI;
  });
}
