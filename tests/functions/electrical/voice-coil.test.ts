import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inputImpedance } from '../../../functions/crossover/ladder.ts';
import {
  flattenCapacitor,
  flattenNetwork,
  flattenResistor,
  trapCapacitor,
  trapCoil,
  trapNetwork,
  trapResistor,
} from '../../../functions/electrical/flatten.ts';
import {
  impedanceCoil,
  impedanceCoils,
  impedanceEmpirical,
  impedanceLossy,
} from '../../../functions/electrical/voice-coil.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Network } from '../../../functions/values/network.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { agrees, input, references } from '../../references/read.ts';
import { ohmsCurve, simulate } from './circuit.ts';

const plain = { quantity: 'ratio' } as const;
const degrees = (radians: number): number => (radians * 180) / Math.PI;
/** A grid point is put on the frequency of the reference by quoting the inductance elsewhere: the law is a power. */
const place = 288;
const onGrid = frequencies[place]!;

describe('lossy inductance', () => {
  test.each(references('pads-and-loads', 'semi-'))('$id', (each) => {
    const [k, n, f] = [input(each, 'K'), input(each, 'n'), input(each, 'f')];
    // The same ohms at the grid point as the reference has at its own frequency.
    const at = onGrid;
    const le = (k * (2 * Math.PI * f) ** n * Math.sin((n * Math.PI) / 2)) / (2 * Math.PI * at);
    const curve = impedanceCoil.compute({ re: input(each, 'Re'), le, exponent: n, at }, plain) as Curve;
    agrees(each.id.startsWith('semi-mag') ? curve.y[place] : degrees(curve.phase![place]!), each);
  });
  test.each(references('pads-and-loads', 'l2r2'))('$id', (each) => {
    const scale = input(each, 'f') / onGrid;
    const given = { re: input(each, 'Re'), le: input(each, 'Le') * scale, le2: input(each, 'L2') * scale };
    const curve = impedanceCoils.compute({ ...given, re2: input(each, 'R2') }, plain) as Curve;
    agrees(curve.y[place], each);
  });
  test('exponent 1 is the ideal coil, ½ has as much resistance as reactance', () => {
    const ideal = impedanceCoil.compute({ re: 6, le: 0.5e-3, exponent: 1, at: 1000 }, plain) as Curve;
    const half = impedanceCoil.compute({ re: 0.001, le: 0.5e-3, exponent: 0.5, at: 1000 }, plain) as Curve;
    frequencies.forEach((f, index) => {
      expect(ideal.y[index]).toBeCloseTo(Math.hypot(6, 2 * Math.PI * f * 0.5e-3), 9);
      expect(Math.abs(degrees(half.phase![index]!) - 45)).toBeLessThan(0.1);
    });
  });
  test('the empirical model holds the other one', () => {
    const n = 0.65;
    const x = 2 * Math.PI * 1000 * 0.5e-3;
    const given = { resistance: x / Math.tan((n * Math.PI) / 2), resistanceExponent: n, reactance: x };
    const one = impedanceEmpirical.compute({ re: 6, ...given, reactanceExponent: n }, plain) as Curve;
    const other = impedanceCoil.compute({ re: 6, le: 0.5e-3, exponent: n, at: 1000 }, plain) as Curve;
    one.y.forEach((ohms, index) => expect(ohms / other.y[index]!).toBeCloseTo(1, 9));
  });
  test('the two coils in a circuit simulator', async () => {
    const found = await simulate(
      ['i1 0 1 dc 0 ac 1', 'r1 1 2 6.1', 'l1 2 3 0.7m', 'l2 3 0 0.9m', 'r2 3 0 4.5'],
      `lin 1 ${onGrid} ${onGrid}`,
    );
    const { re, im } = found.of('v(1)')[0]!;
    const ours = impedanceCoils.compute({ re: 6.1, le: 0.7e-3, le2: 0.9e-3, re2: 4.5 }, plain) as Curve;
    expect(Math.abs(20 * Math.log10(ours.y[place]! / Math.hypot(re, im)))).toBeLessThan(0.01);
    expect(Math.abs(degrees(ours.phase![place]! - Math.atan2(im, re)))).toBeLessThan(0.1);
  });
  test('in the place of the ideal coil: nothing changes with exponent 1, resistance never below the given', () => {
    const driver = ohmsCurve((f) => [5.8 + 20 / (1 + (f / 40 - 40 / f) ** 2), 2 * Math.PI * f * 0.5e-3]);
    const same = impedanceLossy.compute({ curve: driver, le: 0.5e-3, exponent: 1, at: 1000 }, plain) as Curve;
    same.y.forEach((ohms, index) => expect(ohms / driver.y[index]!).toBeCloseTo(1, 9));
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 0.99, noNaN: true }), (exponent) => {
        const lossy = impedanceLossy.compute({ curve: driver, le: 0.5e-3, exponent, at: 1000 }, plain) as Curve;
        expect(lossy.y.at(-1)!).toBeLessThan(driver.y.at(-1)!);
        for (const index of [0, 200, 400, 576])
          expect(lossy.y[index]! * Math.cos(lossy.phase![index]!)).toBeGreaterThanOrEqual(5.8);
      }),
    );
    const { phase: _, ...bare } = driver;
    expect(impedanceLossy.compute({ curve: bare, le: 1e-3, exponent: 0.7, at: 1000 }, plain)).toBeInstanceOf(Problem);
  });
});

