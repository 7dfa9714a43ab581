import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { QuantityName } from '../quantities.ts';
import { quantities } from '../quantities.ts';
import type { Curve } from '../values/curve.ts';
import { bandOf, crossingsIn, extremeIn, outsideOf, readAt, type Extreme } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

const curve = { record: 'curve', summary: 'curve' } as const;
const band = {
  from: { ...usual.frequency, default: 20, summary: 'lower end of the band looked at' },
  to: { ...usual.frequency, default: 20000, summary: 'upper end of the band looked at' },
} as const;
const source = { source: 'own', at: 'parabola in log f through the point of the grid and its neighbours' } as const;
const line = 'CURVE.READ(1 kHz, 90 dB)';

/** Refuses a number that is of another kind than the curve; plain numbers pass. */
export function mismatched(curveGiven: Curve, quantity: QuantityName, parameter: string): Problem | undefined {
  const wanted = JSON.stringify(quantities[curveGiven.quantity].dimension);
  if (quantity === 'ratio' || JSON.stringify(quantities[quantity].dimension) === wanted) return undefined;
  return new Problem(
    say`“${curveGiven.title}” shows ${quantities[curveGiven.quantity].noun}, not ${quantities[quantity].noun}; give ${quantities[curveGiven.quantity].noun}.`,
    parameter,
  );
}

export const curveAt = define({
  name: 'CURVE.AT',
  summary: 'The value of a curve at a frequency.',
  parameters: { curve, frequency: { ...usual.frequency, summary: 'frequency' } },
  returns: { quantity: 'curve', summary: 'value in the quantity of the curve' },
  source: { source: 'own', at: 'straight in log f between 48 points an octave' },
  example: { formula: `=CURVE.AT(${line}, "500 Hz")`, gives: 90 },
  remarks: 'Outside the band in which the curve holds there is no value.',
  compute: (given) => outsideOf(given.curve, given.frequency) ?? readAt(given.curve.y, given.frequency),
});

function extreme(given: { curve: Curve; from: number; to: number }, sense: 1 | -1): Extreme | Problem {
  const within = bandOf(given.curve, given.from, given.to);
  return within instanceof Problem ? within : extremeIn(given.curve, within, sense);
}

const valueOf = (found: Extreme | Problem): number | Problem => (found instanceof Problem ? found : found.value);
const placeIn = (found: Extreme | Problem): number | Problem => (found instanceof Problem ? found : found.frequency);

export const curvePeak = define({
  name: 'CURVE.PEAK',
  summary: 'The highest value of a curve in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'curve', summary: 'highest value' },
  source,
  example: { formula: `=CURVE.PEAK(${line})`, gives: 90 },
  compute: (given) => valueOf(extreme(given, 1)),
});

export const curvePeakAt = define({
  name: 'CURVE.PEAK_AT',
  summary: 'The frequency at which a curve is highest in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'frequency', summary: 'frequency of the highest value' },
  source,
  example: { formula: '=CURVE.PEAK_AT(EDGE.STEP("220 mm"))', gives: 20000 },
  compute: (given) => placeIn(extreme(given, 1)),
});

export const curveLowest = define({
  name: 'CURVE.LOWEST',
  summary: 'The lowest value of a curve in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'curve', summary: 'lowest value' },
  source,
  example: { formula: `=CURVE.LOWEST(${line})`, gives: 90 },
  compute: (given) => valueOf(extreme(given, -1)),
});

export const curveLowestAt = define({
  name: 'CURVE.LOWEST_AT',
  summary: 'The frequency at which a curve is lowest in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'frequency', summary: 'frequency of the lowest value' },
  source,
  example: { formula: '=CURVE.LOWEST_AT(EDGE.STEP("220 mm"))', gives: 20 },
  compute: (given) => placeIn(extreme(given, -1)),
});

export const curveRipple = define({
  name: 'CURVE.RIPPLE',
  summary: 'The difference between the highest and the lowest value of a curve in a band.',
  parameters: { curve, ...band },
  returns: { quantity: 'curve', summary: 'highest less lowest' },
  source,
  example: { formula: `=CURVE.RIPPLE(${line}, "100 Hz", "10 kHz")`, gives: 0 },
  remarks: 'Choose the band so that the ends of the range do not count.',
  compute(given) {
    const high = valueOf(extreme(given, 1));
    const low = valueOf(extreme(given, -1));
    if (high instanceof Problem) return high;
    return low instanceof Problem ? low : high - low;
  },
});

export const curveFall = define({
  name: 'CURVE.FALL',
  summary: 'The frequency below which a response has fallen by some decibels.',
  parameters: {
    curve: { record: 'curve', summary: 'response with its pass band at 0 dB' },
    fall: { quantity: 'level', min: 0.01, max: 100, default: 3, summary: 'fall below 0 dB' },
  },
  returns: { quantity: 'frequency', summary: 'lowest frequency above which the level stays at or over the fall' },
  source: { source: 'small1972closed', at: 'cutoff frequency: response down by 3 dB' },
  example: { formula: '=CURVE.FALL(FILTER.SLOPE("70 Hz", "BW2", "high"), "3.0103 dB")', gives: 70 },
  remarks:
    'Counted from 0 dB, so the curve must be a response relative to its pass band, as enclosures give it. Going down from the peak, the first place that is passed counts. With 3 dB this is F3, with 10 dB F10.',
  compute(given) {
    const wrong = mismatched(given.curve, 'level', 'curve');
    if (wrong) return wrong;
    const whole = bandOf(given.curve, given.curve.from, given.curve.to);
    if (whole instanceof Problem) return whole;
    const peak = extremeIn(given.curve, whole, 1);
    const found = crossingsIn(given.curve, { from: whole.from, to: peak.frequency }, -given.fall, 'upwards').at(-1);
    return (
      found ??
      new Problem(
        say`“${given.curve.title}” does not pass −${measured(given.fall, 'level')} below its peak; ask for another fall, or give a response whose pass band is at 0 dB.`,
        'fall',
      )
    );
  },
});

export const curveCrosses = define({
  name: 'CURVE.CROSSES',
  summary: 'The frequency at which a curve passes a value.',
  parameters: {
    curve,
    level: { quantity: 'any', min: -1e15, max: 1e15, summary: 'value that is passed, of the kind of the curve' },
    direction: {
      choice: ['upwards', 'downwards'],
      default: 'upwards',
      summary: 'rising or falling as the frequency rises',
    },
    ...band,
  },
  returns: { quantity: 'frequency', summary: 'lowest such frequency upwards, highest downwards' },
  source: { source: 'own', at: 'straight in log f between points of the grid' },
  example: { formula: '=CURVE.CROSSES(EDGE.STEP("220 mm"), "-3.0103 dB", "upwards")', gives: 523 },
  remarks:
    'Upwards gives the lowest place, downwards the highest, so that the two enclose the whole band above the value.',
  compute(given, context) {
    const wrong = mismatched(given.curve, context.quantity, 'level');
    if (wrong) return wrong;
    const within = bandOf(given.curve, given.from, given.to);
    if (within instanceof Problem) return within;
    const rising = given.direction !== 'downwards';
    const found = crossingsIn(given.curve, within, given.level, rising ? 'upwards' : 'downwards');
    return (
      found.at(rising ? 0 : -1) ??
      new Problem(
        say`“${given.curve.title}” does not pass ${measured(given.level, given.curve.quantity)} ${given.direction} between ${measured(within.from, 'frequency')} and ${measured(within.to, 'frequency')}; choose another value or band.`,
        'level',
      )
    );
  },
});
