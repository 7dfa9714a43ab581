import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { angleOf, plus, polar, sizeOf, type Complex } from './complex.ts';
import { notWhole } from './impedance.ts';

/** The frequency for which datasheets state an inductance. */
const quotedAt = 1000;

const re = { ...usual.ohms, summary: 'direct-current resistance of the voice coil' } as const;
const le = { quantity: 'inductance', min: 0, max: 10, typical: [5e-6, 5e-3], summary: 'inductance as quoted' } as const;
const exponent = {
  quantity: 'ratio',
  min: 0.01,
  max: 1,
  default: 0.7,
  typical: [0.5, 1],
  summary: 'exponent of the frequency; 1 for an ideal coil, ½ for one wholly shaded by iron',
} as const;
const at = { ...usual.frequency, default: quotedAt, summary: 'frequency that the inductance is quoted for' } as const;

/** K·(jω)^n with the reactance ω·L at the frequency quoted. */
export function lossyCoil(inductance: number, exponent: number, at: number): (frequency: number) => Complex {
  const turn = (exponent * Math.PI) / 2;
  const quoted = (2 * Math.PI * at * inductance) / Math.sin(turn);
  return (frequency) => polar(quoted * (frequency / at) ** exponent, turn);
}

/** An impedance curve over the whole grid. */
const overGrid = (title: string, z: (frequency: number) => Complex): Curve => ({
  kind: 'curve',
  title,
  quantity: 'resistance',
  y: frequencies.map((frequency) => sizeOf(z(frequency))),
  phase: frequencies.map((frequency) => angleOf(z(frequency))),
  from: frequencies[0]!,
  to: frequencies.at(-1)!,
});

export const impedanceCoil = define({
  name: 'IMPEDANCE.COIL',
  summary: 'The impedance of a blocked voice coil whose inductance loses in the iron around it.',
  parameters: { re, le, exponent, at },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance, with phase' },
  source: { source: 'leach2002', at: 'lossy inductance K·(jω)^n (abstract and introduction read)' },
  example: { formula: '=CURVE.AT(IMPEDANCE.COIL("5.7 Ω", "0.357 mH", 0.7, "1 kHz"), "1 kHz")', gives: 7.2 },
  remarks:
    'K is chosen so that the reactance at the quoted frequency is that of the quoted inductance. The impedance then rises by 6·n dB an octave, and its phase tends to n·90°. An inductance quoted for 1 kHz is too small below and too large above.',
  compute(given) {
    const coil = lossyCoil(given.le, given.exponent, given.at);
    return overGrid('Blocked voice coil', (frequency) => plus({ re: given.re, im: 0 }, coil(frequency)));
  },
});

export const impedanceCoils = define({
  name: 'IMPEDANCE.TWO_COILS',
  summary: 'The impedance of a blocked voice coil as an inductance and a second one with a resistance across it.',
  parameters: {
    re,
    le,
    le2: { quantity: 'inductance', min: 1e-9, max: 10, typical: [5e-6, 0.02], summary: 'inductance of the lossy part' },
    re2: { ...usual.ohms, summary: 'resistance across the lossy part' },
  },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance, with phase' },
  source: { source: 'own', at: 'ladder of Re, L1 and R2 across L2, the usual equivalent circuit' },
  example: { formula: '=CURVE.AT(IMPEDANCE.TWO_COILS("6.1 Ω", "0.7 mH", "0.9 mH", "4.5 Ω"), "1 kHz")', gives: 11.04 },
  remarks: 'Fits a measured coil over two or three octaves; over the whole range the exponent does better.',
  compute: (given) =>
    overGrid('Blocked voice coil', (frequency) => {
      const angular = 2 * Math.PI * frequency;
      const x = (angular * given.le2) / given.re2;
      const lossy = given.re2 / (x + 1 / x);
      return { re: given.re + lossy * x, im: angular * given.le + lossy };
    }),
});

export const impedanceEmpirical = define({
  name: 'IMPEDANCE.EMPIRICAL',
  summary: 'The impedance of a blocked voice coil by its own exponents for resistance and reactance.',
  parameters: {
    re,
    resistance: { quantity: 'resistance', min: 0, max: 1e6, summary: 'what the resistance has risen by at 1 kHz' },
    resistanceExponent: { quantity: 'ratio', min: 0, max: 2, default: 0.7, summary: 'its exponent' },
    reactance: { quantity: 'resistance', min: 0, max: 1e6, summary: 'reactance at 1 kHz' },
    reactanceExponent: { quantity: 'ratio', min: 0, max: 2, default: 0.7, summary: 'its exponent' },
  },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance, with phase' },
  source: { source: 'wright1990', at: 'Kr·ω^Xr + j·Ki·ω^Xi' },
  example: {
    formula: '=CURVE.AT(IMPEDANCE.EMPIRICAL("6 Ω", "2 Ω", 0.8, "6 Ω", 0.6), "1 kHz")',
    gives: 10,
  },
  remarks:
    'Four numbers that follow nearly any measured coil. With equal exponents and matching parts it is the other model.',
  compute: (given) =>
    overGrid('Blocked voice coil', (frequency) => ({
      re: given.re + given.resistance * (frequency / quotedAt) ** given.resistanceExponent,
      im: given.reactance * (frequency / quotedAt) ** given.reactanceExponent,
    })),
});

export const impedanceLossy = define({
  name: 'IMPEDANCE.LOSSY',
  summary: 'An impedance curve with its ideal voice-coil inductance replaced by one that loses.',
  parameters: {
    curve: {
      record: 'curve',
      summary: 'impedance of a driver or box with the inductance of its datasheet, with phase',
    },
    le: { ...le, summary: 'that inductance' },
    exponent,
    at,
  },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance, with phase' },
  source: { source: 'leach2002', at: 'lossy inductance K·(jω)^n in the place of jω·Le' },
  example: {
    formula:
      '=CURVE.AT(IMPEDANCE.LOSSY(DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm", "0.55 mH")), "0.55 mH", 0.7), "10 kHz")',
    gives: 22.63,
  },
  remarks:
    'The coil is in series with all the rest, so this holds for any box. Real coils rise more slowly than the ideal one: at 10 kHz the ideal model shows far too many ohms, and a filter or pad worked out on it is wrong.',
  compute(given) {
    const wrong = notWhole(given.curve, 'curve');
    if (wrong) return wrong;
    const coil = lossyCoil(given.le, given.exponent, given.at);
    const { y, phase } = given.curve;
    const changed = frequencies.map((frequency) => coil(frequency).re);
    const parts = Array.from(y, (ohms, index): Complex => {
      const whole = polar(ohms, phase![index]!);
      const frequency = frequencies[index]!;
      return {
        re: whole.re + changed[index]!,
        im: whole.im - 2 * Math.PI * frequency * given.le + coil(frequency).im,
      };
    });
    if (parts.some((part) => !(sizeOf(part) > 0) || !Number.isFinite(sizeOf(part))))
      return new Problem(say`The curve does not hold so much inductance; check the value.`, 'le');
    return {
      ...given.curve,
      title: 'Impedance with lossy coil',
      y: Float64Array.from(parts, sizeOf),
      phase: Float64Array.from(parts, angleOf),
    };
  },
});
