import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  loadCurrent,
  loadDissipation,
  loadPhase,
  loadPower,
  loadResistive,
  loadVolts,
} from '../../../functions/electrical/load-amplifier.ts';
import { loadNominal, loadPermitted, loadRating, loadVerdict } from '../../../functions/electrical/load-rating.ts';
import { loadShare, loadVoltage, loadWired } from '../../../functions/electrical/load-wired.ts';
import { mixedWirings } from '../../../functions/electrical/wiring-list.ts';
import { wiringText } from '../../../functions/electrical/wiring.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { agrees, input, references } from '../../references/read.ts';
import { ohmsCurve, simulate } from './circuit.ts';
import { plain, band, amplifier } from './wired.ts';

describe('groups of ohms', () => {
  test.each([...references('pads-and-loads', 'series-'), ...references('pads-and-loads', 'par-')])('$id', (each) => {
    const ohms = each.inputs['Z']!.value as readonly number[];
    const wiring = ohms.map((_, index) => index + 1).join(each.id.startsWith('series') ? '+' : '|');
    const curves = ohms.map((value) => ohmsCurve(() => [value, 0]));
    agrees((loadWired.compute({ wiring, curves }, plain) as Curve).y[7]!, each);
  });
  test.each(references('pads-and-loads', 'sp22'))('$id', (each) => {
    const curves = [1, 2, 3, 4].map(() => ohmsCurve(() => [input(each, 'Z'), 0]));
    agrees((loadWired.compute({ wiring: '(1+2)|(3+4)', curves }, plain) as Curve).y[7]!, each);
    agrees((loadWired.compute({ wiring: '(1|3)+(2|4)', curves }, plain) as Curve).y[7]!, each);
  });
  const impedance = fc.record({
    re: fc.double({ min: 0.5, max: 50, noNaN: true }),
    im: fc.double({ min: -50, max: 50, noNaN: true }),
  });
  test('shares of power add up to the whole; volts of a string add up to those of the group', () => {
    fc.assert(
      fc.property(fc.array(impedance, { minLength: 3, maxLength: 3 }), fc.nat(7), (z, which) => {
        const wiring = wiringText(mixedWirings([0, 1, 2])[which]!);
        const curves = z.map(({ re, im }) => ohmsCurve(() => [re, im]));
        const all = [1, 2, 3].map((unit) => loadShare.compute({ wiring, unit, curves }, plain) as Curve);
        expect(all.reduce((sum, each) => sum + each.y[0]!, 0)).toBeCloseTo(1, 9);
        for (const each of all) expect(each.y[0]).toBeGreaterThanOrEqual(0);
        const volts = [1, 2, 3].map((unit) => loadVoltage.compute({ wiring: '1+2+3', unit, curves }, plain) as Curve);
        const sum = volts.reduce((x, each) => x + 10 ** (each.y[0]! / 20) * Math.cos(each.phase![0]!), 0);
        expect(sum).toBeCloseTo(1, 9);
      }),
      { numRuns: 30 },
    );
  });
  test('unlike units in a circuit simulator: impedance, voltages and power', async () => {
    const found = await simulate(
      [
        'v1 1 0 dc 0 ac 1',
        'r1 1 2 5.8',
        'l1 2 3 0.55m',
        'r1m 3 4 66',
        'l1m 3 4 58m',
        'c1m 3 4 0.3m',
        'r2 4 5 3.1',
        'l2 5 0 0.29m',
        'r3 1 6 5.6',
        'c3 6 0 12u',
      ],
      'dec 12 10 40k',
    );
    const motional = (f: number): readonly [number, number] => {
      const w = 2 * Math.PI * f;
      const [g, b] = [1 / 66, w * 0.3e-3 - 1 / (w * 58e-3)];
      return [5.8 + g / (g * g + b * b), w * 0.55e-3 - b / (g * g + b * b)];
    };
    for (const [index, f] of found.frequency.entries()) {
      const w = 2 * Math.PI * f;
      const curves = [
        ohmsCurve(() => motional(f)),
        ohmsCurve(() => [3.1, w * 0.29e-3]),
        ohmsCurve(() => [5.6, -1 / (w * 12e-6)]),
      ];
      const whole = loadWired.compute({ wiring: '1+2 | 3', curves }, plain) as Curve;
      const current = found.of('i(v1)')[index]!;
      expect(Math.abs(20 * Math.log10(whole.y[0]! * Math.hypot(current.re, current.im)))).toBeLessThan(0.01);
      const angle = Math.atan2(-current.im, -current.re);
      expect(Math.abs(whole.phase![0]! + angle)).toBeLessThan(0.1 * (Math.PI / 180));
      const second = loadVoltage.compute({ wiring: '1+2 | 3', unit: 2, curves }, plain) as Curve;
      const volts = found.of('v(4)')[index]!;
      expect(Math.abs(second.y[0]! - 20 * Math.log10(Math.hypot(volts.re, volts.im)))).toBeLessThan(0.01);
    }
  });
});

