import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepResponse } from '../../../functions/enclosure/step-response.ts';
import { bracketedRoot } from '../../../functions/numeric/root.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { box, call, driver, number, woofer } from './call.ts';
import { expectClose, input, references, withId, type Reference } from './reference.ts';

const elements = (each: Reference) =>
  driver({
    re: input(each, 'Re'),
    bl: input(each, 'BL'),
    mms: input(each, 'Mms'),
    cms: input(each, 'Cms'),
    rms: input(each, 'Rms'),
    sd: input(each, 'Sd'),
  });

/** A closed box with a total Q at a resonance, by a driver almost without mechanical loss. */
function closed(qtc: number, fc = 50) {
  const unit = driver({
    fs: fc / Math.SQRT2,
    qms: 1e4,
    qes: 1 / (Math.SQRT2 / qtc - 1e-4),
    vas: 0.03,
    re: 6,
    sd: 0.013,
  });
  return box('CLOSED.BOX', { driver: unit, volume: 0.03 });
}

describe('figures of a response', () => {
  test.each(withId(references('closed-box'), /^c\d.*-f3$/))('$id', (each) => {
    const made = box('CLOSED.BOX', {
      driver: elements(each),
      volume: input(each, 'Vb'),
      seriesResistance: each.inputs['Rg'] ?? 0,
    });
    expectClose(number('BOX.CUTOFF', { box: made }), each);
  });
  test.each(withId(references('closed-box'), /^(peak|fpk)-/))('$id', (each) => {
    const made = closed(input(each, 'Qtc'));
    const peak = each.id.startsWith('peak');
    expectClose(peak ? number('BOX.PEAK', { box: made }) : number('BOX.PEAK_AT', { box: made }) / 50, each);
  });
  test.each(withId(references('vented-box'), /^case-W1-f3/))('$id', (each) => {
    const made = box('VENTED.BOX', {
      driver: elements(each),
      volume: input(each, 'Vb'),
      tuning: input(each, 'fb'),
      leakageQ: input(each, 'QL'),
    });
    expectClose(number('BOX.CUTOFF', { box: made }), each);
  });
  test.each(withId(references('passive-radiator'), /-(f3|peak)$/))('$id', (each) => {
    const made = box('RADIATOR.BOX', {
      driver: elements(each),
      volume: input(each, 'Vb'),
      area: input(each, 'Sdp'),
      mass: input(each, 'Mmp'),
      compliance: input(each, 'Cmp'),
      resistance: input(each, 'Rmp'),
      leakageQ: input(each, 'QL'),
    });
    expectClose(number(each.id.endsWith('f3') ? 'BOX.CUTOFF' : 'BOX.PEAK', { box: made }), each);
  });
  test('an aligned Chebyshev box ripples as its polynomial says', () => {
    const unit = driver({ fs: 30, qms: 6, qes: 0.62, vas: 0.05, re: 6, sd: 0.02 });
    const made = box('VENTED.ALIGNED', { driver: unit, family: 'C4', leakageQ: 15 });
    expect(number('BOX.RIPPLE', { box: made })).toBeCloseTo(number('BOX.PEAK', { box: made }), 2);
    expect(number('BOX.RIPPLE', { box: made })).toBeGreaterThan(0.1);
  });
  test('a response without a peak has none, and refuses to say where', () => {
    expect(number('BOX.PEAK', { box: closed(0.6) })).toBe(0);
    expect(number('BOX.RIPPLE', { box: closed(0.6) })).toBe(0);
    expect(call('BOX.PEAK_AT', { box: closed(0.6) })).toBeInstanceOf(Problem);
    expect(call('BOX.CUTOFF_HIGH', { box: closed(0.6) })).toBeInstanceOf(Problem);
  });
  test('more decibels down is lower, and a band-pass lies between its ends', () => {
    const made = box('BANDPASS.BOX', { driver: woofer, rear: 0.012, front: 0.008, tuning: 70 });
    fc.assert(
      fc.property(
        // Together no more than the closed box has fallen by 10 Hz, where the curves begin.
        fc.double({ min: 0.5, max: 16, noNaN: true }),
        fc.double({ min: 0.5, max: 10, noNaN: true }),
        (a, b) => {
          for (const of of [made, closed(0.7)]) {
            const [upper, lower] = [a, a + b].map((drop) => number('BOX.CUTOFF', { box: of, drop }));
            expect(lower!).toBeLessThan(upper!);
          }
          const [low, high] = ['BOX.CUTOFF', 'BOX.CUTOFF_HIGH'].map((name) => number(name, { box: made, drop: a }));
          expect(low!).toBeLessThan(number('BOX.PEAK_AT', { box: made }));
          expect(high!).toBeGreaterThan(number('BOX.PEAK_AT', { box: made }));
        },
      ),
      { numRuns: 20 },
    );
  });
});

