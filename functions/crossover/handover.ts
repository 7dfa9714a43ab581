import { define } from '../define.ts';
import { curveOf, type ComplexCurve } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { crossingsIn, readAt } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Way } from '../values/way.ts';
import { onAxis, sumAt, wayFieldAt } from './direction.ts';
import { demoHighWay as high, demoLowWay as low } from './parameters.ts';
import { bandOfWays, summed } from './system.ts';

const pair = {
  low: { record: 'way', summary: 'way below the hand-over' },
  high: { record: 'way', summary: 'way above it' },
} as const;

/** The loudest frequency at which the high way overtakes the low one. */
function handoverOf(lower: Way, upper: Way): number | Problem {
  const band = bandOfWays([lower, upper]);
  if (band instanceof Problem) return new Problem(band.message, 'high');
  const a = curveOf({ title: '', quantity: 'level', from: band.from, to: band.to }, wayFieldAt(lower, onAxis));
  const b = curveOf({ title: '', quantity: 'level', from: band.from, to: band.to }, wayFieldAt(upper, onAxis));
  const gap: Curve = { ...a, y: a.y.map((level, index) => level - b.y[index]!) };
  const found = crossingsIn(gap, band, 0, 'downwards');
  if (found.length === 0)
    return new Problem(
      say`“${lower.name}” and “${upper.name}” are equally loud nowhere, the one falling and the other rising; check their filters and which is which.`,
      'high',
    );
  return found.reduce((best, next) => (readAt(a.y, next) > readAt(a.y, best) ? next : best));
}

export const systemHandover = define({
  name: 'SYSTEM.HANDOVER',
  summary: 'The frequency at which two neighbouring ways are equally loud.',
  parameters: pair,
  returns: { quantity: 'frequency', summary: 'acoustic hand-over' },
  source: { source: 'own', at: 'crossing of the levels on the axis, straight in log f' },
  example: { formula: `=SYSTEM.HANDOVER(${low}, ${high})`, gives: 1915 },
  remarks: 'Where they are so several times, the loudest of these.',
  compute: (given): number | Problem => handoverOf(given.low, given.high),
});

const turned = (way: Way): Way => ({ ...way, polarity: way.polarity === 1 ? -1 : 1 });

export const systemReversed = define({
  name: 'SYSTEM.REVERSED',
  summary: 'Level of two ways together with the upper one wired the other way round.',
  parameters: pair,
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: { source: 'own', at: 'sum of the complex pressures' },
  example: { formula: `=SYSTEM.REVERSED(${low}, ${high})`, gives: { title: 'Upper way reversed' } },
  remarks: 'The test of a good hand-over: in step they sum, and reversed they cancel in a deep, even null.',
  compute: (given): Curve | Problem =>
    summed('Upper way reversed', [given.low, given.high], () => sumAt([given.low, turned(given.high)], onAxis)),
});

export const systemNullDepth = define({
  name: 'SYSTEM.NULL_DEPTH',
  summary: 'How much quieter two ways become at their hand-over when the upper one is wired the other way round.',
  parameters: pair,
  returns: { quantity: 'level', summary: 'depth of the null, at most 100 dB' },
  source: { source: 'own', at: 'sums of the complex pressures with both polarities, at the equally loud frequency' },
  example: { formula: `=SYSTEM.NULL_DEPTH(${low}, ${high})`, gives: 3.1 },
  remarks:
    'Common practice, no source: 20 dB and more says that the ways are in step at the hand-over. A negative depth says that the other polarity is the louder one.',
  compute: (given): number | Problem => {
    const f = handoverOf(given.low, given.high);
    if (f instanceof Problem) return f;
    const levels = [given.high, turned(given.high)].map((upper) => levelBetween(sumAt([given.low, upper], onAxis), f));
    return Math.min(100, Math.max(-100, levels[0]! - levels[1]!));
  },
});

/** Level of complex values between two points of the grid, straight in both parts so that a null stays one. */
const levelBetween = ({ re, im }: ComplexCurve, f: number): number =>
  Math.max(-300, 20 * Math.log10(Math.hypot(readAt(re, f), readAt(im, f))));

export const systemPhaseGap = define({
  name: 'SYSTEM.PHASE_GAP',
  summary: 'The angle between two ways at their hand-over.',
  parameters: pair,
  returns: { quantity: 'angle', summary: 'angle from −180° to 180°; 0 in step' },
  source: { source: 'own', at: 'angle between the complex pressures at the equally loud frequency' },
  example: { formula: `=SYSTEM.PHASE_GAP(${low}, ${high})`, gives: 1.22 },
  compute: (given): number | Problem => {
    const f = handoverOf(given.low, given.high);
    if (f instanceof Problem) return f;
    const [a, b] = [given.low, given.high].map((way) => wayFieldAt(way, onAxis));
    const re = (of: ComplexCurve | undefined): number => readAt(of!.re, f);
    const im = (of: ComplexCurve | undefined): number => readAt(of!.im, f);
    return Math.atan2(im(b) * re(a) - re(b) * im(a), re(b) * re(a) + im(b) * im(a));
  },
});
