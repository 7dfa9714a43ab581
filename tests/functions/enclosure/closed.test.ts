import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Problem } from '../../../functions/values/problem.ts';
import { solveLumped } from '../../../functions/enclosure/lumped.ts';
import { bracketedRoot } from '../../../functions/numeric/root.ts';
import { box, call, curve, driver, number, woofer } from './call.ts';
import { expectClose, input, references, withId, type Reference } from './reference.ts';

const values = references('closed-box');

const ideal = (qtc: number, f: number): number => {
  const model = {
    style: 'closed',
    fs: 1 / Math.SQRT2,
    qms: 1e9,
    qes: qtc / Math.SQRT2,
    re: 1,
    coil: 0,
    ratio: 1,
  } as const;
  const { pressureRe, pressureIm } = solveLumped(model, Float64Array.of(f));
  return 20 * Math.log10(Math.hypot(pressureRe[0]!, pressureIm[0]!));
};

describe('second-order response by Qtc (Small 1972)', () => {
  test.each(withId(values, /^f3fc/))('$id', (each) => {
    const f3 = bracketedRoot((f) => ideal(input(each, 'Qtc'), f) - 10 * Math.log10(0.5), 0.1, 10);
    expectClose(f3!, each);
  });
  test.each(withId(values, /^f10fc/))('$id', (each) => {
    expectClose(
      bracketedRoot((f) => ideal(input(each, 'Qtc'), f) + 10, 0.1, 10)!,
      each,
    );
  });
  test.each(withId(values, /^dbfc/))('$id', (each) => {
    expect(ideal(input(each, 'Qtc'), 1)).toBeCloseTo(each.expected as number, 6);
  });
});

const fromElements = (each: Reference) =>
  driver({
    re: input(each, 'Re'),
    bl: input(each, 'BL'),
    mms: input(each, 'Mms'),
    cms: input(each, 'Cms'),
    rms: input(each, 'Rms'),
    sd: input(each, 'Sd'),
  });

const boxed = (each: Reference) =>
  box('CLOSED.BOX', {
    driver: fromElements(each),
    volume: input(each, 'Vb'),
    seriesResistance: each.inputs['Rg'] ?? 0,
    fill: each.inputs['fill_factor'] ?? 1,
    absorptionQ: each.inputs['QA'],
  });

describe('whole closed boxes from element values', () => {
  test.each(withId(values, /^c\d.*-qtc$/))('$id', (each) => expectClose(number('BOX.QTC', { box: boxed(each) }), each));
  test.each(withId(values, /^c\d.*-fc$/))('$id', (each) =>
    expectClose(number('BOX.RESONANCE', { box: boxed(each) }), each),
  );
  test.each(withId(values, /^c\d.*-loss$/))('$id', (each) => {
    expect(-number('BOX.SERIES_LOSS', { box: boxed(each) })).toBeCloseTo(each.expected as number, 8);
  });
  test.each(withId(values, /^stuff/))('$id', (each) =>
    expectClose(number('BOX.RESONANCE', { box: boxed(each) }), each),
  );
  test.each(withId(values, /^absorb/))('$id', (each) => expectClose(number('BOX.QTC', { box: boxed(each) }), each));
  test.each(withId(values, /^vb-/))('$id', (each) => {
    const given = { qts: input(each, 'Qts'), vas: input(each, 'Vas'), qtc: input(each, 'Qtc') };
    expectClose(number('CLOSED.VOLUME', given), each);
  });
  test.each(withId(references('large-signal'), /^vlim/))('$id', (each) => {
    const made = { ...boxed(each), driver: { ...fromElements(each), xmax: input(each, 'Xmax') } };
    const travel = curve('BOX.TRAVEL', { box: made, volts: each.expected }).y[
      Math.round(48 * Math.log2(input(each, 'f') / 10))
    ]!;
    expect(travel).toBeCloseTo(input(each, 'Xmax'), 8);
  });
});