describe('what an amplifier sees', () => {
  const flat = (ohms: number, degrees = 0): Curve =>
    ohmsCurve(() => [ohms * Math.cos((degrees * Math.PI) / 180), ohms * Math.sin((degrees * Math.PI) / 180)]);
  test.each(references('nominal-impedance', 'min-'))('$id', (each) =>
    agrees(loadPermitted.compute({ nominal: input(each, 'nominal') }, plain), each),
  );
  test.each(references('nominal-impedance', 'class-'))('$id', (each) =>
    agrees(loadRating.compute({ curve: flat(input(each, 'Zmin')), ...band }, plain), each),
  );
  test.each(references('nominal-impedance', 'maxnom-'))('$id', (each) =>
    agrees(loadNominal.compute({ curve: flat(input(each, 'Zmin')), ...band }, plain), each),
  );
  test.each(references('nominal-impedance', 'rated-v-'))('$id', (each) =>
    agrees(loadVolts.compute({ power: input(each, 'P'), ohms: input(each, 'Z') }, plain), each),
  );
  test.each(references('nominal-impedance', 'epdr-'))('$id', (each) =>
    agrees((loadResistive.compute({ curve: flat(input(each, 'Z'), input(each, 'phase')) }, plain) as Curve).y[5], each),
  );
  test.each(references('nominal-impedance', 'pwr-'))('$id', (each) => {
    const curve = flat(input(each, 'Z'), input(each, 'phase'));
    agrees((loadPower.compute({ curve, volts: input(each, 'V') }, plain) as Curve).y[5], each);
    expect((loadCurrent.compute({ curve, volts: 10 }, plain) as Curve).y[5]).toBeCloseTo(10 / input(each, 'Z'), 9);
  });
  test('the phase is that of a circuit simulated from its elements', async () => {
    // Coil and resistor ahead of a resistor with a capacitor across it, 1 mH, 1 Ω, 10 Ω and 10 µF, fed by 1 A.
    const curve = ohmsCurve((f) => {
      const w = 2 * Math.PI * f * 1e-4;
      return [1 + 10 / (1 + w ** 2), 2 * Math.PI * f * 1e-3 - (10 * w) / (1 + w ** 2)];
    });
    const phase = loadPhase.compute({ curve }, plain) as Curve;
    const circuit = ['i1 0 in dc 0 ac 1', 'l1 in a 1m', 'r1 a b 1', 'r2 b 0 10', 'c1 b 0 10u'];
    const volts = (await simulate(circuit, 'oct 48 10 40960')).of('v(in)');
    for (const [index, { re, im }] of volts.slice(0, phase.y.length).entries())
      expect(phase.y[index]).toBeCloseTo(Math.atan2(im, re), 5);
    // A second witness of another nature: its cosine is the share of the ohms that takes power.
    const resistive = loadResistive.compute({ curve }, plain) as Curve;
    for (const [index, angle] of phase.y.entries())
      expect(Math.cos(angle) * curve.y[index]!).toBeCloseTo(resistive.y[index]!, 9);
  });
  test('the equivalent resistor heats as much as the load, through a whole cycle step by step', () => {
    const peak = (ohms: number, angle: number): number => {
      let most = 0;
      // A device carries the positive half of the current and drops the supply less the output.
      for (let step = 0; step < 20000; step += 1) {
        const theta = (step / 20000) * 2 * Math.PI;
        const current = Math.sin(theta - angle) / ohms;
        if (current > 0) most = Math.max(most, (1 - Math.sin(theta)) * current);
      }
      return most;
    };
    for (const degrees of [-90, -75, -60, -45, -20, 0, 10, 30, 45, 60, 80, 90]) {
      const equivalent = (loadDissipation.compute({ curve: flat(7, degrees) }, plain) as Curve).y[0]!;
      expect(peak(equivalent, 0) / peak(7, (degrees * Math.PI) / 180)).toBeCloseTo(1, 5);
      expect(equivalent).toBeLessThanOrEqual(7 + 1e-12);
    }
  });
  test('a load too low for any rating, limits in the wrong order and curves of another kind are refused', () => {
    expect(loadRating.compute({ curve: flat(0.5), ...band }, plain)).toBeInstanceOf(Problem);
    expect(loadVerdict.compute({ curve: flat(4), minimum: 4, ...band, good: 0.7, caution: 0.8 }, plain)).toBeInstanceOf(
      Problem,
    );
    const level: Curve = { ...flat(4), quantity: 'level' };
    expect(loadVerdict.compute({ curve: level, minimum: 4, ...amplifier }, plain)).toBeInstanceOf(Problem);
    expect(loadPower.compute({ curve: level, volts: 1 }, plain)).toBeInstanceOf(Problem);
    expect(loadPhase.compute({ curve: level }, plain)).toBeInstanceOf(Problem);
    expect(loadWired.compute({ wiring: '1|2', curves: [flat(4), level] }, plain)).toBeInstanceOf(Problem);
    expect(loadShare.compute({ wiring: '1|2', unit: 3, curves: [flat(4), flat(4)] }, plain)).toBeInstanceOf(Problem);
  });
});
