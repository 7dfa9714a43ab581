import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveLumped } from '../../../functions/enclosure/lumped.ts';
import { modelOf } from '../../../functions/enclosure/circuit-of.ts';
import { fieldOf } from '../../../functions/values/fields.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { box, call, curve, driver, number, woofer } from './call.ts';
import { expectClose, input, references, withId, type Reference } from './reference.ts';

const values = references('passive-radiator');

const boxed = (each: Reference) =>
  box('RADIATOR.BOX', {
    driver: driver({
      re: input(each, 'Re'),
      bl: input(each, 'BL'),
      mms: input(each, 'Mms'),
      cms: input(each, 'Cms'),
      rms: input(each, 'Rms'),
      sd: input(each, 'Sd'),
    }),
    volume: input(each, 'Vb'),
    area: input(each, 'Sdp'),
    mass: input(each, 'Mmp'),
    compliance: input(each, 'Cmp'),
    resistance: input(each, 'Rmp'),
    leakageQ: input(each, 'QL'),
  });

describe('passive radiators (Small 1974)', () => {
  test.each(withId(values, /-(fp|fb|qmp|delta|notch)$/))('$id', (each) => {
    const made = boxed(each);
    const { radiator } = modelOf(made);
    const { pressureRe, pressureIm } = solveLumped(modelOf(made), Float64Array.of(radiator!.fp));
    const found: Record<string, unknown> = {
      fp: fieldOf(made, 'notch'),
      fb: number('BOX.RESONANCE', { box: made }),
      qmp: made.radiator?.qmp,
      delta: radiator?.ratio,
      notch: 20 * Math.log10(Math.hypot(pressureRe[0]!, pressureIm[0]!)),
    };
    expectClose(found[each.id.split('-').at(-1)!] as number, each);
  });
  test.each(withId(values, /^mass-/))('$id, and its tuning and notch', (each) => {
    const given = { volume: input(each, 'Vb'), area: input(each, 'Sdp'), compliance: input(each, 'Cmp') };
    const tuning = input(each, 'fb');
    const mass = number('RADIATOR.MASS', { ...given, tuning });
    expectClose(mass, each);
    expect(number('RADIATOR.TUNING', { ...given, mass })).toBeCloseTo(tuning, 9);
    expectClose(number('RADIATOR.NOTCH', { ...given, mass }), withId(values, /^notch-W1/)[0]!);
  });
  test.each(withId(values, /^multi-/))('$id', (each) => {
    const given = { volume: input(each, 'Vb'), area: input(each, 'Sdp'), compliance: input(each, 'Cmp') };
    expectClose(number('RADIATOR.TUNING', { ...given, mass: input(each, 'Mmp'), count: input(each, 'count') }), each);
  });
});

const given = { driver: woofer, volume: 0.02, area: 0.021, compliance: 9e-4, resistance: 1e-4 };

describe('limits and identities', () => {
  test('a very soft, lossless radiator is a port of the same tuning', () => {
    const soft = { ...given, compliance: 1, resistance: 1e-6 };
    const mass = number('RADIATOR.MASS', { ...soft, tuning: 40 });
    const made = box('RADIATOR.BOX', { ...soft, mass });
    const ported = box('VENTED.BOX', { driver: woofer, volume: 0.02, tuning: 40 });
    for (const name of ['BOX.RESPONSE', 'BOX.TRAVEL', 'BOX.IMPEDANCE']) {
      const other = curve(name, { box: ported }).y;
      curve(name, { box: made }).y.forEach((y, index) =>
        expect(Math.abs(y - other[index]!)).toBeLessThan(0.01 * Math.max(1, Math.abs(other[index]!))),
      );
    }
  });
  test('a radiator too heavy to move leaves a closed box', () => {
    const made = box('RADIATOR.BOX', { ...given, mass: 99, compliance: 9e-4, leakageQ: 1e4 });
    const closed = box('CLOSED.BOX', { driver: woofer, volume: 0.02 });
    const other = curve('BOX.RESPONSE', { box: closed }).y;
    const from40Hz = 96;
    curve('BOX.RESPONSE', { box: made }).y.forEach((y, index) => {
      if (index >= from40Hz) expect(Math.abs(y - other[index]!)).toBeLessThan(0.01);
    });
  });
  test('two radiators of half the area and mass each are one, in response and travel', () => {
    // Half the area on half the mass and twice the compliance: the same acoustic mass and compliance together.
    const one = box('RADIATOR.BOX', { ...given, mass: 0.12, resistance: 1.2 });
    const half = { ...given, area: 0.0105, mass: 0.06, compliance: 1.8e-3, resistance: 0.6 };
    const two = box('RADIATOR.BOX', { ...half, count: 2 });
    for (const name of ['BOX.RESPONSE', 'BOX.RADIATOR_TRAVEL']) {
      const other = curve(name, { box: one }).y;
      curve(name, { box: two }).y.forEach((y, index) => expect(y).toBeCloseTo(other[index]!, 9));
    }
  });
  test('heavier tunes lower', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 1.01, max: 3, noNaN: true }),
        (mass, f) =>
          number('RADIATOR.TUNING', { ...given, mass: mass * f }) < number('RADIATOR.TUNING', { ...given, mass }),
      ),
    );
  });
});

describe('band-pass and baffle', () => {
  const bandpass = box('BANDPASS.BOX', { driver: woofer, rear: 0.012, front: 0.008, tuning: 70, leakageQ: 1e4 });
  test('falls by 12 dB an octave on both sides', () => {
    const at = Float64Array.of(0.2, 0.4, 10000, 20000);
    const { pressureRe, pressureIm } = solveLumped(modelOf(bandpass), at);
    const level = pressureRe.map((re, index) => 20 * Math.log10(Math.hypot(re, pressureIm[index]!)));
    expect(level[1]! - level[0]!).toBeCloseTo(40 * Math.log10(2), 2);
    expect(level[2]! - level[3]!).toBeCloseTo(40 * Math.log10(2), 2);
  });
  test('a front volume of no end leaves a closed box behind a very low port: the travel is that of the closed box', () => {
    const wide = box('BANDPASS.BOX', { driver: woofer, rear: 0.012, front: 1e4, tuning: 0.1, leakageQ: 1e4 });
    const closed = curve('BOX.TRAVEL', { box: box('CLOSED.BOX', { driver: woofer, volume: 0.012 }) }).y;
    curve('BOX.TRAVEL', { box: wide }).y.forEach((y, index) => expect(y / closed[index]!).toBeCloseTo(1, 3));
  });
  test('a baffle is a closed box of no end', () => {
    const wide = curve('BOX.RESPONSE', { box: box('CLOSED.BOX', { driver: woofer, volume: 1e4 }) }).y;
    curve('BOX.RESPONSE', { box: box('BAFFLE.BOX', { driver: woofer }) }).y.forEach((y, index) =>
      expect(y).toBeCloseTo(wide[index]!, 4),
    );
  });
  test.each([
    ['BOX.QTC', bandpass],
    ['BOX.PORT_SPEED', box('BAFFLE.BOX', { driver: woofer })],
    ['BOX.RADIATOR_TRAVEL', bandpass],
  ])('%s refuses a box that has no such thing', (name, made) => {
    const result = call(name, { box: made, portArea: 0.01 });
    expect(result).toBeInstanceOf(Problem);
    expect((result as Problem).parameter).toBe('box');
  });
});
