import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { edgeSums } from '../../../functions/radiation/edge-field.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { readAt } from '../../../functions/values/interpolate.ts';
import { agrees, input, references } from '../../references/read.ts';
import { curve, degrees, number, refusal, spoken, verdict } from './call.ts';

const c = soundSpeed;
const place = { width: 0.22, height: 0.38, x: 0.11, y: 0.24 };

/** Points and weights of Simpson's rule between 0 and 1. */
const simpson = (steps: number): readonly (readonly [at: number, weight: number])[] =>
  Array.from({ length: steps + 1 }, (_, step) => [
    step / steps,
    (step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2) / (3 * steps),
  ]);

/**
 * Level far away by Kirchhoff's integral over the surface of the panel, which carries the pressure that it would in a wide
 * wall: ½ + jk·cos α/4π·∬ e^(−jkρ + jk·n·r)/ρ dS. Each quarter of the panel is two triangles with a corner at the source,
 * where the integrand is smooth.
 */
function overSurface(
  { width, height, x, y }: typeof place,
  frequency: number,
  { horizontal, vertical }: { readonly horizontal: number; readonly vertical: number },
): number {
  const k = (2 * Math.PI * frequency) / c;
  const towards = [Math.sin(horizontal) * Math.cos(vertical), Math.sin(vertical)] as const;
  const points = simpson(160);
  let [re, im] = [0, 0];
  for (const across of [width - x, -x])
    for (const up of [height - y, -y])
      for (const [u, weightOfU] of points)
        for (const [v, weightOfV] of points)
          for (const [right, above] of [
            [across, up * v],
            [across * v, up],
          ] as const) {
            const far = Math.hypot(right, above);
            const angle = k * u * (towards[0] * right + towards[1] * above - far);
            const weight = (weightOfU * weightOfV * Math.abs(across * up)) / far;
            re += weight * Math.cos(angle);
            im += weight * Math.sin(angle);
          }
  const scale = (k * Math.cos(horizontal) * Math.cos(vertical)) / (4 * Math.PI);
  return 20 * Math.log10(Math.hypot(0.5 - scale * im, scale * re));
}

