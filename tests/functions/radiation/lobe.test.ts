import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { input, references } from '../../references/read.ts';
import { degrees, number, refusal } from './call.ts';

const given = { spacing: 0.139, frequency: 1808 };

describe('the lobe of two drivers', () => {
  test.each(references('combining', 'lobenull'))('is silent at the null of $id', (reference) => {
    const angle = degrees(reference.expected.value as number);
    const level = number('SPACING.LOBE', {
      spacing: input(reference, 'spacing'),
      frequency: input(reference, 'f'),
      angle,
    });
    expect(level).toBeLessThan(-59);
  });
  test('is the sum of two phasors, whichever leads', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (angle, phase) => {
          const turn = (2 * Math.PI * given.frequency * given.spacing * Math.sin(angle)) / soundSpeed + phase;
          const sum = Math.hypot(1 + Math.cos(turn), Math.sin(turn)) / 2;
          expect(number('SPACING.LOBE', { ...given, angle, phase })).toBeCloseTo(
            Math.max(-60, 20 * Math.log10(sum)),
            6,
          );
        },
      ),
    );
  });
  test('leans towards the driver that is late, and is whole there', () => {
    const tilt = number('SPACING.TILT', { ...given, phase: Math.PI / 2 });
    expect(tilt).toBeLessThan(0);
    expect(number('SPACING.LOBE', { ...given, angle: tilt, phase: Math.PI / 2 })).toBeCloseTo(0, 9);
    expect(number('SPACING.TILT', given)).toBeCloseTo(0, 12);
  });
});

describe('the vertical window', () => {
  // Worked by hand: |cos u| = 10^(−3/20) at u = 0.7836; sin θ = u·c/(π·d·f) = 0.3409, θ = 19.93°.
  test('of 139 mm at 1808 Hz is 39.9° wide', () => {
    expect((number('SPACING.WINDOW', given) * 180) / Math.PI).toBeCloseTo(39.86, 1);
  });
  test('lies alike about the axis for drivers in step, and ends at the fall', () => {
    const low = number('SPACING.EARS_LOW', { ...given, distance: 2.8 });
    const high = number('SPACING.EARS_HIGH', { ...given, distance: 2.8 });
    expect(low).toBeCloseTo(-high, 12);
    expect(number('SPACING.LOBE', { ...given, angle: Math.atan(high / 2.8) })).toBeCloseTo(-3, 9);
    expect(Math.atan(high / 2.8) * 2).toBeCloseTo(number('SPACING.WINDOW', given), 9);
  });
  test('ends at the fall when one driver leads, too', () => {
    const led = { ...given, phase: 1, distance: 2 };
    for (const edge of ['SPACING.EARS_LOW', 'SPACING.EARS_HIGH'])
      expect(number('SPACING.LOBE', { ...led, angle: Math.atan(number(edge, led) / 2) })).toBeCloseTo(-3, 9);
  });
  test('narrows with spacing, frequency and a smaller fall', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 4, noNaN: true }), (factor) => {
        const wide = number('SPACING.WINDOW', given);
        expect(number('SPACING.WINDOW', { ...given, spacing: given.spacing * factor })).toBeLessThan(wide);
        expect(number('SPACING.WINDOW', { ...given, frequency: given.frequency * factor })).toBeLessThan(wide);
        expect(number('SPACING.WINDOW', { ...given, fall: 3 / factor })).toBeLessThan(wide);
      }),
    );
  });
  test('close together and low there is no edge, and it says so', () => {
    expect(refusal('SPACING.EARS_HIGH', { spacing: 0.05, frequency: 300, distance: 2 })).toContain('every ear height');
    expect(number('SPACING.WINDOW', { spacing: 0.05, frequency: 300 })).toBeCloseTo(Math.PI, 9);
  });
});
