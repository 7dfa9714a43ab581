import { expect, test } from 'vitest';
import { leastSquares } from '../../../functions/numeric/least-squares.ts';
import { legendreChi2, minimumPhase } from '../../../functions/numeric/phase-kernel.ts';

test('a straight line has the values and standard errors of the closed formulas', () => {
  const x = [1, 2, 3, 4, 5, 6];
  const y = [2.1, 3.9, 6.2, 7.8, 10.1, 11.9];
  const fit = leastSquares(([a, b]) => x.map((each, index) => a! + b! * each - y[index]!), [1, 1])!;
  const [mx, my] = [x, y].map((all) => all.reduce((sum, each) => sum + each, 0) / all.length);
  const spread = x.reduce((sum, each) => sum + (each - mx!) ** 2, 0);
  const slope = x.reduce((sum, each, index) => sum + (each - mx!) * (y[index]! - my!), 0) / spread;
  const left = x.reduce((sum, each, index) => sum + (y[index]! - my! - slope * (each - mx!)) ** 2, 0);
  expect(fit.values[1]).toBeCloseTo(slope, 7);
  expect(fit.values[0]).toBeCloseTo(my! - slope * mx!, 7);
  expect(fit.errors[1]).toBeCloseTo(Math.sqrt(left / 4 / spread), 6);
  expect(fit.errors[0]).toBeCloseTo(Math.sqrt((left / 4) * (1 / 6 + mx! ** 2 / spread)), 6);
  expect(fit.hasConverged).toBe(true);
});
test('values that do not matter give no fit', () => {
  expect(leastSquares(([a]) => [a! - 1, a! - 2, a! - 3], [0, 5])).toBeUndefined();
});
// L. Lewin, Polylogarithms and Associated Functions, 1981 (from memory): χ2(1) = π²/8, χ2(√2 − 1) = π²/16 − ln²(√2 + 1)/4.
test('Legendre’s chi function at its known places', () => {
  expect(legendreChi2(1)).toBeCloseTo(Math.PI ** 2 / 8, 14);
  expect(legendreChi2(Math.SQRT2 - 1)).toBeCloseTo(Math.PI ** 2 / 16 - Math.log(Math.SQRT2 + 1) ** 2 / 4, 14);
  expect(legendreChi2(0)).toBe(0);
});
test('a slope of n·6 dB an octave everywhere has a phase of n·90°', () => {
  for (const order of [-3, -1, 0, 2]) {
    const straight = Float64Array.from({ length: 50 }, (_, index) => order * index * 0.1);
    for (const angle of minimumPhase(straight, 0.1, order, order)) expect(angle).toBeCloseTo((order * Math.PI) / 2, 12);
  }
});