/** Inverse Laplace transform of s/(s² + s·w/Q + w²), the step through a closed box. */
function exactStep(q: number, w: number, t: number): number {
  const d = w / (2 * q);
  if (q === 0.5) return (1 - d * t) * Math.exp(-d * t);
  if (q > 0.5) {
    const v = Math.sqrt(w * w - d * d);
    return Math.exp(-d * t) * (Math.cos(v * t) - (d / v) * Math.sin(v * t));
  }
  const v = Math.sqrt(d * d - w * w);
  return Math.exp(-d * t) * (Math.cosh(v * t) - (d / v) * Math.sinh(v * t));
}

describe('step response', () => {
  test.each([0.4, 0.5, 0.7071, 1.2, 4])('of a closed box of Qtc %d, against its inverse transform', (q) => {
    const times = Float64Array.from({ length: 120 }, (_, index) => index * 0.0005);
    const found = stepResponse(closed(q), times) as Float64Array;
    times.forEach((t, index) => expect(Math.abs(found[index]! - exactStep(q, 100 * Math.PI, t))).toBeLessThan(2e-4));
  });
  test('overshoot and ringing of the critically damped box by hand: e⁻² at t = 2/w', () => {
    expect(number('BOX.OVERSHOOT', { box: closed(0.5) })).toBeCloseTo(Math.exp(-2), 3);
    const settled = bracketedRoot((x) => (x - 1) * Math.exp(-x) - 0.05, 2, 10)!;
    expect(number('BOX.RINGING', { box: closed(0.5) })).toBeCloseTo(settled / (100 * Math.PI), 4);
  });
  test.each([
    ['vented', box('VENTED.BOX', { driver: woofer, volume: 0.0223, tuning: 39.6 })],
    ['with a high-pass', box('BOX.HIGH_PASS', { box: closed(0.7), frequency: 40, order: 4 })],
    ['infinite baffle', box('BAFFLE.BOX', { driver: woofer })],
    [
      'radiator',
      box('RADIATOR.BOX', {
        driver: woofer,
        volume: 0.02,
        area: 0.021,
        mass: 0.12,
        compliance: 9e-4,
        resistance: 1.5,
      }),
    ],
  ])('%s: begins at 1, and all air that moves comes back (its integral is zero)', (_, made) => {
    const times = Float64Array.from({ length: 4000 }, (__, index) => index * 2e-4);
    const found = stepResponse(made, times) as Float64Array;
    expect(found[0]!).toBeCloseTo(1, 3);
    const trapezoids = found.reduce((sum, each, index) => sum + each * (index === 0 ? 0.5 : 1), 0) * 2e-4;
    expect(Math.abs(trapezoids)).toBeLessThan(2e-5);
  });
  test('a band-pass begins at 0', () => {
    const made = box('BANDPASS.BOX', { driver: woofer, rear: 0.012, front: 0.008, tuning: 70 });
    expect((stepResponse(made, Float64Array.of(0, 0.001)) as Float64Array)[0]!).toBeCloseTo(0, 3);
  });
  test('resonances too far apart are a problem', () => {
    const made = box('BOX.HIGH_PASS', { box: closed(0.7, 1000), frequency: 0.2 });
    expect(call('BOX.STEP', { box: made })).toBeInstanceOf(Problem);
  });
});