describe('edge diffraction', () => {
  test.each(references('baffle-step', 'disc-'))('a round panel, $id', (reference) => {
    const index = 400;
    const size = (input(reference, 'ka') * c) / (2 * Math.PI * frequencies[index]!);
    const { re, im } = edgeSums(Array.from({ length: 8 }, () => ({ path: size, share: 1 / 8 })));
    agrees(20 * Math.log10(Math.hypot(1 - re[index]! / 2, im[index]! / 2)), reference);
  });
  test.each(references('baffle-step', 'rect-'))('$id', (reference) => {
    const given = {
      width: input(reference, 'W'),
      height: input(reference, 'H'),
      x: input(reference, 'x'),
      y: input(reference, 'y'),
    };
    // The size is scaled so that the wanted frequency is a point of the grid.
    const wanted = input(reference, 'f');
    const point = frequencies.find((frequency) => frequency >= wanted)!;
    const scale = wanted / point;
    const scaled = Object.fromEntries(Object.entries(given).map(([name, value]) => [name, value * scale]));
    agrees(curve('EDGE.DIFFRACTION', scaled).y[frequencies.indexOf(point)], reference);
  });
  test('low down half the pressure is left, whatever the panel', () => {
    fc.assert(
      fc.property(
        fc.record({ width: size(0.1, 0.6), height: size(0.1, 1.5), across: size(0.05, 0.95), up: size(0.05, 0.95) }),
        ({ width, height, across, up }) => {
          const small = { width: width / 20, height: height / 20, x: (across * width) / 20, y: (up * height) / 20 };
          const { y } = curve('EDGE.DIFFRACTION', small);
          expect(y[0]).toBeCloseTo(-20 * Math.log10(2), 1);
          // What the edges send back is never more than half of what reaches them.
          expect(Math.max(...y)).toBeLessThanOrEqual(20 * Math.log10(1.5) + 1e-9);
          expect(Math.min(...y)).toBeGreaterThanOrEqual(-20 * Math.log10(2) - 1e-9);
        },
      ),
      { numRuns: 20 },
    );
  });
  test('mirrored on the panel nothing changes', () => {
    const there = curve('EDGE.DIFFRACTION', { ...place, x: 0.08 }).y;
    const mirrored = curve('EDGE.DIFFRACTION', { ...place, x: 0.22 - 0.08 }).y;
    for (const [index, value] of there.entries()) expect(mirrored[index]).toBeCloseTo(value, 9);
  });
  test('a rounding leaves the lows, softens the highs, and does so the more the larger it is', () => {
    const curves = [0, 0.006, 0.019, 0.05].map((radius) => curve('EDGE.DIFFRACTION', { ...place, radius }).y);
    const swing = (y: Float64Array): number =>
      Math.max(...y.filter((_, index) => frequencies[index]! > 8000).map((value) => Math.abs(value)));
    for (const [index, y] of curves.entries()) {
      expect(readAt(y, 30)).toBeCloseTo(readAt(curves[0]!, 30), 1);
      if (index > 0) expect(swing(y)).toBeLessThan(swing(curves[index - 1]!));
    }
    expect(swing(curves[2]!)).toBeLessThan(swing(curves[0]!) / 1.5);
  });
  test('a wide cone lights the edges less than a point', () => {
    expect(number('EDGE.RIPPLE', { ...place, sd: 0.0085 })).toBeLessThan(number('EDGE.RIPPLE', place));
  });
  test('half the panel at twice the frequency is the same', () => {
    const half = Object.fromEntries(Object.entries(place).map(([name, value]) => [name, value / 2]));
    const small = curve('EDGE.DIFFRACTION', half).y;
    const large = curve('EDGE.DIFFRACTION', place).y;
    for (const index of [100, 200, 300, 400]) expect(small[index + 48]).toBeCloseTo(large[index]!, 9);
  });
  const off = (horizontal: number, vertical: number) => ({
    horizontal: degrees(horizontal),
    vertical: degrees(vertical),
  });
  test.each([
    [0, 0],
    [30, 0],
    [-55, 20],
    [0, 75],
  ])('at %d° and %d° it is the integral over the surface of the panel', (horizontal, vertical) => {
    const { y } = curve('EDGE.DIFFRACTION', { ...place, x: 0.08, ...off(horizontal, vertical) });
    for (const index of [150, 250, 330, 390])
      expect(y[index]).toBeCloseTo(
        overSurface({ ...place, x: 0.08 }, frequencies[index]!, off(horizontal, vertical)),
        2,
      );
  });
  test('in every direction half the pressure is left low down, and along the panel at every frequency', () => {
    for (const [horizontal, vertical] of [
      [20, 0],
      [-60, 10],
      [40, 40],
    ] as const)
      expect(curve('EDGE.DIFFRACTION', { ...place, ...off(horizontal, vertical) }).y[0]).toBeCloseTo(-6.02, 1);
    for (const along of [off(90, 0), off(-90, 0), off(0, 90)])
      for (const level of curve('EDGE.DIFFRACTION', { ...place, ...along }).y) expect(level).toBeCloseTo(-6.0206, 6);
  });
  test('mirrored and turned panels send the same to mirrored and turned directions', () => {
    const of = (more: object) => curve('EDGE.DIFFRACTION', { ...place, x: 0.08, radius: 0.02, sd: 0.005, ...more }).y;
    const there = of(off(35, 0));
    const mirrored = of({ x: 0.22 - 0.08, ...off(-35, 0) });
    const turned = of({ width: 0.38, height: 0.22, x: 0.24, y: 0.08, ...off(0, 35) });
    for (const [index, value] of there.entries()) {
      expect(mirrored[index]).toBeCloseTo(value, 9);
      expect(turned[index]).toBeCloseTo(value, 6);
    }
  });
  test('on a very wide panel only the narrowing of the piston is left', () => {
    const wide = { width: 40, height: 40, x: 19, y: 21, sd: 0.0132 };
    const { y } = curve('EDGE.DIFFRACTION', { ...wide, ...off(30, 0) });
    const alone = curve('PISTON.OFF_AXIS', { sd: wide.sd, angle: degrees(30) }).y;
    for (const index of [250, 300, 350]) expect(y[index]).toBeCloseTo(alone[index]!, 0);
  });
  test('wrong places are refused by name', () => {
    expect(refusal('EDGE.DIFFRACTION', { ...place, x: 0.3 })).toContain('not on the panel');
    expect(refusal('EDGE.DIFFRACTION', { ...place, y: 0.38 })).toContain('not on the panel');
    expect(refusal('EDGE.RIPPLE', { ...place, radius: 0.2 })).toContain('smaller radius');
    expect(refusal('EDGE.RIPPLE', { ...place, to: 50 })).toContain('not passed yet');
  });
});

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('rounding and place', () => {
  // Common practice, no source: radius over wavelength of an eighth; 19 mm helps above 2.3 kHz, 6 mm above 7.2 kHz.
  test('the useful frequency of a radius', () => {
    expect(number('EDGE.RADIUS_FREQUENCY', { radius: 0.019 }) / 1000).toBeCloseTo(2.3, 1);
    expect(number('EDGE.RADIUS_FREQUENCY', { radius: 0.006 }) / 1000).toBeCloseTo(7.2, 1);
  });
  test('there the rounding spreads the path of the edge by a third of a wavelength', () => {
    const radius = 0.019;
    const wavelength = c / number('EDGE.RADIUS_FREQUENCY', { radius });
    expect((radius * (Math.PI / 2 + 1)) / wavelength).toBeCloseTo(0.32, 2);
  });
  /** What a rounding leaves of an edge that sends back 1 when sharp: mean of e^(−jk·path) along its quarter turn, by Simpson. */
  const left = (radiusInWaves: number): Record<'re' | 'im', number> => {
    const steps = 2000;
    const sum = { re: 0, im: 0 };
    for (let step = 0; step <= steps; step += 1) {
      const turn = ((step / steps) * Math.PI) / 2;
      const angle = 2 * Math.PI * radiusInWaves * (turn + 1 - Math.cos(turn));
      const weight = (step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2) / (3 * steps);
      sum.re += weight * Math.cos(angle);
      sum.im -= weight * Math.sin(angle);
    }
    return sum;
  };
  const dB = ({ re, im }: Record<'re' | 'im', number>): number => 20 * Math.log10(Math.hypot(re, im));
  test('a rounding of an eighth of a wavelength begins to help, of a sixteenth hardly, of a quarter plainly', () => {
    expect([1 / 16, 1 / 8, 1 / 4].map((radius) => dB(left(radius)).toFixed(1))).toEqual(['-0.4', '-1.6', '-7.3']);
    const status = (share: number): string =>
      verdict('RULE.ROUNDING', { radius: (share * c) / 2000, from: 2000 }).status;
    expect([1 / 17, 1 / 15, 1 / 8.1, 1 / 7.9].map(status)).toEqual(['fail', 'caution', 'caution', 'good']);
    // The rule turns good where EDGE.RADIUS_FREQUENCY says that the radius begins to help.
    const from = number('EDGE.RADIUS_FREQUENCY', { radius: 0.019 });
    expect(verdict('RULE.ROUNDING', { radius: 0.019, from: from * 1.001 }).status).toBe('good');
    expect(verdict('RULE.ROUNDING', { radius: 0.019, from: from * 0.999 }).status).toBe('caution');
  });
  test('the diffraction of a panel has its edges weakened by just that', () => {
    const radius = 0.02;
    const sharp = curve('EDGE.DIFFRACTION', place);
    // The same flat within a panel that is larger by the rounding all round.
    const round = curve('EDGE.DIFFRACTION', {
      width: place.width + 2 * radius,
      height: place.height + 2 * radius,
      x: place.x + radius,
      y: place.y + radius,
      radius,
    });
    const edgeOf = ({ y, phase }: typeof sharp, index: number): Record<'re' | 'im', number> => ({
      re: 1 - 10 ** (y[index]! / 20) * Math.cos(phase![index]!),
      im: -(10 ** (y[index]! / 20)) * Math.sin(phase![index]!),
    });
    for (const index of [150, 250, 330, 400]) {
      const weakened = dB(edgeOf(round, index)) - dB(edgeOf(sharp, index));
      expect(weakened).toBeCloseTo(dB(left((radius * frequencies[index]!) / c)), 2);
    }
  });
  test('three equal distances are named with their frequency, three unequal ones pass', () => {
    const middle = verdict('EDGE.PLACE_VERDICT', { width: 0.22, height: 0.38, x: 0.11, y: 0.27 });
    expect(middle.status).toBe('caution');
    expect(spoken(middle.reason)).toContain((c / 0.22).toFixed(3));
    expect(verdict('EDGE.PLACE_VERDICT', { width: 0.22, height: 0.38, x: 0.08, y: 0.24 }).status).toBe('good');
    expect(verdict('EDGE.PLACE_VERDICT', { width: 0.3, height: 0.3, x: 0.15, y: 0.15 }).status).toBe('caution');
    expect(refusal('EDGE.PLACE_VERDICT', { width: 0.2, height: 0.3, x: 0.2, y: 0.1 })).toContain('place it inside');
  });
});

