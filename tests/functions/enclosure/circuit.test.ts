import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { airDensity, soundSpeed } from '../../../functions/air.ts';
import { driver } from './call.ts';
import { solveImpedance } from '../../../functions/enclosure/impedance-curve.ts';
import { solveLumped, type LumpedModel } from '../../../functions/enclosure/lumped.ts';
import { simulate } from './netlist.ts';
import { expectClose, references } from './reference.ts';

// The second witness: the same boxes built from element values and solved by a circuit simulator.
const netlists = (
  JSON.parse(readFileSync(resolve(import.meta.dirname, '../../references/ac-circuits.json'), 'utf8')) as {
    netlists: Record<string, { netlist: string[] }>;
  }
).netlists;

const elements = { re: 5.7, bl: 7.3, mms: 0.0158, cms: 0.00092, rms: 1.35, sd: 0.0137, le: 0.00062 };
const small = driver(elements) as Required<Pick<ReturnType<typeof driver>, 'fs' | 'qms' | 'qes' | 'vas' | 're'>>;
const base = { fs: small.fs, qms: small.qms, qes: small.qes, re: elements.re, coil: elements.le };
const closed: LumpedModel = { ...base, style: 'closed', ratio: small.vas / 0.009 };
const vented: LumpedModel = {
  ...base,
  style: 'vented',
  series: 0.15,
  ratio: small.vas / 0.016,
  lossFrequency: 40,
  leakageQ: 7,
};

/** A larger woofer with a lossy coil. */
const large = { re: 6.1, bl: 12.4, mms: 0.052, cms: 0.00061, rms: 2.6, sd: 0.034 };
const known = driver(large) as typeof small;
const lossy: Omit<LumpedModel, 'style'> = {
  fs: known.fs,
  qms: known.qms,
  qes: known.qes,
  re: large.re,
  coil: 0.0007,
  lossyCoil: { inductance: 0.0009, across: 4.5 },
};
const threeLosses: LumpedModel = {
  ...lossy,
  style: 'vented',
  ratio: known.vas / 0.06,
  lossFrequency: 27,
  leakageQ: 12,
  absorptionQ: 60,
  portQ: 40,
};
const radiator = { area: 0.048, mass: 0.165, compliance: 0.00055, resistance: 2.2 };
const fp = 1 / (2 * Math.PI * Math.sqrt(radiator.mass * radiator.compliance));
const vap = airDensity * soundSpeed ** 2 * radiator.area ** 2 * radiator.compliance;
const passive: LumpedModel = {
  ...lossy,
  style: 'radiator',
  ratio: known.vas / 0.045,
  radiator: { ratio: vap / 0.045, fp, qmp: (2 * Math.PI * fp * radiator.mass) / radiator.resistance },
  lossFrequency: fp * Math.sqrt(1 + vap / 0.045),
  leakageQ: 10,
};

const decibels = (re: number, im: number): number => 20 * Math.log10(Math.hypot(re, im));
const degrees = (re: number, im: number): number => (Math.atan2(im, re) * 180) / Math.PI;

describe.each([
  ['S1', closed, 0],
  ['S2', vented, 0.15],
] as const)('circuit %s in the simulator', (circuit, model, series) => {
  test('impedance to 0.01 dB and 0.1°, volume velocity and travel to 0.01 dB', async () => {
    const found = await simulate(netlists[circuit]!.netlist);
    const at = Float64Array.from(found.get('frequency')!, ({ real }) => real);
    expect(at.length).toBeGreaterThan(30);
    const ours = solveImpedance(model, at);
    const solution = solveLumped(model, at, true);
    const perVolt = (elements.bl * elements.cms) / (elements.re + series);
    at.forEach((f, index) => {
      const u = found.get('v(t)')![index]!;
      const i = found.get('i(vi)')![index]!;
      const size = i.real ** 2 + i.img ** 2;
      const zRe = (u.real * i.real + u.img * i.img) / size;
      const zIm = (u.img * i.real - u.real * i.img) / size;
      expect(Math.abs(20 * Math.log10(ours.y[index]!) - decibels(zRe, zIm))).toBeLessThan(0.01);
      expect(Math.abs((ours.phase[index]! * 180) / Math.PI - degrees(zRe, zIm))).toBeLessThan(0.1);
      const speed = found.get('i(vv)')![index]!;
      const travel = perVolt * Math.hypot(solution.travelRe[index]!, solution.travelIm[index]!);
      expect(Math.abs(20 * Math.log10((2 * Math.PI * f * travel) / Math.hypot(speed.real, speed.img)))).toBeLessThan(
        0.01,
      );
      // Outward volume velocity over that of the bare moving mass.
      const flow = found.get('i(vc)')![index]!;
      const bare = (elements.sd * elements.bl) / (elements.mms * (elements.re + series) * 2 * Math.PI * f);
      const level = decibels(flow.real, flow.img) - 20 * Math.log10(bare);
      expect(Math.abs(decibels(solution.pressureRe[index]!, solution.pressureIm[index]!) - level)).toBeLessThan(0.01);
    });
  });
});

describe.each([
  ['S1', closed, 0, elements],
  ['S2', vented, 0.15, elements],
  ['S3', passive, 0, large],
  ['S5', threeLosses, 0, large],
] as const)('tabled values of circuit %s', (circuit, model, series, of) => {
  const table = references('ac-circuits').filter(({ id }) => id.startsWith(`${circuit}-`));
  const perVolt = (of.bl * of.cms) / (of.re + series);
  const wave = (airDensity * of.sd * of.bl * 2.83) / (2 * Math.PI * of.mms * (of.re + series));
  test.each(table.filter(({ id }) => /zmag|zph|rel$|spl|xpv|upv|xpr/.test(id)))('$id', (each) => {
    const at = Float64Array.from(each.inputs['f'] as number[]);
    const { y, phase } = solveImpedance(model, at);
    const s = solveLumped(model, at, true);
    const quantity = each.id.split('-')[1]!;
    at.forEach((f, index) => {
      const relative = decibels(s.pressureRe[index]!, s.pressureIm[index]!);
      const travel = perVolt * Math.hypot(s.travelRe[index]!, s.travelIm[index]!);
      const port = 2 * Math.PI * f * of.sd * perVolt * Math.hypot(s.portRe[index]!, s.portIm[index]!);
      const actual: Record<string, number> = {
        zmag: y[index]!,
        zph: (phase[index]! * 180) / Math.PI,
        rel: relative,
        spl: relative + 20 * Math.log10(wave / 20e-6),
        xpv: travel * (each.unit.includes('mm') ? 1e3 : 1),
        xpr: (port / (2 * Math.PI * f * radiator.area)) * (each.unit.includes('mm') ? 1e3 : 1),
        upv: port * (each.unit.startsWith('L') ? 1e3 : 1),
      };
      expectClose(actual[quantity]!, each, index);
    });
  });
  test('air is that of the table', () => expect([airDensity, soundSpeed]).toEqual([1.204, 343.2]));
});
