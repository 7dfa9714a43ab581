import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { bandOf, extremeIn, outsideOf, type Extreme } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { reciprocal } from './complex.ts';
import { combined, notOhms } from './impedance.ts';

const curve = { record: 'curve', summary: 'impedance curve' } as const;
const band = {
  from: { ...usual.frequency, default: 20, summary: 'lower end of the band looked at' },
  to: { ...usual.frequency, default: 20000, summary: 'upper end of the band looked at' },
} as const;
const curves = { record: 'curve', many: true, summary: 'impedance curves' } as const;

function lowestOf(given: { curve: Curve; from: number; to: number }): Extreme | Problem {
  const wrong = notOhms(given.curve, 'curve');
  if (wrong) return wrong;
  const within = bandOf(given.curve, given.from, given.to);
  return within instanceof Problem ? within : extremeIn(given.curve, within, -1);
}

export const loadLowest = define({
  name: 'LOAD.LOWEST',
  summary: 'The lowest ohms of an impedance curve in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'resistance', summary: 'lowest magnitude of the impedance' },
  source: { source: 'iec60268_5', at: 'rated impedance: the lowest magnitude is at least 80 % of it' },
  example: {
    formula: '=LOAD.LOWEST(CURVE.READ(1 kHz, 6 Ω, "resistance"), "20 Hz", "20 kHz")',
    gives: 6,
  },
  remarks: 'Compare it with what the amplifier allows, not with the nominal ohms, which are only a class.',
  compute(given) {
    const lowest = lowestOf(given);
    return lowest instanceof Problem ? lowest : lowest.value;
  },
});

export const loadLowestAt = define({
  name: 'LOAD.LOWEST_AT',
  summary: 'The frequency at which an impedance curve is lowest in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'frequency', summary: 'frequency of the lowest ohms' },
  source: { source: 'own', at: 'parabola in log f through the lowest point of the grid and its neighbours' },
  example: {
    formula: '=LOAD.LOWEST_AT(CURVE.READ(1 kHz, 6 Ω, "resistance"), "20 Hz", "20 kHz")',
    gives: 20,
  },
  remarks: 'Where the curve is flat, a small change moves the place far; the ohms there hardly change.',
  compute(given) {
    const lowest = lowestOf(given);
    return lowest instanceof Problem ? lowest : lowest.frequency;
  },
});

export const loadParallel = define({
  name: 'LOAD.PARALLEL',
  summary: 'The impedance of loads in parallel, with their phases.',
  parameters: { curves },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance of them together' },
  source: { source: 'own', at: 'sum of the complex admittances' },
  example: {
    formula: '=LOAD.PARALLEL(DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")))',
    gives: { quantity: 'resistance', title: 'Loads in parallel' },
  },
  remarks: 'Every curve must carry its phase: two loads of equal ohms and different phase give more than half of each.',
  compute: (given) => combined('Loads in parallel', given.curves, reciprocal, reciprocal),
});

export const loadSeries = define({
  name: 'LOAD.SERIES',
  summary: 'The impedance of loads in series, with their phases.',
  parameters: { curves },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance of them together' },
  source: { source: 'own', at: 'sum of the complex impedances' },
  example: {
    formula: '=LOAD.SERIES(DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")))',
    gives: { quantity: 'resistance', title: 'Loads in series' },
  },
  remarks:
    'Every curve must carry its phase. Unequal drivers in series share the voltage unequally near their resonances.',
  compute: (given) =>
    combined(
      'Loads in series',
      given.curves,
      (z) => z,
      (z) => z,
    ),
});

export const loadHandover = define({
  name: 'LOAD.HANDOVER',
  summary: 'One load curve from a woofer below the hand-over and a tweeter above it.',
  parameters: {
    low: { record: 'curve', summary: 'impedance of the woofer' },
    high: { record: 'curve', summary: 'impedance of the tweeter with its pad' },
    frequency: { ...usual.frequency, summary: 'hand-over' },
  },
  returns: { record: 'curve', of: 'resistance', summary: 'magnitude of the load' },
  source: { source: 'own', at: 'ideal split: each driver alone in its own band' },
  example: {
    formula: '=LOAD.HANDOVER(CURVE.READ(1 kHz, 6 Ω, "resistance"), CURVE.READ(1 kHz, 4 Ω, "resistance"), "1.8 kHz")',
    gives: { quantity: 'resistance', title: 'Load, ideal split' },
  },
  remarks:
    'An ideal split, not a filter: real filters add their own dips, often right at the hand-over. Use it to find the lowest ohms of the drivers, and measure the finished loudspeaker.',
  compute(given) {
    const { low, high, frequency } = given;
    const wrong =
      notOhms(low, 'low') ?? notOhms(high, 'high') ?? outsideOf(low, frequency) ?? outsideOf(high, frequency);
    if (wrong) return wrong;
    return {
      kind: 'curve' as const,
      title: 'Load, ideal split',
      quantity: 'resistance' as const,
      y: frequencies.map((at, index) => (at <= frequency ? low : high).y[index]!),
      from: low.from,
      to: high.to,
    };
  },
});