describe('an invented woofer for Qtc 0.707', () => {
  test('volume and resonance', () => {
    expect(number('CLOSED.VOLUME_FOR', { driver: woofer, qtc: Math.SQRT1_2 }) * 1e3).toBeCloseTo(12.1, 1);
    expect(number('BOX.RESONANCE', { box: box('CLOSED.BOX', { driver: woofer, volume: 0.0121 }) })).toBeCloseTo(
      69.6,
      1,
    );
  });
  test('a coil of 0.6 Ω raises Qtc and costs level', () => {
    const made = box('CLOSED.BOX', { driver: woofer, volume: 0.0121, seriesResistance: 0.6 });
    expect(number('BOX.QTC', { box: made })).toBeCloseTo(0.774, 3);
    expect(number('BOX.SERIES_LOSS', { box: made })).toBeCloseTo(0.86, 2);
    expect(Math.max(...curve('BOX.RESPONSE', { box: made }).y)).toBeCloseTo(0.12, 2);
    expect(number('CLOSED.VOLUME_FOR', { driver: woofer, qtc: Math.SQRT1_2, seriesResistance: 0.6 }) * 1e3).toBeCloseTo(
      15.85,
      2,
    );
  });
  test('filling lowers both', () => {
    const made = box('CLOSED.BOX', {
      driver: woofer,
      volume: number('CLOSED.VOLUME_FOR', { driver: woofer, qtc: Math.SQRT1_2 }),
      fill: 1.15,
    });
    expect(number('BOX.QTC', { box: made })).toBeCloseTo(0.674, 3);
    expect(number('BOX.RESONANCE', { box: made })).toBeCloseTo(66.3, 1);
  });
  test('travel runs out at 10.9 W, long before the heat', () => {
    const made = box('CLOSED.BOX', { driver: woofer, volume: 0.0121 });
    expect(number('BOX.TRAVEL_POWER', { box: made, ohms: 8, from: 20 })).toBeCloseTo(10.9, 1);
    expect(Math.abs(number('BOX.TRAVEL_LIMIT', { box: made, volts: 20 }) - 98)).toBeLessThan(0.5);
    expect(number('BOX.TRAVEL_LIMIT', { box: made, volts: 1 })).toBe(10);
  });
});

const anyNumber = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });

describe('properties', () => {
  test('volume and Qtc are inverse', () => {
    fc.assert(
      fc.property(anyNumber(0.15, 1), anyNumber(1e-5, 1), anyNumber(1.001, 5), (qts, vas, factor) => {
        const volume = number('CLOSED.VOLUME', { qts, vas, qtc: qts * factor });
        expect(number('CLOSED.QTC', { qts, vas, volume }) / (qts * factor)).toBeCloseTo(1, 9);
      }),
    );
  });
  test('a Qtc at or below Qts is a problem that names it', () => {
    fc.assert(
      fc.property(anyNumber(0.15, 1.5), anyNumber(0.01, 1), (qts, share) => {
        const result = call('CLOSED.VOLUME', { qts, vas: 0.02, qtc: qts * share });
        expect(result).toBeInstanceOf(Problem);
        expect((result as Problem).parameter).toBe('qtc');
      }),
    );
  });
  test('curves hold numbers throughout the declared ranges', () => {
    fc.assert(
      fc.property(
        fc.record({
          fs: anyNumber(0.1, 1e6),
          qms: anyNumber(0.01, 1e4),
          qes: anyNumber(0.01, 1e4),
          vas: anyNumber(1e-9, 1e4),
          re: anyNumber(1e-3, 1e6),
          sd: anyNumber(1e-8, 100),
        }),
        anyNumber(1e-9, 1e4),
        (parameters, volume) => {
          const made = box('CLOSED.BOX', { driver: driver(parameters), volume, leakageQ: 7, absorptionQ: 20 });
          for (const name of ['BOX.RESPONSE', 'BOX.LEVEL', 'BOX.TRAVEL', 'BOX.IMPEDANCE', 'BOX.DELAY']) {
            expect(curve(name, { box: made }).y.every(Number.isFinite)).toBe(true);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
