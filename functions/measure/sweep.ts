import { define, type Table } from '../define.ts';
import { completeDriver } from '../driver/complete-driver.ts';
import { angleOf, sizeOf } from '../electrical/complex.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import type { TableRecord } from '../values/table.ts';
import { driverImpedanceAt, fitSweep, type SweepFit } from './fit-sweep.ts';
import { phase, readMeasured, type PhaseCells } from './read-table.ts';

const sweep = {
  table: true,
  summary: 'impedance sweep in free air: columns of frequency, ohms and, if known, phase in degrees, or pasted text',
} as const;
const re = {
  ...usual.ohms,
  optional: true,
  summary: 'resistance by a meter; left out, it is fitted too',
} as const;
const source = {
  source: 'levenberg',
  at: 'least squares on the whole curve; impedance of Small 1972 with the lossy inductance of Leach 2002',
} as const;
/** Samples of a driver of Fs 40 Hz, Qms 4, Qes 0.4 and 6 Ω with 0.5 mH, as one would paste them. */
const sample =
  '"10 7.55 33.0\n20 12.58 52.1\n25 17.66 56.2\n30 26.88 54.9\n35 45.56 41.6\n38 61.36 20.4\n40 66.17 0.3\n42 61.57 -18.9\n46 44.04 -41.9\n52 28.44 -53.1\n60 19.58 -55.2\n80 12.12 -49.3\n120 8.43 -35.2\n200 7.00 -17.4\n400 6.88 1.2\n800 7.63 14.7\n1600 9.14 25.9\n5000 14.54 41.2"';

interface Given {
  readonly sweep: Table;
  readonly re: number | undefined;
  readonly phase: PhaseCells;
}

const read = ({ sweep, re, phase }: Given): SweepFit | Problem => {
  const measured = readMeasured(sweep, 'sweep', phase);
  return measured instanceof Problem ? measured : fitSweep(measured, re);
};

const totalQ = (qms: number, qes: number): number => (qms * qes) / (qms + qes);

export const measureSweep = define({
  name: 'MEASURE.SWEEP',
  summary: 'The parameters of a driver from an impedance sweep, with their error bars.',
  parameters: { sweep, re, phase },
  returns: { record: 'table', summary: 'rows Value and Error of Fs, Qms, Qes, Qts, Re, Le, Exponent, Left over' },
  source,
  example: { formula: `=TABLE.AT(MEASURE.SWEEP(${sample}, "6 Ω"), 1, "Fs", 1 Hz)`, gives: 40 },
  remarks:
    'Errors are one standard deviation from the scatter about the fit; what the meter or the mounting gets wrong is not in them. Le is that at 1 kHz. Left over is the root mean square deviation as a share of the ohms: above 0.02 look for the reason. Sweep at low level, the driver held firmly, far from surfaces.',
  compute(given): TableRecord | Problem {
    const fit = read(given);
    if (fit instanceof Problem) return fit;
    const { found, errors } = fit;
    const qts = totalQ(found.qms, found.qes);
    const error = qts ** 2 * Math.hypot(errors.qms / found.qms ** 2, errors.qes / found.qes ** 2);
    return {
      kind: 'table',
      title: 'Parameters from the sweep',
      columns: [
        { name: 'What', quantity: 'text' },
        { name: 'Fs', quantity: 'frequency' },
        { name: 'Qms', quantity: 'ratio' },
        { name: 'Qes', quantity: 'ratio' },
        { name: 'Qts', quantity: 'ratio' },
        { name: 'Re', quantity: 'resistance' },
        { name: 'Le', quantity: 'inductance' },
        { name: 'Exponent', quantity: 'ratio' },
        { name: 'Left over', quantity: 'ratio' },
      ],
      rows: [
        ['Value', found.fs, found.qms, found.qes, qts, found.re, found.le, found.exponent, fit.residual],
        ['Error', errors.fs, errors.qms, errors.qes, error, errors.re, errors.le, errors.exponent, null],
      ],
    };
  },
});

export const measureDriver = define({
  name: 'MEASURE.DRIVER',
  summary: 'A driver from an impedance sweep, and its moving mass or volume where known.',
  parameters: {
    sweep,
    name: { text: true, default: 'Measured', summary: 'name of the driver' },
    re,
    sd: { ...usual.area, optional: true, summary: 'radiating area' },
    mms: { quantity: 'mass', min: 1e-6, max: 10, optional: true, summary: 'moving mass, from an added one' },
    vas: { ...usual.volume, optional: true, summary: 'equivalent volume, from a test box; instead of the mass' },
    phase,
  },
  returns: { record: 'driver', summary: 'the driver' },
  source,
  example: { formula: `=MEASURE.DRIVER(${sample}, "Woofer", "6 Ω")`, gives: { name: 'Woofer', fs: 40.0, qes: 0.4 } },
  remarks:
    'With area and mass, or area and volume, all other parameters follow. Travel, heat limit and break-up are not in a sweep.',
  compute(given) {
    const fit = read(given);
    if (fit instanceof Problem) return fit;
    const { fs, qms, qes, re: resistance, le } = fit.found;
    return completeDriver(given.name, {
      fs,
      qms,
      qes,
      re: resistance,
      le,
      ...(given.sd !== undefined && { sd: given.sd }),
      ...(given.mms !== undefined && { mms: given.mms }),
      ...(given.vas !== undefined && { vas: given.vas }),
    });
  },
});

export const measureFitted = define({
  name: 'MEASURE.FITTED',
  summary: 'The impedance curve that was fitted to a sweep, to lay over it.',
  parameters: { sweep, re, phase },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance, with phase' },
  source,
  example: { formula: `=CURVE.AT(MEASURE.FITTED(${sample}, "6 Ω"), "40 Hz")`, gives: 66.2 },
  compute(given) {
    const fit = read(given);
    if (fit instanceof Problem) return fit;
    const z = Array.from(frequencies, (frequency) => driverImpedanceAt(fit.found, frequency));
    return {
      kind: 'curve' as const,
      title: 'Fitted impedance',
      quantity: 'resistance' as const,
      y: Float64Array.from(z, sizeOf),
      phase: Float64Array.from(z, angleOf),
      from: frequencies[0]!,
      to: frequencies.at(-1)!,
    };
  },
});
