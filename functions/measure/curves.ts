import { define, type Table } from '../define.ts';
import { minimumPhase } from '../numeric/phase-kernel.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { bandOf, readAt } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { overGrid } from '../values/resampled.ts';
import { say } from '../values/say.ts';
import { phase, readMeasured, type PhaseCells } from './read-table.ts';

const table = (what: string) =>
  ({ table: true, summary: `columns of frequency, ${what} and, if known, phase in degrees; or pasted text` }) as const;
const source = { source: 'own', at: 'straight in log f between the lines; phase followed through ±180°' } as const;
const remarks =
  'Comments, headings, tabs, spaces, commas or semicolons between the columns and decimal commas are all read; a whole file may stand in one cell. The curve holds from the first to the last frequency. Frequencies are in hertz, phases in degrees as plain numbers; where cells hold phases with their unit, such as 45°, say “angles”.';

/** Takes out the jumps of a whole turn between one line and the next. */
function unwrapped(degrees: readonly number[]): readonly number[] {
  let turn = 0;
  return degrees.map((each, index) => {
    const before = degrees[index - 1];
    if (before !== undefined) turn -= 360 * Math.round((each - before) / 360);
    return ((each + turn) * Math.PI) / 180;
  });
}

interface Given {
  readonly rows: Table;
  readonly title: string;
  readonly phase: PhaseCells;
}

function measuredCurve({ rows, title, phase }: Given, quantity: 'level' | 'resistance'): Curve | Problem {
  const read = readMeasured(rows, 'rows', phase);
  if (read instanceof Problem) return read;
  if (quantity === 'resistance' && read.value.some((ohms) => !(ohms > 0)))
    return new Problem(say`An impedance must be above 0 Ω in every line; correct the values.`, 'rows');
  const [from, to] = [read.frequency[0]!, read.frequency.at(-1)!];
  if (from >= frequencies.at(-1)! || to <= frequencies[0]!)
    return new Problem(say`All frequencies lie outside 10 Hz to 41 kHz; check their unit.`, 'rows');
  return {
    kind: 'curve',
    title,
    quantity,
    y: overGrid(read.frequency, read.value),
    ...(read.degrees && { phase: overGrid(read.frequency, unwrapped(read.degrees)) }),
    from,
    to,
  };
}

export const measureLevel = define({
  name: 'MEASURE.LEVEL',
  summary: 'A measured response as a curve, from a table or pasted text.',
  parameters: {
    rows: table('decibels'),
    title: { text: true, default: 'Measured response', summary: 'what the curve shows' },
    phase,
  },
  returns: { record: 'curve', of: 'level', summary: 'response, with phase where the table has one' },
  source,
  example: { formula: '=CURVE.AT(MEASURE.LEVEL("100 88,5\n1000 90,5"), "100 Hz")', gives: 88.5 },
  remarks: `${remarks} Without a phase it serves for levels only: several sources cannot be summed with it. MEASURE.MINIMUM_PHASE gives it one.`,
  compute: (given) => measuredCurve(given, 'level'),
});

export const measureImpedance = define({
  name: 'MEASURE.IMPEDANCE',
  summary: 'A measured impedance as a curve, from a table or pasted text.',
  parameters: {
    rows: table('ohms'),
    title: { text: true, default: 'Measured impedance', summary: 'what the curve shows' },
    phase,
  },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance, with phase where the table has one' },
  source,
  example: { formula: '=CURVE.AT(MEASURE.IMPEDANCE("100; 6,1; 10\n1000; 7,5; 25"), "1 kHz")', gives: 7.5 },
  remarks: `${remarks} With its phase it takes the place of a modelled impedance in loads, pads and filters.`,
  compute: (given) => measuredCurve(given, 'resistance'),
});

const slope = { quantity: 'slope', min: -200, max: 200, optional: true } as const;
/** Decibels in a neper. */
const neper = 20 / Math.LN10;
/** How much of each end tells the slope beyond it, where none is given. */
const endOctaves = 0.5;

export const measureMinimumPhase = define({
  name: 'MEASURE.MINIMUM_PHASE',
  summary: 'The phase that belongs to a magnitude, for a system without delay.',
  parameters: {
    curve: { record: 'curve', summary: 'level or impedance; its own phase is not looked at' },
    below: { ...slope, summary: 'slope below the band: 12 dB/oct for a closed box, 24 dB/oct for a vented one' },
    above: { ...slope, summary: 'slope above the band, negative where it falls' },
  },
  returns: { record: 'curve', of: 'curve', summary: 'the curve with its minimum phase' },
  source: { source: 'bode1945', at: 'phase from the slope of the gain, weighted by ln coth |u/2|' },
  example: {
    formula: '=CURVE.PHASE(MEASURE.MINIMUM_PHASE(FILTER.SLOPE("1 kHz", "BW2", "low"), 0 dB/oct, -12 dB/oct), "1 kHz")',
    gives: -1.571,
  },
  remarks:
    'Left out, a slope is that of the last half octave of the band; a wrong one bends the phase for two octaves inside. Single drivers and their impedances are of minimum phase; the way from the driver, a delay, and the sum of several are not, and no magnitude tells them.',
  compute(given) {
    const { curve } = given;
    if (curve.quantity !== 'level' && curve.quantity !== 'resistance')
      return new Problem(say`“${curve.title}” is neither a level nor an impedance; give one.`, 'curve');
    const isLevel = curve.quantity === 'level';
    const band = bandOf(curve, curve.from, curve.to);
    if (band instanceof Problem) return band;
    if (!isLevel && curve.y.some((ohms) => !(ohms > 0)))
      return new Problem(say`“${curve.title}” falls to zero ohms; correct the impedance.`, 'curve');
    const nepers = (frequency: number): number => {
      const value = readAt(curve.y, frequency);
      return isLevel ? value / neper : Math.log(value);
    };
    const width = 2 ** Math.min(endOctaves, Math.log2(band.to / band.from) / 2);
    const perOctave = Math.LN2 * neper;
    const low =
      given.below === undefined
        ? (nepers(band.from * width) - nepers(band.from)) / Math.log(width)
        : given.below / perOctave;
    const high =
      given.above === undefined
        ? (nepers(band.to) - nepers(band.to / width)) / Math.log(width)
        : given.above / perOctave;
    const logarithm = frequencies.map((frequency) => {
      const inside = Math.min(Math.max(frequency, band.from), band.to);
      return (
        nepers(inside) + (inside === frequency ? 0 : (frequency < inside ? low : high) * Math.log(frequency / inside))
      );
    });
    return { ...curve, phase: minimumPhase(logarithm, Math.LN2 / 48, low, high) };
  },
});
