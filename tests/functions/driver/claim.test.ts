import fc from 'fast-check';
import { boxResponse } from '../../../functions/enclosure/box-curves.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { closedConstant, largestConstant, ventedConstant } from '../../../functions/driver/claim-bound.ts';
import { butterworth } from '../../../functions/enclosure/alignment.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { box, call, driver, number } from '../enclosure/call.ts';
import { expectClose, input, references, withId, type Reference } from '../enclosure/reference.ts';

/** The references are stated for another speed of sound; k goes with its inverse cube. */
const at = (each: Reference, k: number): number => k * (soundSpeed / input(each, 'c')) ** 3;

describe('bounds (Small 1972 and 1973), computed elsewhere', () => {
  test.each(withId(references('closed-box'), /^keta-/))('$id', (each) => {
    expectClose(
      at(each, each.id === 'keta-max' ? largestConstant('closed', Infinity) : closedConstant(input(each, 'Qtc'))),
      each,
    );
  });
  test.each(withId(references('vented-box'), /^keta-/))('$id', (each) => {
    const found =
      each.id === 'keta-B4' ? ventedConstant(butterworth(Infinity), Infinity) : largestConstant('vented', Infinity);
    expectClose(at(each, found), each);
  });
  test('a leak lowers the bound, towards the 2.6e-6 that is usual', () => {
    const [lossless, built, leaky] = [Infinity, 7, 3].map((q) => largestConstant('vented', q));
    expect(built!).toBeLessThan(lossless!);
    expect(leaky!).toBeLessThan(built!);
    expect(built! * 1e6).toBeCloseTo(2.6, 1);
  });
});

const claim = { level: 92, re: 5.8, volume: 0.02, cutoff: 30 };

describe('a claim of 92 dB in 20 L vented with an F3 of 30 Hz', () => {
  test('is over three times the bound', () => {
    expect(number('CLAIM.CONSTANT', claim) * 1e5).toBeCloseTo(1.294, 2);
    expect(number('CLAIM.CONSTANT', claim) / largestConstant('vented', Infinity)).toBeGreaterThan(3);
    const verdict = call('CLAIM.CHECK', claim) as Verdict;
    expect(verdict.status).toBe('fail');
    expect(verdict.reason.filter((part) => typeof part !== 'string').map(({ quantity }) => quantity)).toEqual([
      'ratio',
      'volume',
      'frequency',
      'level',
    ]);
  });
  // 66.4 L belongs to a bound rounded down to 3.9e-6. Searched over the poles of all lossless Chebyshev boxes with scipy, it
  // is 3.992e-6 at 343.2 m/s and 3.930e-6 at the 345 m/s of the print.
  test.fails('needs 66 L', () => expect(number('CLAIM.VOLUME', claim) * 1e3).toBeCloseTo(66.4, 0));
  // 66.3 L at 2.83 V, 66.37 L at the square root of 8 V.
  test('needs 66.3 L where the bound is rounded to 3.9e-6', () => {
    const k = largestConstant('vented', 1e6);
    expect((number('CLAIM.VOLUME', claim) * 1e3 * k) / 3.9e-6).toBeCloseTo(66.3, 1);
  });
  test('each of the three ways out lies on the bound', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 75, max: 110, noNaN: true }),
        fc.double({ min: 15, max: 150, noNaN: true }),
        fc.constantFrom('closed', 'vented'),
        (level, cutoff, style) => {
          const volume = number('CLAIM.VOLUME', { ...claim, level, cutoff, style });
          expect(number('CLAIM.CUTOFF', { ...claim, level, volume, style }) / cutoff).toBeCloseTo(1, 9);
          expect(number('CLAIM.LEVEL', { ...claim, cutoff, volume, style })).toBeCloseTo(level, 9);
        },
      ),
      { numRuns: 30 },
    );
  });
  test('no box with an even response beats the bound by more than a hair', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.25, max: 1.2, noNaN: true }),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: 0.5, max: 1.6, noNaN: true }),
        (qes, ratio, tuning) => {
          const unit = driver({ fs: 40, qms: 1e4, qes, vas: 0.05, re: 6, sd: 0.02 });
          const efficiency = number('DRIVER.EFFICIENCY', { driver: unit });
          for (const [style, made] of [
            ['closed', box('CLOSED.BOX', { driver: unit, volume: 0.05 / ratio })],
            ['vented', box('VENTED.BOX', { driver: unit, volume: 0.05 / ratio, tuning: 40 * tuning, leakageQ: 1e4 })],
          ] as const) {
            const f3 = number('BOX.CUTOFF', { box: made });
            // A peak, or bass that sags towards 3 dB well above F3, buys a lower F3: the bound is that of Chebyshev
            // responses, which others within half a decibel were seen to pass by 2 % among 2,000 random boxes.
            const response = boxResponse.compute({ box: made }, { quantity: 'ratio' });
            if (response instanceof Problem) throw new Error('a box has a response');
            const sags =
              style === 'vented' && response.y.some((level, at) => frequencies[at]! > 1.3 * f3 && level < -0.5);
            if (sags || number('BOX.PEAK', { box: made }) > 0.5) continue;
            expect(efficiency / (f3 ** 3 * made.volume)).toBeLessThan(largestConstant(style, Infinity) * 1.05);
          }
        },
      ),
      { numRuns: 100 },
    );
  });
});
