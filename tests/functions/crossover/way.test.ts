import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { completeDriver } from '../../../functions/driver/complete-driver.ts';
import { pistonOffAxis } from '../../../functions/radiation/piston.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Way } from '../../../functions/values/way.ts';
import { input, references, type Reference } from '../../references/read.ts';
import { at, curve, network, number, points, refusal, run, way } from './run.ts';

const flat: Curve = {
  kind: 'curve',
  title: 'Flat',
  quantity: 'level',
  y: new Float64Array(577),
  phase: new Float64Array(577),
  from: 10,
  to: 40960,
};
const eight = curve('LOAD.RESISTOR', 8);
const wire = network('NETWORK.WIRE');
interface Place {
  readonly sd?: number;
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
  readonly polarity?: string;
  readonly gain?: number;
  readonly delay?: number;
}
/** A driver without sound of its own, 0 dB, behind an active slope. */
function ideal(slope: string, pass: string, frequency: number, place: Place = {}): Way {
  const { sd = 0, x, y, z, polarity, gain, delay } = place;
  const bare = way('WAY.MEASURED', flat, eight, wire, sd, x, y, z, polarity, gain, delay);
  return way('WAY.ACTIVE', bare, curve('FILTER.SLOPE', frequency, slope, pass));
}
const grid = 300;

describe('sums of two ways, tabled', () => {
  test.each(references('combining', 'sum-'))('$id', (each: Reference) => {
    const slope = each.inputs['family']!.value as string;
    // The frequency of the table is put on a point of the grid; hand-over and path scale with it.
    const stretch = frequencies[grid]! / input(each, 'f');
    const handover = input(each, 'fc') * stretch;
    const polarity = slope === 'LR2' ? 'reversed' : 'normal';
    const low = ideal(slope, 'low', handover, { z: input(each, 'extra_path_low') / stretch });
    const sum = curve('SYSTEM.LEVEL', low, ideal(slope, 'high', handover, { polarity })).y[grid]!;
    expect(Math.abs(sum - (each.expected.value as number))).toBeLessThanOrEqual(each.tolerance.absolute!);
  });
  test.each(references('combining', 'lobe-'))('$id', (each: Reference) => {
    const stretch = frequencies[grid]! / input(each, 'f');
    const half = input(each, 'spacing') / stretch / 2;
    const low = ideal('LR4', 'low', frequencies[grid]!, { y: -half });
    const high = ideal('LR4', 'high', frequencies[grid]!, { y: half });
    const level = curve('SYSTEM.OFF_AXIS', 0, (input(each, 'angle') * Math.PI) / 180, low, high).y[grid]!;
    expect(Math.abs(level - (each.expected.value as number))).toBeLessThanOrEqual(each.tolerance.absolute!);
  });
  test.each(references('combining', 'lobenull-'))('$id', (each: Reference) => {
    const stretch = frequencies[grid]! / input(each, 'f');
    const half = input(each, 'spacing') / stretch / 2;
    const ways = [
      ideal('LR4', 'low', frequencies[grid]!, { y: -half }),
      ideal('LR4', 'high', frequencies[grid]!, { y: half }),
    ];
    const level = (degrees: number): number => curve('SYSTEM.OFF_AXIS', 0, (degrees * Math.PI) / 180, ...ways).y[grid]!;
    const angle = each.expected.value as number;
    expect(level(angle)).toBeLessThan(-120);
    expect(level(angle - 1)).toBeGreaterThan(-40);
  });
});

describe('hand-overs', () => {
  test.each([
    ['LR2', 'reversed', 100],
    ['LR4', 'normal', 100],
    ['LR8', 'normal', 100],
    ['BW2', 'reversed', 100],
    // A quarter turn apart: either way the same.
    ['BW3', 'normal', 0],
    ['BW1', 'normal', 0],
  ] as const)('%s, upper way %s: reversed it is %d dB quieter at the hand-over', (slope, polarity, depth) => {
    const [low, high] = [ideal(slope, 'low', 1280), ideal(slope, 'high', 1280, { polarity })];
    expect(number('SYSTEM.HANDOVER', low, high)).toBeCloseTo(1280, 6);
    expect(number('SYSTEM.NULL_DEPTH', low, high)).toBeCloseTo(depth, 6);
    expect(Math.abs(number('SYSTEM.PHASE_GAP', low, high))).toBeCloseTo(depth === 0 ? Math.PI / 2 : 0, 9);
    expect(at(curve('SYSTEM.REVERSED', low, high), 1280)).toBeLessThan(depth === 0 ? 1e-9 : -100);
  });
  test('a delay of half a period turns LR4 into its null, and a delay undoes a depth', () => {
    const [low, high] = [ideal('LR4', 'low', 1280), ideal('LR4', 'high', 1280, { delay: 1 / 2560 })];
    expect(number('SYSTEM.NULL_DEPTH', low, high)).toBeCloseTo(-100, 6);
    const deep = ideal('LR4', 'low', 1280, { z: 0.04 });
    const late = ideal('LR4', 'high', 1280, { delay: 0.04 / soundSpeed });
    for (const index of points(10, 20_000)) expect(curve('SYSTEM.LEVEL', deep, late).y[index]).toBeCloseTo(0, 9);
  });
  test('ways that never meet are told so', () => {
    const [low, quiet] = [ideal('LR4', 'low', 500), ideal('LR4', 'high', 2000, { gain: -100 })];
    expect(refusal('SYSTEM.HANDOVER', ideal('LR4', 'high', 500), low)).toContain('equally loud nowhere');
    expect(run('SYSTEM.HANDOVER', low, quiet)).toBeTypeOf('number');
  });
});

