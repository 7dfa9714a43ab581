import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bessel,
  butterworth,
  c4,
  chebyshevOf,
  coincident,
  qb3,
  rippled,
  rippleOf,
} from '../../../functions/enclosure/alignment.ts';
import { solveLumped, type LumpedModel } from '../../../functions/enclosure/lumped.ts';
import { bracketedRoot } from '../../../functions/numeric/root.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { box, call, curve, driver, number, woofer } from './call.ts';
import { expectClose, input, references, withId } from './reference.ts';

const values = references('vented-box');

/** Level over frequency in units of fs, by the circuit and not by the polynomial. */
function response(of: { ratio: number; tuning: number; qts: number }, leakageQ: number): (f: number) => number {
  const model: LumpedModel = {
    style: 'vented',
    fs: 1,
    qms: 1e12,
    qes: of.qts,
    re: 1,
    coil: 0,
    ratio: of.ratio,
    lossFrequency: of.tuning,
    leakageQ,
  };
  return (f) => {
    const { pressureRe, pressureIm } = solveLumped(model, Float64Array.of(f));
    return 20 * Math.log10(Math.hypot(pressureRe[0]!, pressureIm[0]!));
  };
}

function halfPower(level: (f: number) => number): number {
  let from = 0.05;
  while (level(from * 1.01) < 10 * Math.log10(0.5)) from *= 1.01;
  return bracketedRoot((f) => level(f) - 10 * Math.log10(0.5), from, from * 1.01)!;
}

const grid = Array.from({ length: 4000 }, (_, index) => 0.2 * 1.002 ** index);
const highest = (level: (f: number) => number): number => Math.max(...grid.map(level));

describe('Chebyshev and sub-Chebyshev, solved elsewhere with other software', () => {
  test.each(withId(values, /^c4own-/).filter(({ id }) => !id.endsWith('-k')))('$id', (each) => {
    const leakage = input(each, 'QL');
    const found = c4(input(each, 'QT'), leakage)!;
    const level = response(found, leakage);
    const actual: Record<string, () => number> = {
      h: () => found.tuning,
      alpha: () => found.ratio,
      f3fs: () => halfPower(level),
      ripple: () => rippleOf(withId(values, new RegExp(`${each.id.replace('ripple', 'k')}$`))[0]!.expected as number),
    };
    expectClose(actual[each.id.split('-').at(-1)!]!(), each);
  });
  // Thiele's table, row 8, no losses.
  test.each(withId(values, /^thiele8-/))('$id of the classical table', (each) => {
    const found = c4(input(each, 'QT'), Infinity)!;
    const part = each.id.split('-')[1];
    expectClose(
      part === 'h' ? found.tuning : part === 'alpha' ? found.ratio : halfPower(response(found, Infinity)),
      each,
    );
  });
});

describe('the families meet and keep what they promise', () => {
  test('published fourth-order Butterworth at QL 7', () => {
    const found = butterworth(7);
    expectClose(found.qts, withId(values, /^pubB4-QT/)[0]!);
    expectClose(found.ratio, withId(values, /^pubB4-alpha/)[0]!);
    expectClose(found.tuning, withId(values, /^pubB4-fb_fs/)[0]!);
    expectClose(halfPower(response(found, 7)), withId(values, /^pubB4-f3_fs/)[0]!);
  });
  test('Butterworth, Chebyshev without ripple and QB3 are one at its total Q', () => {
    const found = butterworth(7);
    for (const other of [qb3(found.qts, 7)!, c4(found.qts, 7)!]) {
      expect(other.ratio).toBeCloseTo(found.ratio, 5);
      expect(other.tuning).toBeCloseTo(found.tuning, 5);
    }
  });
  test.each([0.05, 0.5, 1.5])('the circuit of a %d dB Chebyshev ripples by that, both peaks alike', (wanted) => {
    const level = response(rippled(wanted, 15)!, 15);
    const peaks = grid.filter(
      (f, index) => index > 0 && level(f) > level(grid[index - 1]!) && level(f) >= level(grid[index + 1] ?? 1e9),
    );
    expect(highest(level)).toBeCloseTo(wanted, 3);
    expect(peaks.length).toBe(2);
    for (const f of peaks) expect(level(f)).toBeCloseTo(wanted, 3);
    expect(Math.min(...grid.filter((f) => f > peaks[0]!).map(level))).toBeGreaterThan(-1e-3);
    expect(rippleOf(chebyshevOf(wanted))).toBeCloseTo(wanted, 12);
  });
  test('Bessel has the polynomial of flattest delay: no peak, and a delay without one', () => {
    const level = response(bessel(7), 7);
    expect(highest(level)).toBeLessThan(1e-3);
  });
  test('coincident pairs of poles: the published h = 1 family', () => {
    for (const each of withId(values, /^sbb4-.*-alpha/)) {
      expectClose(coincident(input(each, 'QT'), input(each, 'QL'))!.ratio, each);
    }
    for (const each of withId(values, /^sbb4-.*-f3fs/)) {
      const leakage = input(each, 'QL');
      expectClose(halfPower(response(coincident(input(each, 'QT'), leakage)!, leakage)), each);
    }
  });
});

describe('boxes of a family', () => {
  test('flattest takes QB3 for a low Qts', () => {
    const made = box('VENTED.ALIGNED', { driver: woofer });
    expect(made.volume).toBeCloseTo(number('VENTED.QB3_VOLUME', { driver: woofer }), 12);
    expect(made.tuning).toBeCloseTo(number('VENTED.QB3_TUNING', { driver: woofer }), 9);
  });
  test('the series resistance for B4 makes a B4 box of it, filling included', () => {
    const seriesResistance = number('VENTED.ALIGNED_SERIES', { driver: woofer });
    const made = box('VENTED.ALIGNED', { driver: woofer, family: 'B4', seriesResistance, fill: 1.1 });
    expect(made.volume * 1.1).toBeCloseTo(woofer.vas! / butterworth(7).ratio, 9);
    const { y } = curve('BOX.RESPONSE', { box: made });
    expect(Math.max(...y)).toBeLessThan(0.001);
  });
  test.each([
    ['B4', {}],
    ['C4', {}],
    ['Bessel', {}],
    ['SC4', { seriesResistance: 3 }],
  ])('%s for a driver that it does not suit is a problem with a remedy', (family, more) => {
    const result = call('VENTED.ALIGNED', { driver: woofer, family, ...more });
    expect(result).toBeInstanceOf(Problem);
    expect((result as Problem).parameter).toBe('family');
    const [, other] = /take (\w+)/.exec((result as Problem).message.map(String).join('')) ?? [];
    expect(call('VENTED.ALIGNED', { driver: woofer, family: other, ...more })).toMatchObject({ kind: 'box' });
  });
  test('any driver and family gives a box with air in it, or a problem', () => {
    const q = fc.double({ min: 0.01, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(
        q,
        q,
        fc.double({ min: 2, max: 1e4, noNaN: true }),
        fc.constantFrom('flattest', 'QB3', 'C4', 'SC4', 'B4', 'Bessel', 'SBB4'),
        (qms, qes, leakageQ, family) => {
          const unit = driver({ fs: 40, qms, qes, vas: 0.03, re: 6, sd: 0.013 });
          const result = call('VENTED.ALIGNED', { driver: unit, family, leakageQ });
          if (result instanceof Problem) return;
          const { volume, tuning } = result as { volume: number; tuning: number };
          expect([volume, tuning].every((each) => Number.isFinite(each) && each > 0)).toBe(true);
        },
      ),
    );
  });
});
