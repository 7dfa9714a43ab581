import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { sphereField } from '../../../functions/numeric/sphere.ts';
import { cabinetSize } from '../../../functions/radiation/cabinet-field.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { agrees, input, references } from '../../references/read.ts';
import { curve } from './call.ts';

describe('a source on a sphere', () => {
  const overPoint = (ka: number): number => {
    const { re, im } = sphereField(ka, [1]);
    return 20 * Math.log10(2 * Math.hypot(re[0]!, im[0]!));
  };
  test.each(references('baffle-step', 'sphere-').filter(({ id }) => id !== 'sphere-ka3'))('$id', (reference) => {
    agrees(overPoint(input(reference, 'ka')), reference);
  });
  test('the step has its middle where the series says, and where the panel has it', () => {
    const [middle] = references('baffle-step', 'sphere-ka3');
    agrees(cabinetSize(0.2, 115 / 0.2), middle!);
    expect(overPoint(middle!.expected.value as number)).toBeCloseTo(10 * Math.log10(2), 6);
  });
  test('low down it sends alike everywhere, high up as in a wall to the front and nothing behind', () => {
    const low = sphereField(0.003, [1, 0, -1]);
    for (const [index, re] of low.re.entries()) expect(Math.hypot(re, low.im[index]!)).toBeCloseTo(0.5, 2);
    const size = ({ re, im }: ReturnType<typeof sphereField>): number[] =>
      [...re].map((x, index) => Math.hypot(x, im[index]!));
    const high = size(sphereField(300, [1, 0.8, -0.5]));
    expect(high[0]).toBeCloseTo(1, 3);
    expect(high[1]).toBeCloseTo(1, 3);
    expect(high[2]).toBeLessThan(size(sphereField(30, [-0.5]))[0]! / 3);
  });
  test('EDGE.SPHERE shows it as a curve, 0 dB in a wall', () => {
    const diameter = 0.2;
    const { y } = curve('EDGE.SPHERE', { diameter, angle: 0 });
    for (const index of [100, 300]) {
      const ka = (Math.PI * frequencies[index]! * diameter) / soundSpeed;
      expect(y[index]! + 20 * Math.log10(2)).toBeCloseTo(overPoint(ka), 9);
    }
  });
  // Fock's function of diffraction by a smooth convex body: 1.399 on the shadow line, against 2 in full light; from memory.
  test('on the shadow line it comes to the value of a smooth body that is large', () => {
    const { re, im } = sphereField(1000, [0]);
    expect(Math.abs(Math.hypot(re[0]!, im[0]!) - 1.399 / 2)).toBeLessThan(0.003);
  });
  test('what goes out at all angles is the power of its harmonics, one by one', () => {
    for (const ka of [0.4, 2, 9]) {
      const nodes = 4000;
      let power = 0;
      for (let node = 0; node < nodes; node += 1) {
        const { re, im } = sphereField(ka, [-1 + (2 * (node + 0.5)) / nodes]);
        power += (re[0]! ** 2 + im[0]! ** 2) / nodes;
      }
      // Mean of |Σ aₙPₙ|² is Σ |aₙ|²/(2n+1); aₙ is read back by projecting the pressure on Pₙ.
      const projected = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16].reduce((sum, order) => {
        let re = 0;
        let im = 0;
        for (let node = 0; node < nodes; node += 1) {
          const x = -1 + (2 * (node + 0.5)) / nodes;
          const field = sphereField(ka, [x]);
          // Turned to the centre of the sphere, where the series lives.
          const cosine = Math.cos(ka * x);
          const sine = Math.sin(ka * x);
          const legendre = legendreOf(order, x) / nodes;
          re += (field.re[0]! * cosine - field.im[0]! * sine) * legendre;
          im += (field.re[0]! * sine + field.im[0]! * cosine) * legendre;
        }
        return sum + (2 * order + 1) * (re ** 2 + im ** 2);
      }, 0);
      expect(projected / power).toBeCloseTo(1, 4);
    }
  });
});

function legendreOf(order: number, x: number): number {
  let before = 1;
  let here = order === 0 ? 1 : x;
  for (let n = 1; n < order; n += 1) [before, here] = [here, ((2 * n + 1) * x * here - n * before) / (n + 1)];
  return here;
}