describe('group delay', () => {
  // All-pass of second order that LR4 sums to: delay 2·(Q terms)(1 + u²)/((1 − u²)² + u²/Q²)/ω0, Q = 1/√2.
  test('LR4 has the delay of its all-pass, and shared delay comes on top', () => {
    const [f0, shared] = [1000, 0.02];
    const delay = curve(
      'SYSTEM.DELAY',
      ideal('LR4', 'low', f0, { delay: shared }),
      ideal('LR4', 'high', f0, { delay: shared }),
    );
    for (const index of points(20, 20_000)) {
      const u = frequencies[index]! / f0;
      const wanted = (2 * Math.SQRT2 * (1 + u ** 2)) / ((1 - u ** 2) ** 2 + 2 * u ** 2) / (2 * Math.PI * f0);
      expect(Math.abs(delay.y[index]! - shared - wanted)).toBeLessThan(2e-3 * wanted + 2e-9);
    }
  });
});

describe('off the axis', () => {
  test('one way alone narrows as the piston does, whichever way it is seen', () => {
    const one = ideal('BW1', 'high', 1, { sd: 0.0132 });
    const onAxis = curve('WAY.LEVEL', one);
    const piston = pistonOffAxis.compute({ sd: 0.0132, angle: Math.PI / 4 }, { quantity: 'ratio' }) as Curve;
    for (const [horizontal, vertical] of [
      [Math.PI / 4, 0],
      [-Math.PI / 4, 0],
      [0, Math.PI / 4],
    ]) {
      const seen = curve('WAY.OFF_AXIS', one, horizontal, vertical);
      for (const index of points(20, 20_000))
        if (piston.y[index]! > -59) expect(seen.y[index]! - onAxis.y[index]!).toBeCloseTo(piston.y[index]!, 6);
    }
  });
  test('mirrored places give mirrored sums', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (horizontal, vertical, offset) => {
          const pair = (side: number): Way[] => [
            ideal('LR4', 'low', 2000, { x: side * offset, y: -0.1, sd: 0.01 }),
            ideal('LR4', 'high', 2000, { y: 0.1 }),
          ];
          const right = curve('SYSTEM.OFF_AXIS', horizontal, vertical, ...pair(1));
          const left = curve('SYSTEM.OFF_AXIS', -horizontal, vertical, ...pair(-1));
          for (const index of points(100, 10_000)) expect(right.y[index]).toBeCloseTo(left.y[index]!, 6);
        },
      ),
      { numRuns: 20 },
    );
  });
  test('a sum is never louder than all its ways in step, nor off the axis than on it for one way', () => {
    const place = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    const turn = fc.double({ min: -Math.PI / 2, max: Math.PI / 2, noNaN: true });
    fc.assert(
      fc.property(place, place, place, turn, turn, (x, y, z, horizontal, vertical) => {
        const ways = [ideal('BW2', 'low', 1000, { x, y, z, sd: 0.02 }), ideal('BW2', 'high', 1000, { sd: 0.001 })];
        const sum = curve('SYSTEM.OFF_AXIS', horizontal, vertical, ...ways);
        const alone = ways.map((each) => curve('WAY.OFF_AXIS', each, horizontal, vertical));
        for (let index = 0; index < 577; index += 8) {
          const most = alone.reduce((whole, each) => whole + 10 ** (each.y[index]! / 20), 0);
          expect(10 ** (sum.y[index]! / 20)).toBeLessThanOrEqual(most * (1 + 1e-9));
          alone.forEach((each, which) =>
            expect(each.y[index]).toBeLessThanOrEqual(curve('WAY.LEVEL', ways[which]).y[index]! + 1e-9),
          );
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('what a way is made of', () => {
  const tweeter = completeDriver('T-25 A', {
    fs: 850,
    qms: 2.6,
    qes: 1.05,
    vas: 7.383e-6,
    re: 5.6,
    sd: 7e-4,
    xmax: 0.35e-3,
    le: 0.03e-3,
  });
  test('a wire leaves the level of the driver: that of its parameters, high in its band', () => {
    const bare = way('WAY.OF', { ...tweeter, le: 0 });
    expect(bare.name).toBe('T-25 A');
    expect(at(curve('WAY.LEVEL', bare), 20_000)).toBeCloseTo(90.0, 1);
    expect(at(curve('WAY.DRIVE', bare), 1000)).toBeCloseTo(0, 9);
  });
  test('gain raises, reversing turns, and nothing else changes', () => {
    const [one, louder] = [way('WAY.OF', tweeter), way('WAY.OF', tweeter, undefined, 0, 0, 0, 'reversed', 3)];
    const [a, b] = [curve('WAY.LEVEL', one), curve('WAY.LEVEL', louder)];
    for (const index of points(20, 20_000)) {
      expect(b.y[index]! - a.y[index]!).toBeCloseTo(3, 9);
      expect(Math.cos(b.phase![index]! - a.phase![index]!)).toBeCloseTo(-1, 9);
    }
  });
  // A tweeter of Fs 850 Hz, second order at 1900 Hz: the coil across it meets the hump, so that the filter falls less
  // there than into a resistance, and the travel has its maximum near the resonance, not at the hand-over.
  test('second-order high-pass on the resonance of a tweeter', () => {
    const filter = network('NETWORK.HIGH', 'LR2', 1900, 5.6);
    const effect = curve('NETWORK.LOAD_EFFECT', filter, way('WAY.OF', tweeter).impedance, 5.6);
    expect(at(effect, 850)).toBeGreaterThan(1);
    const travel = curve('WAY.TRAVEL', way('WAY.OF', tweeter, filter), 10);
    const most = travel.y.indexOf(Math.max(...travel.y));
    expect(frequencies[most]!).toBeLessThan(1300);
    const first = curve('WAY.TRAVEL', way('WAY.OF', tweeter, network('NETWORK.HIGH', 'BW1', 1900, 5.6)), 10);
    expect(Math.max(...travel.y)).toBeLessThan(Math.max(...first.y));
    for (const index of points(20, 400)) expect(travel.y[index]!).toBeLessThan(travel.y[index + 1]!);
  });
  test('a box keeps its high-pass as an active filter and leaves its series resistance to the filter', () => {
    const woofer = completeDriver('', { fs: 38, qms: 4.8, qes: 0.42, vas: 0.02852, re: 5.8, sd: 0.0132, xmax: 0.0055 });
    const box = run('CLOSED.BOX', woofer, 0.0121, 0.6);
    const plain = run('CLOSED.BOX', woofer, 0.0121);
    const filtered = run('BOX.HIGH_PASS', box, 35, 4);
    const level = curve('WAY.LEVEL', way('WAY.OF', filtered));
    const wanted = curve('BOX.LEVEL', run('BOX.HIGH_PASS', plain, 35, 4));
    for (const index of points(20, 20_000)) expect(level.y[index]).toBeCloseTo(wanted.y[index]!, 6);
    const behind = curve('WAY.LEVEL', way('WAY.OF', plain, network('NETWORK.WIRE', 0.6)));
    const sized = curve('BOX.LEVEL', box);
    for (const index of points(20, 20_000)) expect(behind.y[index]).toBeCloseTo(sized.y[index]!, 6);
  });
  test('what cannot be summed is refused with a remedy', () => {
    const { phase: _, ...silent } = flat;
    expect(refusal('WAY.MEASURED', silent, eight)).toContain('minimum phase');
    expect(refusal('WAY.MEASURED', eight, eight)).toContain('is not a level');
    expect(refusal('WAY.MEASURED', flat, flat)).toContain('not an impedance');
    expect(refusal('WAY.OF', flat)).toContain('driver or of a box');
    expect(refusal('WAY.TRAVEL', way('WAY.MEASURED', flat, eight))).toContain('WAY.OF');
    expect(refusal('SYSTEM.LEVEL')).toContain('at least one');
    expect(refusal('WAY.OF', completeDriver('', { fs: 50 }))).toContain('also needs');
    const apart = [
      way('WAY.MEASURED', { ...flat, to: 300 }, eight),
      way('WAY.MEASURED', { ...flat, from: 500 }, eight),
    ];
    expect(refusal('SYSTEM.LEVEL', ...apart)).toContain('do not meet');
  });
});

describe('ways that cannot share an amplifier', () => {
  const plain = way('WAY.MEASURED', flat, eight, wire);
  const filter = curve('FILTER.SLOPE', 1000, 'LR4', 'low');
  test.each([
    ['active filter', way('WAY.ACTIVE', plain, filter)],
    ['delay', { ...plain, delay: 1e-4 }],
  ])('their load is refused: %s', (_, other) => {
    expect(refusal('SYSTEM.IMPEDANCE', plain, other)).toContain('an amplifier of its own');
    expect(at(curve('SYSTEM.IMPEDANCE', other), 1000)).toBeCloseTo(8, 12);
  });
  test('a gain may stand for the loss of a cabinet and is let through', () => {
    expect(at(curve('SYSTEM.IMPEDANCE', plain, { ...plain, gain: -3 }), 1000)).toBeCloseTo(4, 12);
  });
  test('one active filter ahead of all of them is no such difference', () => {
    const both = [way('WAY.ACTIVE', plain, filter), way('WAY.ACTIVE', plain, filter)];
    expect(at(curve('SYSTEM.IMPEDANCE', ...both), 1000)).toBeCloseTo(4, 12);
  });
});