describe('flattening', () => {
  test.each(references('pads-and-loads', 'zob-c'))('$id', (each) =>
    agrees(flattenCapacitor.compute({ re: input(each, 'Re'), le: input(each, 'Le'), factor: 1 }, plain), each),
  );
  test.each(references('pads-and-loads', 'pub-zob'))('$id', (each) =>
    agrees(flattenCapacitor.compute({ re: input(each, 'Re'), le: input(each, 'Le'), factor: 1.25 }, plain), each),
  );
  test.each(references('pads-and-loads', 'zob-125'))('$id', (each) => {
    // Frequencies and inductance scaled together, so that the reference lies on a point of the grid.
    const le = (input(each, 'Le') * input(each, 'f')) / onGrid;
    const network = flattenNetwork.compute({ re: input(each, 'Re'), le, factor: 1.25 }, plain) as Network;
    const driver = ohmsCurve((f) => [input(each, 'Re'), 2 * Math.PI * f * le]);
    agrees(inputImpedance(network, driver).y[place], each);
  });
  test('an ideal coil becomes a plain resistor', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 1e-5, max: 5e-3, noNaN: true }),
        (re, le) => {
          const network = flattenNetwork.compute({ re, le, factor: 1 }, plain) as Network;
          const flat = inputImpedance(
            network,
            ohmsCurve((f) => [re, 2 * Math.PI * f * le]),
          );
          for (const index of [0, 100, 300, 500, 576]) {
            expect(flat.y[index]! / re).toBeCloseTo(1, 9);
            expect(flat.phase![index]).toBeCloseTo(0, 9);
          }
          expect(flattenResistor.compute({ re, factor: 1 }, plain)).toBe(re);
        },
      ),
      { numRuns: 25 },
    );
  });
  test.each(references('pads-and-loads', 'trap-'))('$id', (each) => {
    const given = { fs: input(each, 'fs'), qms: input(each, 'Qms'), qes: input(each, 'Qes'), re: input(each, 'Re') };
    const part = each.id.split('-')[1]!;
    const network = trapNetwork.compute({ ...given, coilResistance: 0.7 }, plain) as Network;
    const driver = ohmsCurve((f) => {
      const [s, x] = [f / given.fs, given.re / given.qes];
      const size = (1 - s * s) ** 2 + (s / given.qms) ** 2;
      return [given.re + (x * s * s) / given.qms / size, (x * s * (1 - s * s)) / size];
    });
    const found: Record<string, unknown> = {
      R: trapResistor.compute(given, plain),
      L: trapCoil.compute(given, plain),
      C: trapCapacitor.compute(given, plain),
      z: Math.max(...inputImpedance(network, driver).y),
    };
    agrees(found[part], each);
    if (part === 'z') for (const ohms of inputImpedance(network, driver).y) expect(ohms / given.re).toBeCloseTo(1, 9);
  });
  test('trap and flattening on a driver with both, in a circuit simulator', async () => {
    const angular = 2 * Math.PI * 936;
    const [re, qes, qms] = [5.1, 1.2, 4.4];
    const flat = flattenNetwork.compute({ re, le: 35e-6, factor: 1 }, plain) as Network;
    const trap = trapNetwork.compute({ fs: 936, qms, qes, re, coilResistance: 0.7 }, plain) as Network;
    const [{ resistance: rz, capacitance: cz }] = flat.legs as unknown as [{ resistance: number; capacitance: number }];
    const { resistance, inductance, capacitance } = trap.legs[0] as Required<Network['legs'][number]>;
    const tank = { r: (re * qms) / qes, l: re / (qes * angular), c: qes / (angular * re) };
    const found = await simulate(
      [
        'i1 0 1 dc 0 ac 1',
        `r1 1 2 ${re}`,
        'l1 2 3 35u',
        `r2 3 0 ${tank.r}`,
        `l2 3 0 ${tank.l}`,
        `c2 3 0 ${tank.c}`,
        `rz 1 4 ${rz}`,
        `cz 4 0 ${cz}`,
        `rt 1 5 ${resistance}`,
        `lt 5 6 ${inductance}`,
        'rl 6 7 0.7',
        `ct 7 0 ${capacitance}`,
      ],
      'dec 12 20 20k',
    );
    for (const [index, f] of found.frequency.entries()) {
      const w = 2 * Math.PI * f;
      const [g, b] = [1 / tank.r, w * tank.c - 1 / (w * tank.l)];
      const driver = (): readonly [number, number] => [re + g / (g * g + b * b), w * 35e-6 - b / (g * g + b * b)];
      // One grid point after another would be interpolated; scaling all reactances puts this frequency on the grid.
      const scale = f / onGrid;
      const legs = [...flat.legs, ...trap.legs].map((leg) => ({
        ...leg,
        ...(leg.inductance !== undefined && { inductance: leg.inductance * scale }),
        ...(leg.capacitance !== undefined && { capacitance: leg.capacitance * scale }),
      }));
      const whole = inputImpedance({ kind: 'network', name: '', legs }, ohmsCurve(driver));
      const theirs = found.of('v(1)')[index]!;
      expect(Math.abs(20 * Math.log10(whole.y[place]! / Math.hypot(theirs.re, theirs.im)))).toBeLessThan(0.01);
      expect(Math.abs(degrees(whole.phase![place]! - Math.atan2(theirs.im, theirs.re)))).toBeLessThan(0.1);
    }
  });
  test('a coil with more resistance than the branch may have is refused', () => {
    const given = { fs: 936, qms: 4.4, qes: 1.2, re: 5.1, coilResistance: 7 };
    expect(trapNetwork.compute(given, plain)).toBeInstanceOf(Problem);
  });
});
