import fc from 'fast-check';
import { expect, test } from 'vitest';
import { complexOf, curveOf } from '../../../functions/values/complex-curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';

const shown = { title: 'One', from: 10, to: 20_000 } as const;
const filled = (value: number): Float64Array => new Float64Array(frequencies.length).fill(value);
const part = fc.double({ min: -1e6, max: 1e6, noNaN: true });

test.each(['level', 'resistance'] as const)('a %s made of complex values is read as size and angle', (quantity) => {
  fc.assert(
    fc.property(part, part, (real, imaginary) => {
      const { y, phase } = curveOf({ ...shown, quantity }, { re: filled(real), im: filled(imaginary) });
      const size = Math.hypot(real, imaginary);
      const expected = quantity === 'level' ? Math.max(-300, 20 * Math.log10(size)) : size;
      expect(y[7]).toBeCloseTo(expected, size < 1 ? 9 : 7);
      // Nought has a sign of its own, which tells half a round from minus half a round.
      expect(Math.cos(phase![7]! - Math.atan2(imaginary, real))).toBeCloseTo(1, 12);
    }),
  );
});

test('what was read comes back to the same complex values', () => {
  const curve = curveOf({ ...shown, quantity: 'level' }, { re: filled(0.3), im: filled(-0.4) });
  // A copy has nothing remembered with it: it is worked out from level and phase.
  const { re, im } = complexOf({ ...curve });
  expect(re[100]).toBeCloseTo(0.3, 12);
  expect(im[100]).toBeCloseTo(-0.4, 12);
  expect(complexOf({ kind: 'curve', ...shown, quantity: 'resistance', y: filled(6) }).re[3]).toBe(6);
});

test('it is worked out once, and travels to another thread whole', () => {
  const curve = curveOf({ ...shown, quantity: 'resistance' }, { re: filled(3), im: filled(4) });
  expect(curve.y).toBe(curve.y);
  const there = structuredClone(curve);
  expect(there).toEqual({
    kind: 'curve',
    ...shown,
    quantity: 'resistance',
    y: filled(5),
    phase: filled(Math.atan2(4, 3)),
  });
});

test('silence has a level', () => {
  expect(curveOf({ ...shown, quantity: 'level' }, { re: filled(0), im: filled(0) }).y[0]).toBe(-300);
});
