import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkCurve,
  checkMass,
  checkOhms,
  checkSymmetry,
  gateLimit,
  nearOffset,
} from '../../../functions/measure/checks.ts';
import { measureLevel } from '../../../functions/measure/curves.ts';
import { driverImpedanceAt, fitSweep, peakOf } from '../../../functions/measure/fit-sweep.ts';
import { type Measured } from '../../../functions/measure/read-table.ts';
import {
  measureMass,
  measureQes,
  measureQms,
  measureQts,
  measureVas,
} from '../../../functions/measure/three-points.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { agrees, input, references, type Reference } from '../../references/read.ts';
import { simulate } from '../electrical/circuit.ts';

const plain = { quantity: 'ratio' } as const;
const points = Array.from({ length: 120 }, (_, index) => 10 * 1000 ** (index / 119));

describe('three points and known masses and boxes', () => {
  const given = (each: Reference) => ({
    re: input(each, 'Re'),
    zmax: input(each, 'Zmax'),
    fs: input(each, 'fs'),
    f1: input(each, 'f1'),
    f2: input(each, 'f2'),
  });
  test.each([
    ...references('ts-extraction', 'Qms'),
    ...references('ts-extraction', 'Qes'),
    ...references('ts-extraction', 'Qts'),
  ])('$id', (each) => {
    const by = { Qms: measureQms, Qes: measureQes, Qts: measureQts }[each.id.slice(0, 3)]!;
    agrees(by.compute(given(each), plain), each);
  });
  test.each(references('ts-extraction', 'f1-'))('$id, read from a fine sweep', (each) => {
    const of = {
      re: input(each, 'Re'),
      fs: input(each, 'fs'),
      qms: input(each, 'Qms'),
      qes: input(each, 'Qes'),
      le: 0,
      exponent: 1,
    };
    const frequency = Array.from({ length: 20001 }, (_, index) => of.fs * 4 ** (index / 10000 - 1));
    const value = frequency.map((f) => {
      const z = driverImpedanceAt(of, f);
      return Math.hypot(z.re, z.im);
    });
    const peak = peakOf({ frequency, value }, of.re);
    if (peak instanceof Problem) throw new Error('no peak');
    agrees(peak.below, each);
    expect(Math.sqrt(peak.below! * peak.above!) / of.fs).toBeCloseTo(1, 6);
  });
  test.each(references('ts-extraction', 'mass-'))('$id', (each) =>
    agrees(
      measureMass.compute(
        { fs: input(each, 'fs'), loaded: input(each, 'fs_loaded'), added: input(each, 'added') },
        plain,
      ),
      each,
    ),
  );
  test.each(references('ts-extraction', 'vol'))('$id', (each) => {
    const q = each.id.startsWith('vol2') ? {} : { qes: input(each, 'Qes'), qec: input(each, 'Qec') };
    const box = {
      fs: input(each, 'fs'),
      fc: input(each, 'fc'),
      volume: input(each, 'Vb'),
      qes: undefined,
      qec: undefined,
    };
    agrees(measureVas.compute({ ...box, ...q }, plain), each);
  });
  // Invented woofer: Zmax 72.1 Ω, 26.53 Hz, 54.44 Hz, 10 g to 29.51 Hz; a reading 1 Hz high makes 18.1 g.
  test('the bench example', () => {
    const woofer = { re: 5.8, zmax: 72.1, fs: 38, f1: 26.53, f2: 54.44 };
    expect(measureQms.compute(woofer, plain)).toBeCloseTo(4.8, 2);
    expect(measureQes.compute(woofer, plain)).toBeCloseTo(0.42, 2);
    expect(measureMass.compute({ fs: 38, loaded: 29.51, added: 0.01 }, plain)).toBeCloseTo(0.0152, 4);
    expect(measureMass.compute({ fs: 38, loaded: 30.51, added: 0.01 }, plain)).toBeCloseTo(0.0181, 4);
  });
  test('what cannot be is refused', () => {
    expect(measureQms.compute({ re: 6, zmax: 5, fs: 40, f1: 30, f2: 50 }, plain)).toBeInstanceOf(Problem);
    expect(measureQms.compute({ re: 6, zmax: 50, fs: 40, f1: 45, f2: 50 }, plain)).toBeInstanceOf(Problem);
    expect(measureMass.compute({ fs: 40, loaded: 41, added: 0.01 }, plain)).toBeInstanceOf(Problem);
    const box = { fs: 40, volume: 0.01, qes: undefined, qec: undefined };
    expect(measureVas.compute({ ...box, fc: 39 }, plain)).toBeInstanceOf(Problem);
    expect(measureVas.compute({ ...box, fc: 70, qes: 0.4 }, plain)).toBeInstanceOf(Problem);
  });
});