describe('the shelf and what it costs', () => {
  const shelf = { width: 0.22, makeUp: 4.5, ohms: 6.4 };
  test('high up it takes the make-up, half of it at the step, nothing low down without wire', () => {
    const { y } = curve('EDGE.SHELF_LOSS', shelf);
    expect(y.at(-1)).toBeCloseTo(-4.5, 2);
    expect(readAt(y, 115 / 0.22)).toBeCloseTo(-2.25, 3);
    expect(y[0]).toBeCloseTo(0, 2);
  });
  test('the wire costs as a plain resistance low down', () => {
    const { y } = curve('EDGE.SHELF_LOSS', { ...shelf, coilResistance: 0.6 });
    const resistor = 6.4 * (10 ** (4.5 / 20) - 1);
    const both = (0.6 * resistor) / (0.6 + resistor);
    expect(y[0]).toBeCloseTo(20 * Math.log10(6.4 / (6.4 + both)), 2);
  });
  test('the ohms go from those of the driver to those with the resistor', () => {
    const { y, phase } = curve('EDGE.SHELF_LOAD', shelf);
    expect(y[0]).toBeCloseTo(6.4, 2);
    expect(y.at(-1)).toBeCloseTo(6.4 * 10 ** (4.5 / 20), 2);
    expect(Math.min(...phase!)).toBeGreaterThanOrEqual(0);
  });
  test('level and ohms are one circuit: ohms times current is the whole voltage', () => {
    const given = { ...shelf, coilResistance: 0.4 };
    const loss = curve('EDGE.SHELF_LOSS', given);
    const load = curve('EDGE.SHELF_LOAD', given);
    for (const index of [0, 200, 300, 500]) {
      expect(10 ** (loss.y[index]! / 20) * (load.y[index]! / 6.4)).toBeCloseTo(1, 12);
      expect(loss.phase![index]! + load.phase![index]!).toBeCloseTo(0, 12);
    }
  });
  test('step and a full shelf together are even within a decibel', () => {
    const step = curve('EDGE.STEP', { width: 0.22 }).y;
    const full = curve('EDGE.SHELF_LOSS', { ...shelf, makeUp: 20 * Math.log10(2) }).y;
    const both = step.map((value, index) => value + full[index]!);
    expect(Math.max(...both) - Math.min(...both)).toBeLessThan(1);
  });
});
