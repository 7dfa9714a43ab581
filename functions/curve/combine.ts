import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { bandOf, commonBand } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { mismatched } from './read.ts';

const curve = { record: 'curve', summary: 'curve' } as const;
const line = 'CURVE.READ(1 kHz, 90 dB)';
const source = { source: 'own', at: 'point by point on the grid of 48 frequencies an octave' } as const;

const unlike = (curves: readonly Curve[], parameter = 'curves'): Problem | undefined => {
  const first = curves[0];
  if (!first) return new Problem(say`There is no curve; give at least one.`, 'curves');
  const other = curves.find((each) => each.quantity !== first.quantity);
  return (
    other &&
    new Problem(say`“${first.title}” and “${other.title}” show different things; give curves of one kind.`, parameter)
  );
};

const pointwise = (curves: readonly Curve[], at: (index: number) => number): Float64Array =>
  Float64Array.from({ length: curves[0]!.y.length }, (_, index) => at(index));

const allWithPhase = (curves: readonly Curve[]): boolean => curves.every((each) => each.phase !== undefined);

export const curveSum = define({
  name: 'CURVE.SUM',
  summary: 'The level of several sources together.',
  parameters: { curves: { record: 'curve', many: true, summary: 'levels of the sources at the same place' } },
  returns: { record: 'curve', of: 'level', summary: 'level of the sum' },
  source: { source: 'own', at: 'sum of complex pressures, or of powers where a phase is missing' },
  example: { formula: `=CURVE.AT(CURVE.SUM(${line}, ${line}), "1 kHz")`, gives: 93.01 },
  remarks:
    'When every curve has a phase, pressures are added with it; when any has none, powers are added, as for sources that have nothing to do with one another. The title says which. Levels are cut off at −300 dB.',
  compute(given) {
    const wrong = unlike(given.curves) ?? mismatched(given.curves[0]!, 'level', 'curves');
    if (wrong) return wrong;
    const band = commonBand(given.curves);
    if (band instanceof Problem) return band;
    const whole = allWithPhase(given.curves);
    const parts = (index: number, turn: (angle: number) => number): number =>
      given.curves.reduce((sum, each) => sum + 10 ** (each.y[index]! / 20) * turn(each.phase![index]!), 0);
    const power = (index: number): number =>
      whole
        ? parts(index, Math.cos) ** 2 + parts(index, Math.sin) ** 2
        : given.curves.reduce((sum, each) => sum + 10 ** (each.y[index]! / 10), 0);
    const y = pointwise(given.curves, (index) => Math.max(-300, 10 * Math.log10(power(index))));
    const title = whole ? 'Sum with phase' : 'Sum of powers';
    const sum: Curve = { kind: 'curve', title, quantity: 'level', y, ...band };
    if (!whole) return sum;
    return {
      ...sum,
      phase: pointwise(given.curves, (index) => Math.atan2(parts(index, Math.sin), parts(index, Math.cos))),
    };
  },
});

export const curveAdd = define({
  name: 'CURVE.ADD',
  summary: 'Adds curves point by point, as a filter to a response.',
  parameters: { curve, curves: { record: 'curve', many: true, summary: 'curves that are added' } },
  returns: { record: 'curve', of: 'curve', summary: 'the first curve with the others added' },
  source,
  example: { formula: `=CURVE.AT(CURVE.ADD(${line}, EDGE.STEP("220 mm")), "523 Hz")`, gives: 87 },
  remarks: 'Decibels are added, so responses in a chain are multiplied. For sources side by side use CURVE.SUM.',
  compute(given) {
    const all = [given.curve, ...given.curves];
    const wrong = unlike(all);
    if (wrong) return wrong;
    const band = commonBand(all);
    if (band instanceof Problem) return band;
    const { phase: _, ...first } = given.curve;
    const y = pointwise(all, (index) => all.reduce((sum, each) => sum + each.y[index]!, 0));
    const added: Curve = { ...first, y, ...band };
    if (!allWithPhase(all)) return added;
    return { ...added, phase: pointwise(all, (index) => all.reduce((sum, each) => sum + each.phase![index]!, 0)) };
  },
});

export const curveDifference = define({
  name: 'CURVE.DIFFERENCE',
  summary: 'One curve less another, point by point.',
  parameters: { a: { record: 'curve', summary: 'curve' }, b: { record: 'curve', summary: 'curve that is taken away' } },
  returns: { record: 'curve', of: 'curve', summary: 'difference' },
  source,
  example: { formula: `=CURVE.AT(CURVE.DIFFERENCE(${line}, CURVE.READ(1 kHz, 86 dB)), "1 kHz")`, gives: 4 },
  compute(given) {
    const { a, b } = given;
    const wrong = unlike([a, b], 'b');
    if (wrong) return wrong;
    const band = commonBand([a, b], 'b');
    if (band instanceof Problem) return band;
    const y = pointwise([a], (index) => a.y[index]! - b.y[index]!);
    const less: Curve = { kind: 'curve', title: `${a.title} less ${b.title}`, quantity: a.quantity, y, ...band };
    if (!a.phase || !b.phase) return less;
    const { phase } = a;
    const other = b.phase;
    return { ...less, phase: pointwise([a], (index) => phase[index]! - other[index]!) };
  },
});

export const curveShift = define({
  name: 'CURVE.SHIFT',
  summary: 'Raises a curve by an amount, or lowers it by a negative one.',
  parameters: {
    curve,
    amount: { quantity: 'any', min: -1e15, max: 1e15, summary: 'amount, of the kind of the curve' },
  },
  returns: { record: 'curve', of: 'curve', summary: 'the curve shifted' },
  source,
  example: { formula: `=CURVE.AT(CURVE.SHIFT(${line}, "-5.3 dB"), "1 kHz")`, gives: 84.7 },
  compute: (given, context) =>
    mismatched(given.curve, context.quantity, 'amount') ?? {
      ...given.curve,
      y: given.curve.y.map((value) => value + given.amount),
    },
});

export const curveLimit = define({
  name: 'CURVE.LIMIT',
  summary: 'Narrows the band in which a curve is meant to hold.',
  parameters: {
    curve,
    from: { ...usual.frequency, summary: 'lower end of the band' },
    to: { ...usual.frequency, summary: 'upper end of the band' },
  },
  returns: { record: 'curve', of: 'curve', summary: 'the curve with the narrower band' },
  source,
  example: { formula: `=CURVE.LIMIT(${line}, "100 Hz", "2 kHz")`, gives: { from: 100, to: 2000 } },
  remarks: 'The band can be narrowed, never widened.',
  compute(given) {
    const band = bandOf(given.curve, given.from, given.to);
    return band instanceof Problem ? band : { ...given.curve, ...band };
  },
});