describe('a whole sweep', () => {
  const sweepOf = (
    of: Parameters<typeof driverImpedanceAt>[0],
    noise: (index: number) => number,
    phase: boolean,
  ): Measured => {
    const z = points.map((f) => driverImpedanceAt(of, f));
    return {
      frequency: points,
      value: z.map(({ re, im }, index) => Math.hypot(re, im) * (1 + noise(index))),
      ...(phase && { degrees: z.map(({ re, im }) => (Math.atan2(im, re) * 180) / Math.PI) }),
    };
  };
  test.each([true, false])('gives back what it was made of, phases: %s', (phase) => {
    fc.assert(
      fc.property(
        fc.record({
          re: fc.double({ min: 3, max: 8, noNaN: true }),
          fs: fc.double({ min: 25, max: 120, noNaN: true }),
          qms: fc.double({ min: 1.5, max: 10, noNaN: true }),
          qes: fc.double({ min: 0.25, max: 1.2, noNaN: true }),
          le: fc.double({ min: 1e-4, max: 1.5e-3, noNaN: true }),
          exponent: fc.double({ min: 0.55, max: 0.95, noNaN: true }),
        }),
        (of) => {
          const fit = fitSweep(
            sweepOf(of, () => 0, phase),
            undefined,
          );
          if (fit instanceof Problem) throw new Error(fit.message.map(String).join(''));
          for (const key of ['re', 'fs', 'qms', 'qes', 'le', 'exponent'] as const)
            expect(fit.found[key] / of[key], key).toBeCloseTo(1, 5);
        },
      ),
      { numRuns: 12 },
    );
  });
  test('with scatter of 2 % the truth lies within four of the error bars, and they are not idle', () => {
    const of = { re: 5.8, fs: 38, qms: 4.8, qes: 0.42, le: 0.5e-3, exponent: 0.7 };
    let seed = 7;
    const noise = (): number => {
      seed = (seed * 16807) % 2147483647;
      return 0.02 * Math.sqrt(12) * (seed / 2147483647 - 0.5);
    };
    const fit = fitSweep(sweepOf(of, noise, false), undefined);
    if (fit instanceof Problem) throw new Error('no fit');
    for (const key of ['re', 'fs', 'qms', 'qes', 'le'] as const) {
      expect(Math.abs(fit.found[key] - of[key]), key).toBeLessThan(4 * fit.errors[key]);
      expect(fit.errors[key] / of[key], key).toBeLessThan(0.1);
    }
    expect(fit.residual).toBeGreaterThan(0.015);
    expect(fit.residual).toBeLessThan(0.025);
  });
  test('a driver of masses and springs in a circuit simulator', async () => {
    const found = await simulate(
      [
        'v1 1 0 dc 0 ac 1',
        'r1 1 2 5.7',
        'l1 2 3 0.62m',
        'vi 3 4 0',
        'hb 4 0 vv 7.3',
        'hf m1 0 vi 7.3',
        'lm m1 m2 0.0158',
        'cm m2 m3 0.00092',
        'rm m3 m4 1.35',
        'vv m4 0 0',
      ],
      'dec 40 10 10k',
    );
    const current = found.of('i(vi)');
    const fit = fitSweep(
      {
        frequency: found.frequency,
        value: current.map(({ re, im }) => 1 / Math.hypot(re, im)),
        degrees: current.map(({ re, im }) => (-Math.atan2(im, re) * 180) / Math.PI),
      },
      undefined,
    );
    if (fit instanceof Problem) throw new Error('no fit');
    const angular = 1 / Math.sqrt(0.0158 * 0.00092);
    expect(fit.found.fs / (angular / (2 * Math.PI))).toBeCloseTo(1, 4);
    expect(fit.found.qms / ((angular * 0.0158) / 1.35)).toBeCloseTo(1, 4);
    expect(fit.found.qes / ((angular * 0.0158 * 5.7) / 7.3 ** 2)).toBeCloseTo(1, 4);
    expect(fit.found.le / 0.62e-3).toBeCloseTo(1, 3);
  });
  test('a line without a hump, and too few points, are refused', () => {
    const value = points.map((f) => 6 + f / 1000);
    expect(fitSweep({ frequency: points, value }, 6)).toBeInstanceOf(Problem);
    expect(fitSweep({ frequency: [10, 20, 30], value: [6, 30, 6] }, 6)).toBeInstanceOf(Problem);
  });
});

