/** Ascending series, where it does not cancel (Abramowitz & Stegun, 12.1.3). */
function struveH1Series(x: number): number {
  let term = (2 * x ** 2) / (3 * Math.PI);
  let sum = 0;
  for (let m = 0; Math.abs(term) > 1e-18 * Math.abs(sum) && term !== 0; m += 1) {
    sum += term;
    term *= -((x / 2) ** 2) / ((m + 1.5) * (m + 2.5));
  }
  return sum;
}

/**
 * Struve function of order 1 for x ≥ 0, to about 1e-12. Beyond 2 by its series of Bessel functions (Abramowitz & Stegun,
 * 12.1.20), which does not cancel; these come from the recurrence run downwards and scaled so that J0 + 2·ΣJ2k = 1.
 */
export function struveH1(x: number): number {
  if (x < 2) return struveH1Series(x);
  const start = 2 * Math.ceil((x + 6 * Math.cbrt(x) + 20) / 2);
  let above = 0;
  let here = 1e-280;
  let scale = 0;
  let sum = 0;
  for (let order = start; order > 0; order -= 1) {
    if (order % 2 === 0) {
      scale += 2 * here;
      sum += here / (order ** 2 - 1);
    }
    const below = ((2 * order) / x) * here - above;
    above = here;
    here = below;
    if (Math.abs(here) < 1e250) continue;
    here *= 1e-250;
    above *= 1e-250;
    scale *= 1e-250;
    sum *= 1e-250;
  }
  scale += here;
  return (2 / Math.PI) * (1 - here / scale + (2 * sum) / scale);
}
