import { define } from '../define.ts';
import { largestBetween } from '../numeric/largest.ts';
import { bracketedRoot } from '../numeric/root.ts';
import type { Box } from '../values/box.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { solveLumped } from './lumped.ts';
import { modelOf } from './circuit-of.ts';
import { responseOf } from './model.ts';
import { box, demoBandpass, demoDriver } from './parameters.ts';
import { styleNames } from './style-names.ts';
import { usual } from '../usual.ts';

const decibels = (re: number, im: number): number => 10 * Math.log10(re * re + im * im);

/** Response in dB above the flat level at any one frequency. */
export function responseFunction(of: Box): (frequency: number) => number {
  const model = modelOf(of);
  const at = new Float64Array(1);
  return (frequency) => {
    at[0] = frequency;
    const { pressureRe, pressureIm } = solveLumped(model, at);
    return decibels(pressureRe[0]!, pressureIm[0]!);
  };
}

interface Peak {
  readonly level: number;
  readonly frequency: number;
}

/** The highest place of the response; `undefined` where it only rises towards its flat level. */
export function peakOf(of: Box): Peak | undefined {
  const { y } = responseOf(of);
  const place = y.reduce((best, level, index) => (level > y[best]! ? index : best), 0);
  const last = y.length - 1;
  if (place === last || (of.style !== 'bandpass' && y[place]! <= 0)) return undefined;
  const response = responseFunction(of);
  const frequency = largestBetween(response, frequencies[Math.max(place - 1, 0)]!, frequencies[place + 1]!);
  const level = response(frequency);
  // Rounding on the way to the flat level is no peak.
  return of.style !== 'bandpass' && level < 1e-9 ? undefined : { level, frequency };
}

const halfPower = 10 * Math.log10(2);
const drop = {
  ...usual.level,
  min: 0.01,
  max: 60,
  default: halfPower,
  typical: [1, 20],
  summary: 'decibels down; half power (3.01 dB) when left out',
} as const;

/** The last place of the grid, up to `upTo`, at which the response lies below a level, and where it crosses that. */
function cutoff(of: Box, level: number, upTo: number): number | Problem {
  const { y } = responseOf(of);
  const place = y.findLastIndex((each, index) => index <= upTo && each < level);
  if (place < 0) {
    return new Problem(
      say`The response stays above this down to ${measured(frequencies[0]!, 'frequency')}, where curves end: ask for more decibels.`,
      'drop',
    );
  }
  const next = frequencies[place + 1];
  if (next === undefined) {
    return new Problem(
      say`The response stays below this up to ${measured(frequencies.at(-1)!, 'frequency')}, where curves end: check the resonance of the driver.`,
      'box',
    );
  }
  const response = responseFunction(of);
  return bracketedRoot((f) => response(f) - level, frequencies[place]!, next) ?? next;
}

const highestPlace = (of: Box): number => {
  const { y } = responseOf(of);
  return y.reduce((best, level, index) => (level > y[best]! ? index : best), 0);
};

export const boxCutoff = define({
  name: 'BOX.CUTOFF',
  summary: 'Where the bass of a box is some decibels down: F3, F6, F10.',
  parameters: { box, drop },
  returns: { quantity: 'frequency', summary: 'highest frequency below which the response stays lower' },
  source: { source: 'small1972closed', at: 'half-power frequency of the response' },
  example: { formula: `=BOX.CUTOFF(CLOSED.BOX(${demoDriver}, "12.1 L"), "10 dB")`, gives: 40.2 },
  remarks:
    'Counted from the flat level; in a band-pass from its highest. F10 tells more of what is heard in a room than F3. Coil inductance is left out.',
  compute: (given) => {
    if (given.box.style !== 'bandpass') return cutoff(given.box, -given.drop, Infinity);
    const peak = peakOf(given.box);
    return cutoff(given.box, (peak?.level ?? 0) - given.drop, highestPlace(given.box));
  },
});

export const boxCutoffHigh = define({
  name: 'BOX.CUTOFF_HIGH',
  summary: 'Where the upper end of a band-pass box is some decibels below its highest.',
  parameters: { box, drop },
  returns: { quantity: 'frequency', summary: 'lowest frequency above which the response stays lower' },
  source: { source: 'own', at: 'response function of the band-pass circuit' },
  example: { formula: `=BOX.CUTOFF_HIGH(${demoBandpass})`, gives: 121 },
  compute: (given) => {
    if (given.box.style !== 'bandpass') {
      return new Problem(
        say`${styleNames[given.box.style]}: this response has no upper end in the circuit. Give a band-pass box.`,
        'box',
      );
    }
    const response = responseFunction(given.box);
    const level = (peakOf(given.box)?.level ?? 0) - given.drop;
    const top = frequencies.at(-1)!;
    const { y } = responseOf(given.box);
    const place = y.findLastIndex((each) => each >= level);
    return (
      bracketedRoot((f) => response(f) - level, frequencies[Math.max(place, 0)]!, frequencies[place + 1] ?? top) ??
      new Problem(say`The band reaches the end of the curves at ${measured(top, 'frequency')}.`, 'box')
    );
  },
});

export const boxPeak = define({
  name: 'BOX.PEAK',
  summary: 'How far the response of a box rises above its flat level; 0 where it does not.',
  parameters: { box },
  returns: { quantity: 'level', summary: 'highest response above the flat level' },
  source: { source: 'small1972closed', at: 'response peak Qtc²/√(Qtc² − ¼)' },
  example: { formula: `=BOX.PEAK(CLOSED.BOX(${demoDriver}, "12.1 L", "0.6 ohm"))`, gives: 0.12 },
  remarks: 'For a band-pass this is the gain or loss of the band over the level of the driver alone.',
  compute: (given) => peakOf(given.box)?.level ?? 0,
});

export const boxPeakAt = define({
  name: 'BOX.PEAK_AT',
  summary: 'Where the response of a box is highest.',
  parameters: { box },
  returns: { quantity: 'frequency', summary: 'frequency' },
  source: { source: 'small1972closed', at: 'response peak at fc/√(1 − 1/(2·Qtc²))' },
  example: { formula: `=BOX.PEAK_AT(CLOSED.BOX(${demoDriver}, "8 L"))`, gives: 158 },
  compute: (given) =>
    peakOf(given.box)?.frequency ??
    new Problem(say`The response has no peak: it only rises towards its flat level.`, 'box'),
});

export const boxRipple = define({
  name: 'BOX.RIPPLE',
  summary: 'Unevenness of the response of a box in its band: from its first peak up, highest minus lowest.',
  parameters: { box },
  returns: { quantity: 'level', summary: 'highest minus lowest' },
  source: { source: 'own', at: 'extremes of the response function' },
  example: { formula: `=BOX.RIPPLE(VENTED.BOX(${demoDriver}, "16 L", "45 Hz"))`, gives: 0.9 },
  remarks: '0 where the response has no peak. In a band-pass from the first peak to the last.',
  compute: (given) => {
    const { y } = responseOf(given.box);
    const peaks = [...y.keys()].filter(
      (index) => index > 0 && index < y.length - 1 && y[index]! > y[index - 1]! && y[index]! >= y[index + 1]!,
    );
    const first = peaks[0];
    if (first === undefined || peakOf(given.box) === undefined) return 0;
    const last = given.box.style === 'bandpass' ? (peaks.at(-1) ?? first) : y.length - 1;
    const highest = peakOf(given.box)?.level ?? 0;
    return highest - Math.min(...y.subarray(first, last + 1), highest);
  },
});