describe('gates', () => {
  const status = (verdict: unknown): string => (verdict as Verdict).status;
  test('symmetry, mass, ohms and curve', () => {
    const even = { fs: 38, f1: 26.53, f2: 54.44, most: 0.02 };
    expect(status(checkSymmetry.compute(even, plain))).toBe('good');
    expect(status(checkSymmetry.compute({ ...even, f2: 58 }, plain))).toBe('caution');
    const mass = { fs: 38, least: 0.15, most: 0.4 };
    expect([29.51, 36, 20].map((loaded) => status(checkMass.compute({ ...mass, loaded }, plain)))).toEqual([
      'good',
      'caution',
      'caution',
    ]);
    expect(status(checkOhms.compute({ fitted: 6, meter: 5.8, most: 0.03 }, plain))).toBe('caution');
    const curve = measureLevel.compute(
      {
        rows: [
          [100, 90],
          [1000, 90],
        ],
        title: 'x',
        phase: 'degrees',
      },
      plain,
    ) as Curve;
    expect(status(checkCurve.compute({ curve, from: 50, to: 500 }, plain))).toBe('fail');
    expect(status(checkCurve.compute({ curve, from: 100, to: 500 }, plain))).toBe('caution');
  });
  test('a window tells nothing between nought and one over its length: there a sine has its first null in it', () => {
    const window = 0.004;
    const limit = gateLimit.compute({ window }, plain) as number;
    const seen = (frequency: number): number => {
      let [re, im] = [0, 0];
      for (let step = 0; step < 4000; step += 1) {
        const angle = (2 * Math.PI * frequency * window * (step + 0.5)) / 4000;
        re += Math.cos(angle) / 4000;
        im += Math.sin(angle) / 4000;
      }
      return Math.hypot(re, im);
    };
    expect(seen(limit)).toBeLessThan(1e-9);
    for (let share = 0.05; share < 1; share += 0.05) expect(seen(share * limit)).toBeGreaterThan(0.05);
  });
  test('near and far pressure of a small piston: ρcU against k·ρc·U·a²/(2r)', () => {
    const [a, r, k] = [0.06, 1, 0.5];
    // On the axis of a piston in a wall |p| = 2ρcU·sin(k/2·(√(z² + a²) − z)).
    const on = (z: number): number => 2 * Math.abs(Math.sin((k / 2) * (Math.hypot(z, a) - z)));
    expect(nearOffset.compute({ sd: Math.PI * a * a, distance: r }, plain)).toBeCloseTo(
      20 * Math.log10(on(r) / on(0)),
      1,
    );
  });
});
