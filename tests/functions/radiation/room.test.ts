import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { readAt } from '../../../functions/values/interpolate.ts';
import { curve, number } from './call.ts';

const c = soundSpeed;
const length = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('one reflection', () => {
  test('a source or an ear in the surface gets 6 dB at every frequency', () => {
    const { y } = curve('ROOM.REFLECTION', { distance: 2.5, source: 0, ear: 1.1 });
    for (const value of y) expect(value).toBeCloseTo(20 * Math.log10(2), 9);
  });
  test('source and ear may change places', () => {
    fc.assert(
      fc.property(length(0.5, 6), length(0.05, 2), length(0.05, 2), (distance, source, ear) => {
        const there = curve('ROOM.REFLECTION', { distance, source, ear, strength: 0.8 }).y;
        const back = curve('ROOM.REFLECTION', { distance, source: ear, ear: source, strength: 0.8 }).y;
        for (const index of [0, 100, 250, 400]) expect(back[index]).toBeCloseTo(there[index]!, 6);
      }),
      { numRuns: 30 },
    );
  });
  // Worked by hand: paths of 2.8018 m and 3.3838 m differ by 0.5820 m, half a wavelength at 294.8 Hz.
  test('the dip is where half a wavelength is between the paths', () => {
    const given = { distance: 2.8, source: 0.9, ear: 1 };
    const dip = number('ROOM.DIP', given);
    expect(dip).toBeCloseTo(294.8, 1);
    const share = (0.7 * 2.8018) / 3.3838;
    expect(readAt(curve('ROOM.REFLECTION', { ...given, strength: 0.7 }).y, dip)).toBeCloseTo(
      20 * Math.log10(1 - share),
      1,
    );
  });
  test('the ear at great distance in front of a wall: the dip is a quarter of a wavelength from the wall', () => {
    const wall = number('ROOM.WALL_DIP', { distance: 0.6 });
    expect(wall).toBeCloseTo(143, 0);
    // An ear straight in front: the paths differ by twice the distance of the source from the wall.
    const path = 2 * 0.6;
    expect((2 * Math.PI * wall * path) / c).toBeCloseTo(Math.PI, 12);
  });
  test('without a strength there is only the direct sound', () => {
    for (const value of curve('ROOM.REFLECTION', { distance: 3, source: 1, ear: 1, strength: 0 }).y)
      expect(value).toBeCloseTo(0, 12);
  });
});

describe('power near walls', () => {
  const walls = (given: Record<string, number>): Float64Array => curve('ROOM.WALLS', given).y;
  test('one, two and three walls give 3, 6 and 9 dB low down and nothing high up', () => {
    for (const [given, decibels] of [
      [{ a: 0.05 }, 3.01],
      [{ a: 0.05, b: 0.06 }, 6.02],
      [{ a: 0.05, b: 0.06, c: 0.07 }, 9.03],
    ] as const) {
      expect(walls(given)[0]).toBeCloseTo(decibels, 2);
      expect(Math.abs(walls(given).at(-1)!)).toBeLessThan(0.3);
    }
  });
  test('in the wall itself the lift holds at every frequency', () => {
    for (const value of walls({ a: 0 })) expect(value).toBeCloseTo(10 * Math.log10(2), 9);
  });
  test('the order of the walls does not matter', () => {
    expect(walls({ a: 0.2, b: 0.6, c: 0.9 })[200]).toBeCloseTo(walls({ a: 0.9, b: 0.2, c: 0.6 })[200]!, 9);
  });
  test('is the sum over all directions of what a source and its images send there', () => {
    const [a, b] = [0.3, 0.7];
    for (const index of [100, 180, 260]) {
      const k = (2 * Math.PI * frequencies[index]!) / c;
      const steps = 400;
      let power = 0;
      for (let up = 0; up < steps; up += 1)
        for (let round = 0; round < steps; round += 1) {
          const z = (up + 0.5) / steps;
          const azimuth = ((round + 0.5) / steps) * (Math.PI / 2);
          const across = Math.sqrt(1 - z ** 2);
          // Images mirrored in x and y; directions of the quarter space, both halves of z alike.
          power +=
            (2 * Math.cos(k * a * across * Math.cos(azimuth)) * 2 * Math.cos(k * b * across * Math.sin(azimuth))) ** 2;
        }
      // A quarter of the sphere, against the source alone over the whole of it.
      expect(walls({ a, b })[index]).toBeCloseTo(10 * Math.log10(power / steps ** 2 / 4), 3);
    }
  });
  // Allison 1974 in quotation, from memory: equal distances make the deepest dip, about 11 dB, near 0.3 wavelengths.
  test('equal distances dip deepest, near 0.3 wavelengths', () => {
    const equal = walls({ a: 0.5, b: 0.5, c: 0.5 });
    const deepest = Math.min(...equal);
    const at = frequencies[equal.indexOf(deepest)]!;
    expect((0.5 * at) / c).toBeGreaterThan(0.28);
    expect((0.5 * at) / c).toBeLessThan(0.33);
    expect(Math.min(...walls({ a: 0.25, b: 0.5, c: 0.9 }))).toBeGreaterThan(deepest + 2);
  });
});

describe('the small room', () => {
  test('the lowest resonance of 5.2 m is 33 Hz', () => {
    expect(number('ROOM.LOWEST_MODE', { length: 5.2 })).toBeCloseTo(33, 9);
  });
  // Common practice, no source.
  test('the lift begins there, rises with its slope and stops where it is told', () => {
    const { y } = curve('ROOM.LIFT', { length: 5.2, slope: 12, most: 15 });
    expect(readAt(y, 34)).toBe(0);
    expect(readAt(y, 31)).toBeGreaterThan(0);
    expect(readAt(y, 16.5)).toBeCloseTo(12, 1);
    expect(readAt(y, 10)).toBeCloseTo(15, 9);
    expect(readAt(y, 200)).toBe(0);
    expect(y.every((value, index) => index === 0 || value <= y[index - 1]!)).toBe(true);
  });
});
