import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  loadHandover,
  loadLowest,
  loadLowestAt,
  loadParallel,
  loadSeries,
} from '../../../functions/electrical/load.ts';
import { padImpedance, padInput, padLoss, padSeries, padShunt, padSingle } from '../../../functions/electrical/pad.ts';
import { preferred } from '../../../functions/electrical/preferred.ts';
import { standardAbove, standardBelow, standardNearest } from '../../../functions/electrical/standard.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { agrees, input, references } from '../../references/read.ts';

const plain = { quantity: 'ratio' } as const;
const ohms = (title: string, z: (frequency: number) => readonly [number, number]): Curve => ({
  kind: 'curve',
  title,
  quantity: 'resistance',
  y: frequencies.map((f) => Math.hypot(...z(f))),
  phase: frequencies.map((f) => Math.atan2(z(f)[1], z(f)[0])),
  from: 10,
  to: 40960,
});

describe('pads', () => {
  test.each([...references('pads-and-loads', 'lpad-rs'), ...references('pads-and-loads', 'pub-lpad8-6').slice(0, 1)])(
    'series, $id',
    (each) => agrees(padSeries.compute({ loss: input(each, 'A'), ohms: input(each, 'Z') }, plain), each),
  );
  test.each([...references('pads-and-loads', 'lpad-rp'), ...references('pads-and-loads', 'pub-lpad8-6p')])(
    'shunt, $id',
    (each) => agrees(padShunt.compute({ loss: input(each, 'A'), ohms: input(each, 'Z') }, plain), each),
  );
  test.each(references('pads-and-loads', 'ser-'))('single, $id', (each) =>
    agrees(padSingle.compute({ loss: input(each, 'A'), ohms: input(each, 'Z') }, plain), each),
  );
  test.each([...references('pads-and-loads', 'gen-att-'), ...references('pads-and-loads', 'gen-z-')])('$id', (each) => {
    const given = { series: input(each, 'Rs'), shunt: input(each, 'Rp'), ohms: input(each, 'Zdriver') };
    agrees((each.id.startsWith('gen-z') ? padInput : padLoss).compute(given, plain), each);
  });
  test('5.3 dB on 6.1 Ω, rounded to E12', () => {
    const given = { series: 2.7, shunt: 6.8, ohms: 6.1 };
    expect(padLoss.compute(given, plain)).toBeCloseTo(5.29, 2);
    expect(padInput.compute(given, plain)).toBeCloseTo(5.92, 2);
    expect(padSingle.compute({ loss: 5.3, ohms: 6.1 }, plain)).toBeCloseTo(5.1, 1);
  });
  test('a pad as designed has its loss and keeps its load', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (loss, z) => {
          const series = padSeries.compute({ loss, ohms: z }, plain) as number;
          const shunt = padShunt.compute({ loss, ohms: z }, plain) as number;
          expect(padLoss.compute({ series, shunt, ohms: z }, plain)).toBeCloseTo(loss, 8);
          expect((padInput.compute({ series, shunt, ohms: z }, plain) as number) / z).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  test('a pad cannot raise a driver', () => {
    for (const each of [padSeries, padShunt, padSingle])
      expect(each.compute({ loss: -1, ohms: 8 }, plain)).toBeInstanceOf(Problem);
    expect(padShunt.compute({ loss: 0, ohms: 8 }, plain)).toBeInstanceOf(Problem);
  });
});

describe('loads', () => {
  const coil = ohms('R and L', (f) => [6, 2 * Math.PI * f * 0.5e-3]);
  const capacitor = ohms('R and C', (f) => [4, -1 / (2 * Math.PI * f * 20e-6)]);
  test('R+L in parallel with R+C is constant when R² = L/C', () => {
    const r = Math.sqrt(0.5e-3 / 20e-6);
    const both = loadParallel.compute(
      {
        curves: [
          ohms('a', (f) => [r, 2 * Math.PI * f * 0.5e-3]),
          ohms('b', (f) => [r, -1 / (2 * Math.PI * f * 20e-6)]),
        ],
      },
      plain,
    ) as Curve;
    for (const value of both.y) expect(value).toBeCloseTo(r, 9);
  });
  test('R, L and C in series are lowest at resonance', () => {
    const both = loadSeries.compute({ curves: [coil, capacitor] }, plain) as Curve;
    const given = { curve: both, from: 20, to: 20000 };
    expect(loadLowest.compute(given, plain)).toBeCloseTo(10, 2);
    const resonance = 1 / (2 * Math.PI * Math.sqrt(0.5e-3 * 20e-6));
    expect((loadLowestAt.compute(given, plain) as number) / resonance).toBeCloseTo(1, 3);
  });
  test('a pad on a coil, and that across a capacitor, as a circuit simulator sees it', async () => {
    const { Simulation } = await import('eecircuit-engine');
    const simulation = new Simulation();
    await simulation.start();
    simulation.setNetList(
      [
        'pad',
        'i1 0 1 dc 0 ac 1',
        'r1 1 2 2.7',
        'r2 2 0 6.8',
        'r3 2 3 6',
        'l1 3 0 0.5m',
        'r4 1 4 4',
        'c1 4 0 20u',
        '.ac dec 1 100 10k',
        '.end',
      ].join('\n'),
    );
    const result = await simulation.runSim();
    if (result.dataType !== 'complex') throw new Error('the simulator gave no complex result');
    const at = result.data.find((each) => each.type === 'frequency')!.values.map((value) => value.real);
    const across = result.data.find((each) => each.name.toLowerCase() === 'v(1)')!.values;
    const padded = padImpedance.compute({ curve: coil, series: 2.7, shunt: 6.8 }, plain) as Curve;
    const load = loadParallel.compute({ curves: [padded, capacitor] }, plain) as Curve;
    expect(at.length).toBeGreaterThanOrEqual(3);
    for (const [index, frequency] of at.entries()) {
      const place = 48 * Math.log2(frequency / 10);
      const low = Math.floor(place);
      const ours = load.y[low]! + (place - low) * (load.y[low + 1]! - load.y[low]!);
      expect(ours / Math.hypot(across[index]!.real, across[index]!.img)).toBeCloseTo(1, 3);
    }
  });
  test('hand-over takes the woofer below and the tweeter above', () => {
    const load = loadHandover.compute({ low: coil, high: capacitor, frequency: 1000 }, plain) as Curve;
    expect(load.y[0]).toBe(coil.y[0]);
    expect(load.y.at(-1)).toBe(capacitor.y.at(-1));
  });
  test('curves without phase, and curves of another kind, are refused', () => {
    const { phase: _, ...bare } = coil;
    expect(loadParallel.compute({ curves: [bare] }, plain)).toBeInstanceOf(Problem);
    expect(loadSeries.compute({ curves: [] }, plain)).toBeInstanceOf(Problem);
    expect(loadLowest.compute({ curve: { ...coil, quantity: 'level' }, from: 20, to: 20000 }, plain)).toBeInstanceOf(
      Problem,
    );
    expect(loadLowest.compute({ curve: coil, from: 200, to: 20 }, plain)).toBeInstanceOf(Problem);
    const short = { ...coil, y: new Float64Array(coil.y.length) };
    expect(loadLowest.compute({ curve: short, from: 20, to: 20000 }, plain)).toBeInstanceOf(Problem);
  });
});

describe('standard values', () => {
  test.each(references('e-series', 'E'))('all of $id', (each) => {
    const printed = each.expected.value as readonly number[];
    const scale = printed[0]!;
    expect(preferred[each.id as keyof typeof preferred].map((number) => Math.round(number * scale))).toEqual(printed);
  });
  test.each(references('e-series', 'near-'))('$id', (each) => {
    agrees(standardNearest.compute({ value: input(each, 'x'), series: each.id.split('-')[1] as 'E12' }, plain), each);
  });
  test('E48 is every second value of E96', () => {
    expect(preferred.E48).toEqual(preferred.E96.filter((_, index) => index % 2 === 0));
    expect(preferred.E3).toEqual([1, 2.2, 4.7]);
  });
  test('below and above enclose the value, nearest is one of them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-14, max: 1e14, noNaN: true }),
        fc.constantFrom('E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'),
        (value, series) => {
          const below = standardBelow.compute({ value, series }, plain) as number;
          const above = standardAbove.compute({ value, series }, plain) as number;
          expect(below).toBeLessThanOrEqual(value * (1 + 1e-8));
          expect(above).toBeGreaterThanOrEqual(value * (1 - 1e-8));
          expect([below, above]).toContain(standardNearest.compute({ value, series }, plain));
        },
      ),
    );
  });
});
