import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { padDrive, padHeat } from '../../../functions/electrical/pad-heat.ts';
import {
  padPairs,
  padPairsAt,
  padStandardSeries,
  padStandardShunt,
} from '../../../functions/electrical/pad-standard.ts';
import { padImpedance, padLoss, padResponse, padSeries, padShunt } from '../../../functions/electrical/pad.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { agrees, input, references } from '../../references/read.ts';
import { ohmsCurve, simulate } from './circuit.ts';

const plain = { quantity: 'ratio' } as const;
const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const heat = (part: 'series' | 'shunt' | 'driver', given: Record<string, number>): number =>
  padHeat.compute({ volts: 0, series: 0, shunt: 1, ohms: 1, phase: 0, ...given, part }, plain) as number;

describe('heat', () => {
  test.each(references('pads-and-loads', 'lpad-p'))('$id', (each) => {
    const given = { loss: input(each, 'A'), ohms: input(each, 'Z') };
    const parts = { 'lpad-ps': 'series', 'lpad-pp': 'shunt', 'lpad-pd': 'driver' } as const;
    const pad = {
      // The pad keeps the load, so that the whole takes its power on the ohms of the driver.
      volts: Math.sqrt(input(each, 'Pin') * given.ohms),
      series: padSeries.compute(given, plain) as number,
      shunt: padShunt.compute(given, plain) as number,
      ohms: given.ohms,
    };
    agrees(heat(parts[each.id.slice(0, 7) as keyof typeof parts], pad), each);
  });
  // Invented loudspeaker, worked out beforehand: 2.7 Ω and 6.8 Ω before 6.1 Ω, 100 W into 8 Ω.
  test.each([
    [12, 0.15, 1.17, 0.66, 0.73],
    [10 * Math.log10(2), 0.25, 15.5, 8.7, 9.7],
  ] as const)('with a crest of %d dB and a share of %d', (crest, share, series, shunt, driver) => {
    const volts = padDrive.compute({ power: 100, ohms: 8, crest, share }, plain) as number;
    const pad = { volts, series: 2.7, shunt: 6.8, ohms: 6.1 };
    expect(Math.abs(heat('series', pad) / series - 1)).toBeLessThan(0.01);
    expect(Math.abs(heat('shunt', pad) / shunt - 1)).toBeLessThan(0.01);
    expect(Math.abs(heat('driver', pad) / driver - 1)).toBeLessThan(0.01);
  });
  test('the parts share the whole power, whatever the phase', () => {
    const given = {
      volts: positive(0.01, 100),
      series: positive(0, 100),
      shunt: positive(0.1, 1000),
      ohms: positive(0.1, 100),
      phase: positive(-Math.PI / 2, Math.PI / 2),
    };
    fc.assert(
      fc.property(fc.record(given), (pad) => {
        const parts = (['series', 'shunt', 'driver'] as const).map((part) => heat(part, pad));
        const y = { re: 1 / pad.shunt + Math.cos(pad.phase) / pad.ohms, im: -Math.sin(pad.phase) / pad.ohms };
        const size = y.re ** 2 + y.im ** 2;
        const z = { re: pad.series + y.re / size, im: -y.im / size };
        const whole = (pad.volts ** 2 * z.re) / (z.re ** 2 + z.im ** 2);
        expect(parts[0]! + parts[1]! + parts[2]!).toBeCloseTo(whole, 6);
        expect(Math.min(...parts)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('standard pairs', () => {
  const rows = (table: unknown): TableRecord['rows'] => (table as TableRecord).rows;
  test('5.3 dB on 6.1 Ω in E12 is 2.7 Ω and 6.8 Ω: 5.29 dB, 5.92 Ω', () => {
    const given = { loss: 5.3, ohms: 6.1, numbers: 'E12' } as const;
    const first = rows(padPairs.compute({ ...given, count: 4 }, plain))[0] as number[];
    expect(first.slice(0, 2)).toEqual([2.7, 6.8]);
    expect(first[2]).toBeCloseTo(5.29, 2);
    expect(first[3]).toBeCloseTo(5.92, 2);
    expect(padStandardSeries.compute(given, plain)).toBe(2.7);
    expect(padStandardShunt.compute(given, plain)).toBe(6.8);
  });
  test('5.3 dB on the printed 8 Ω leads to 3.9 Ω and 10 Ω, which lose 6.15 dB on 6.1 Ω', () => {
    const given = { loss: 5.3, ohms: 8, numbers: 'E12' } as const;
    const candidates = rows(padPairs.compute({ ...given, count: 4 }, plain)).map((row) => row.slice(0, 2));
    expect(candidates).toContainEqual([3.9, 10]);
    expect(padLoss.compute({ series: 3.9, shunt: 10, ohms: 6.1 }, plain)).toBeCloseTo(6.15, 2);
  });
  test('no pair of the series within a wide range is nearer: searched one by one', () => {
    const e12 = [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2];
    const all = [-2, -1, 0, 1, 2, 3].flatMap((power) => e12.map((each) => each * 10 ** power));
    fc.assert(
      fc.property(positive(0.5, 20), positive(2, 20), (loss, ohms) => {
        const found = rows(padPairs.compute({ loss, ohms, numbers: 'E12', count: 1 }, plain))[0] as number[];
        const off = (series: number, shunt: number): number => {
          const behind = (shunt * ohms) / (shunt + ohms);
          return Math.hypot(
            20 * Math.log10((series + behind) / behind) - loss,
            20 * Math.log10((series + behind) / ohms),
          );
        };
        const least = Math.min(...all.flatMap((series) => all.map((shunt) => off(series, shunt))));
        expect(found[4]).toBeCloseTo(least, 9);
      }),
      { numRuns: 60 },
    );
  });
  test('on a curve the phase counts', () => {
    const driver = ohmsCurve((f) => [5.6, 2 * Math.PI * f * 0.3e-3]);
    const given = { loss: 4, curve: driver, frequency: 3000, numbers: 'E24', count: 3 } as const;
    const [series, shunt, loss] = rows(padPairsAt.compute(given, plain))[0] as number[];
    const response = padResponse.compute({ curve: driver, series: series!, shunt }, plain) as Curve;
    const at = 48 * Math.log2(300);
    const low = Math.floor(at);
    const read = response.y[low]! + (at - low) * (response.y[low + 1]! - response.y[low]!);
    expect(-read).toBeCloseTo(loss!, 3);
    expect(Math.abs(loss! - 4)).toBeLessThan(0.3);
  });
  test('a pad cannot raise a driver, and without a loss there is none', () => {
    for (const loss of [-1, 0])
      expect(padPairs.compute({ loss, ohms: 8, numbers: 'E12', count: 3 }, plain)).toBeInstanceOf(Problem);
  });
});

describe('on a whole impedance', () => {
  test.each(references('pads-and-loads', 'gen-attc'))('$id', (each) => {
    const curve = ohmsCurve(() => [input(each, 'Zdriver'), input(each, 'Xdriver')]);
    const given = { curve, series: input(each, 'Rs'), shunt: input(each, 'Rp') };
    agrees(-(padResponse.compute(given, plain) as Curve).y[100]!, each);
  });
  test('a tweeter with its resonance behind a pad, as a circuit simulator sees it', async () => {
    // Motional branch of Fs 850 Hz, Qms 2.6, Qes 1.05 on 5.6 Ω as a tank; 30 µH in series.
    const angular = 2 * Math.PI * 850;
    const [resistor, coil, capacitor] = [
      (5.6 * 2.6) / 1.05,
      (5.6 * 1) / (1.05 * angular),
      1.05 / (angular * 5.6),
    ] as const;
    const found = await simulate(
      [
        'v1 1 0 dc 0 ac 1',
        'r1 1 2 2.7',
        'r2 2 0 6.8',
        'r3 2 3 5.6',
        'l1 3 4 30u',
        `r4 4 0 ${resistor}`,
        `l2 4 0 ${coil}`,
        `c1 4 0 ${capacitor}`,
      ],
      'dec 24 10 40k',
    );
    const driver = (f: number): readonly [number, number] => {
      const w = 2 * Math.PI * f;
      const [g, b] = [1 / resistor, w * capacitor - 1 / (w * coil)];
      return [5.6 + g / (g * g + b * b), w * 30e-6 - b / (g * g + b * b)];
    };
    for (const [index, f] of found.frequency.entries()) {
      // The curve is flat at the value of this frequency, so that nothing is interpolated.
      const curve = ohmsCurve(() => driver(f));
      const ours = padResponse.compute({ curve, series: 2.7, shunt: 6.8 }, plain) as Curve;
      const theirs = found.of('v(2)')[index]!;
      expect(Math.abs(ours.y[0]! - 20 * Math.log10(Math.hypot(theirs.re, theirs.im)))).toBeLessThan(0.01);
      expect(Math.abs(ours.phase![0]! - Math.atan2(theirs.im, theirs.re))).toBeLessThan(0.1 * (Math.PI / 180));
      const z = padImpedance.compute({ curve, series: 2.7, shunt: 6.8 }, plain) as Curve;
      const current = found.of('i(v1)')[index]!;
      expect(Math.abs(20 * Math.log10(z.y[0]! * Math.hypot(current.re, current.im)))).toBeLessThan(0.01);
    }
  });
  test('one resistor alone is a series resistor', () => {
    const curve = ohmsCurve((f) => [5, f / 1000]);
    const one = padImpedance.compute({ curve, series: 3, shunt: undefined }, plain) as Curve;
    frequencies.forEach((f, index) => expect(one.y[index]).toBeCloseTo(Math.hypot(8, f / 1000), 9));
  });
});
