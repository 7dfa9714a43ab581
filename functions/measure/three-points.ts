import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

const re = { ...usual.ohms, summary: 'direct-current resistance by a meter' } as const;
const zmax = { ...usual.ohms, summary: 'ohms at the peak' } as const;
const fs = { ...usual.frequency, summary: 'frequency of the peak' } as const;
const f1 = { ...usual.frequency, summary: 'frequency below it with √(Re·Zmax)' } as const;
const f2 = { ...usual.frequency, summary: 'frequency above it with √(Re·Zmax)' } as const;
const source = {
  source: 'small1972direct',
  at: 'Q from the width of the impedance peak: Qms = fs·√r0/(f2 − f1), Qes = Qms/(r0 − 1), r0 = Zmax/Re',
} as const;
const remarks =
  'Before use see that √(f1·f2) lies within 2 % of Fs: MEASURE.CHECK_SYMMETRY. Inductance and reading errors break it. The fit of the whole sweep, MEASURE.SWEEP, is the better way.';

interface Given {
  readonly re: number;
  readonly zmax: number;
  readonly fs: number;
  readonly f1: number;
  readonly f2: number;
}

function mechanicalQ(given: Given): number | Problem {
  if (given.zmax <= given.re * 1.001)
    return new Problem(
      say`The peak of ${measured(given.zmax, 'resistance')} is not above the resistance of ${measured(given.re, 'resistance')}; check both.`,
      'zmax',
    );
  if (!(given.f1 < given.fs && given.fs < given.f2))
    return new Problem(
      say`The three frequencies must rise: ${measured(given.f1, 'frequency')}, ${measured(given.fs, 'frequency')}, ${measured(given.f2, 'frequency')} do not.`,
      'f1',
    );
  return (given.fs * Math.sqrt(given.zmax / given.re)) / (given.f2 - given.f1);
}

const from = (given: Given, pick: (qms: number, ratio: number) => number): number | Problem => {
  const qms = mechanicalQ(given);
  return qms instanceof Problem ? qms : pick(qms, given.zmax / given.re);
};
const sample = '"5.8 Ω", "72.1 Ω", "38 Hz", "26.53 Hz", "54.44 Hz"';

export const measureMiddle = define({
  name: 'MEASURE.MIDDLE_OHMS',
  summary: 'The ohms at which the two frequencies beside the peak are read.',
  parameters: { re, zmax },
  returns: { quantity: 'resistance', summary: '√(Re·Zmax)' },
  source,
  example: { formula: '=MEASURE.MIDDLE_OHMS("5.8 Ω", "72.1 Ω")', gives: 20.45 },
  compute: (given) => Math.sqrt(given.re * given.zmax),
});

export const measureQms = define({
  name: 'MEASURE.QMS',
  summary: 'The mechanical Q from three points of an impedance peak.',
  parameters: { re, zmax, fs, f1, f2 },
  returns: { quantity: 'ratio', summary: 'mechanical Q' },
  source,
  example: { formula: `=MEASURE.QMS(${sample})`, gives: 4.8 },
  remarks,
  compute: (given) => from(given, (qms) => qms),
});

export const measureQes = define({
  name: 'MEASURE.QES',
  summary: 'The electrical Q from three points of an impedance peak.',
  parameters: { re, zmax, fs, f1, f2 },
  returns: { quantity: 'ratio', summary: 'electrical Q' },
  source,
  example: { formula: `=MEASURE.QES(${sample})`, gives: 0.42 },
  remarks,
  compute: (given) => from(given, (qms, ratio) => qms / (ratio - 1)),
});

export const measureQts = define({
  name: 'MEASURE.QTS',
  summary: 'The total Q from three points of an impedance peak.',
  parameters: { re, zmax, fs, f1, f2 },
  returns: { quantity: 'ratio', summary: 'total Q' },
  source,
  example: { formula: `=MEASURE.QTS(${sample})`, gives: 0.386 },
  remarks,
  compute: (given) => from(given, (qms, ratio) => qms / ratio),
});

export const measureMass = define({
  name: 'MEASURE.MASS',
  summary: 'The moving mass from the resonance with a known mass added to the cone.',
  parameters: {
    fs: { ...usual.frequency, summary: 'resonance without it' },
    loaded: { ...usual.frequency, summary: 'resonance with the mass' },
    added: { quantity: 'mass', min: 1e-6, max: 10, typical: [5e-4, 0.1], summary: 'mass stuck to the cone' },
  },
  returns: { quantity: 'mass', summary: 'moving mass with its air' },
  source: { source: 'own', at: 'same compliance: Mms = m/((fs/f)² − 1)' },
  example: { formula: '=MEASURE.MASS("38 Hz", "29.51 Hz", "10 g")', gives: 0.01519 },
  remarks:
    'Choose a mass that lowers the resonance by a quarter or so. A reading 1 Hz too high makes the mass a fifth too large: MEASURE.CHECK_MASS.',
  compute: (given) =>
    given.loaded < given.fs * 0.9999
      ? given.added / ((given.fs / given.loaded) ** 2 - 1)
      : new Problem(
          say`The resonance with the mass, ${measured(given.loaded, 'frequency')}, must lie below that without, ${measured(given.fs, 'frequency')}.`,
          'loaded',
        ),
});

const q = { ...usual.q, optional: true } as const;

export const measureVas = define({
  name: 'MEASURE.VAS',
  summary: 'The equivalent volume from the resonance in a closed test box.',
  parameters: {
    fs: { ...usual.frequency, summary: 'resonance in free air' },
    fc: { ...usual.frequency, summary: 'resonance in the box' },
    volume: { ...usual.volume, summary: 'net volume of the box with the driver in place' },
    qes: { ...q, summary: 'electrical Q in free air' },
    qec: { ...q, summary: 'electrical Q in the box' },
  },
  returns: { quantity: 'volume', summary: 'equivalent volume' },
  source: {
    source: 'small1972direct',
    at: 'Vas = Vb·(fc·Qec/(fs·Qes) − 1) (from memory); without both Q, Vb·((fc/fs)² − 1)',
  },
  example: { formula: '=MEASURE.VAS("41.7 Hz", "80.9 Hz", "9 L", 0.443, 0.861)', gives: 0.02494 },
  remarks:
    'With both Q the change of the air load from free air to box drops out; without them it is left in, a few per cent. The box must be tight and without filling.',
  compute(given) {
    if ((given.qes === undefined) !== (given.qec === undefined))
      return new Problem(say`Give both electrical Q, in free air and in the box, or neither.`, 'qec');
    const ratio =
      given.qes !== undefined && given.qec !== undefined
        ? (given.fc * given.qec) / (given.fs * given.qes)
        : (given.fc / given.fs) ** 2;
    return ratio > 1.0001
      ? given.volume * (ratio - 1)
      : new Problem(
          say`In the box the resonance of ${measured(given.fc, 'frequency')} must lie well above that of ${measured(given.fs, 'frequency')} in free air; check for leaks.`,
          'fc',
        );
  },
});
