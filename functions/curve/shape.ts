import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies, placeOf } from '../values/grid.ts';
import { bandOf, outsideOf, readAt } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

const curve = { record: 'curve', summary: 'curve' } as const;
const line = 'CURVE.READ(1 kHz, 90 dB)';
const source = { source: 'own', at: 'point by point on the grid of 48 frequencies an octave' } as const;

export const curvePhase = define({
  name: 'CURVE.PHASE',
  summary: 'The phase of a curve at a frequency.',
  parameters: { curve, frequency: { ...usual.frequency, summary: 'frequency' } },
  returns: { quantity: 'angle', summary: 'phase' },
  source: { source: 'own', at: 'straight in log f between 48 points an octave' },
  example: { formula: '=CURVE.PHASE(FILTER.SLOPE("1 kHz", "BW2", "low"), "1 kHz")', gives: -1.571 },
  compute(given) {
    const { phase } = given.curve;
    if (!phase)
      return new Problem(say`“${given.curve.title}” has no phase; MEASURE.MINIMUM_PHASE can give it one.`, 'curve');
    const wrong = outsideOf(given.curve, given.frequency);
    if (wrong) return wrong;
    // Neighbours may lie a whole turn apart where the phase is kept within ±180°.
    const index = Math.min(Math.floor(placeOf(given.frequency)), phase.length - 2);
    const [low, high] = [phase[Math.max(index, 0)]!, phase[Math.max(index, 0) + 1]!];
    const turn = 2 * Math.PI * Math.round((high - low) / (2 * Math.PI));
    return low + (placeOf(given.frequency) - Math.max(index, 0)) * (high - turn - low);
  },
});

/** Running mean over a band about each point; shorter at the ends of the band in which the curve holds. */
function smoothed(of: Curve, half: number, into: (y: number) => number, out: (mean: number) => number): Float64Array {
  const first = Math.max(0, Math.ceil(placeOf(Math.max(of.from, 1e-3)) - 1e-9));
  const last = Math.min(of.y.length - 1, Math.floor(placeOf(of.to) + 1e-9));
  return of.y.map((value, index) => {
    if (index < first || index > last) return value;
    const reach = Math.min(half, index - first, last - index);
    const whole = Math.floor(reach);
    // The outermost points count with the share of them that lies inside, so that every width is met.
    const edge = reach - whole;
    let sum = 0;
    for (let at = -whole; at <= whole; at += 1) sum += into(of.y[index + at]!);
    if (edge > 0) sum += edge * (into(of.y[index - whole - 1]!) + into(of.y[index + whole + 1]!));
    return out(sum / (2 * whole + 1 + 2 * edge));
  });
}

export const curveSmooth = define({
  name: 'CURVE.SMOOTH',
  summary: 'A curve averaged over a fraction of an octave about each frequency.',
  parameters: {
    curve,
    width: {
      quantity: 'octaves',
      above: 0,
      max: 4,
      default: 1 / 3,
      typical: [1 / 48, 1],
      summary: 'width of the average',
    },
  },
  returns: { record: 'curve', of: 'curve', summary: 'the curve smoothed; its phase is left out' },
  source: { source: 'own', at: 'mean of the power for levels, of the value for others, even in log f' },
  example: { formula: `=CURVE.AT(CURVE.SMOOTH(${line}, 0.333 oct), "1 kHz")`, gives: 90 },
  remarks:
    'A third of an octave is typed as a plain 1/3. Narrow dips fill up more than peaks fall, for levels are averaged as powers, as ears and noise do. Smooth for looking, not before summing or fitting.',
  compute(given) {
    const half = Math.max(0, given.width * 24 - 0.5);
    const { phase: _, ...bare } = given.curve;
    const isLevel = given.curve.quantity === 'level';
    return {
      ...bare,
      y: isLevel
        ? smoothed(
            given.curve,
            half,
            (y) => 10 ** (y / 10),
            (mean) => Math.max(-3000, 10 * Math.log10(mean)),
          )
        : smoothed(
            given.curve,
            half,
            (y) => y,
            (mean) => mean,
          ),
    };
  },
});

export const curveDivide = define({
  name: 'CURVE.DIVIDE',
  summary: 'The ratio of two curves of one kind, point by point.',
  parameters: {
    a: { record: 'curve', summary: 'curve' },
    b: { record: 'curve', summary: 'curve that it is divided by' },
  },
  returns: { record: 'curve', of: 'ratio', summary: 'ratio, with the difference of the phases' },
  source,
  example: {
    formula:
      '=CURVE.AT(CURVE.DIVIDE(CURVE.READ(1 kHz, 6 Ω, "resistance"), CURVE.READ(1 kHz, 4 Ω, "resistance")), "1 kHz")',
    gives: 1.5,
  },
  remarks: 'Levels are ratios already: take CURVE.DIFFERENCE for them.',
  compute({ a, b }) {
    if (a.quantity !== b.quantity)
      return new Problem(say`“${a.title}” and “${b.title}” show different things; give curves of one kind.`, 'b');
    if (a.quantity === 'level')
      return new Problem(say`Levels are not divided; take CURVE.DIFFERENCE for their difference in decibels.`, 'a');
    const [from, to] = [Math.max(a.from, b.from), Math.min(a.to, b.to)];
    if (!(from < to)) return new Problem(say`The two curves hold in bands that do not meet; choose others.`, 'b');
    const y = a.y.map((value, index) => value / b.y[index]!);
    if (!y.every(Number.isFinite)) return new Problem(say`“${b.title}” passes zero; it cannot divide.`, 'b');
    const phase = a.phase && b.phase ? a.phase.map((angle, index) => angle - b.phase![index]!) : undefined;
    return {
      kind: 'curve' as const,
      title: `${a.title} over ${b.title}`,
      quantity: 'ratio' as const,
      y,
      ...(phase && { phase }),
      from,
      to,
    };
  },
});

export const curveScale = define({
  name: 'CURVE.SCALE',
  summary: 'A curve multiplied by a number.',
  parameters: { curve, factor: { quantity: 'ratio', min: -1e9, max: 1e9, summary: 'factor' } },
  returns: { record: 'curve', of: 'curve', summary: 'the curve scaled' },
  source,
  example: { formula: '=CURVE.AT(CURVE.SCALE(CURVE.READ(1 kHz, 6 Ω, "resistance"), 2), "1 kHz")', gives: 12 },
  remarks: 'Travel for another voltage is travel times the ratio of the voltages. A level scaled by −1 is turned over.',
  compute: (given) => ({ ...given.curve, y: given.curve.y.map((value) => value * given.factor) }),
});

export const curveMean = define({
  name: 'CURVE.MEAN',
  summary: 'The mean of a curve over a band, every octave counting alike.',
  parameters: {
    curve,
    from: { ...usual.frequency, default: 20, summary: 'lower end of the band' },
    to: { ...usual.frequency, default: 20000, summary: 'upper end of the band' },
  },
  returns: { quantity: 'curve', summary: 'mean; of decibels as they stand' },
  source: { source: 'own', at: 'integral over log f by trapezia, over the width' },
  example: { formula: `=CURVE.MEAN(${line}, "300 Hz", "3 kHz")`, gives: 90 },
  compute(given) {
    const band = bandOf(given.curve, given.from, given.to);
    if (band instanceof Problem) return band;
    const inside = [...frequencies].filter((frequency) => frequency > band.from && frequency < band.to);
    const places = [band.from, ...inside, band.to];
    let sum = 0;
    for (let index = 1; index < places.length; index += 1) {
      const [low, high] = [places[index - 1]!, places[index]!];
      sum += ((readAt(given.curve.y, low) + readAt(given.curve.y, high)) / 2) * Math.log(high / low);
    }
    return sum / Math.log(band.to / band.from);
  },
});

export const curveJoin = define({
  name: 'CURVE.JOIN',
  summary: 'One curve below a frequency and another above it, as a near and a far measurement.',
  parameters: {
    low: { record: 'curve', summary: 'curve below' },
    high: { record: 'curve', summary: 'curve above' },
    frequency: { ...usual.frequency, summary: 'frequency at which they are joined' },
    width: { quantity: 'octaves', min: 0, max: 4, default: 0.5, summary: 'width over which one passes into the other' },
    match: { truth: true, default: true, summary: 'shift the lower level so that both agree at the frequency' },
  },
  returns: { record: 'curve', of: 'curve', summary: 'joined curve' },
  source: { source: 'own', at: 'straight cross-fade in log f' },
  example: {
    formula: `=CURVE.AT(CURVE.JOIN(CURVE.READ(1 kHz, 110 dB), ${line}, "300 Hz"), "100 Hz")`,
    gives: 90,
  },
  remarks:
    'A near measurement is some 30 dB too loud and lacks the step of the cabinet edge: add that first. The phase of the lower curve is shifted likewise where both have one. Other curves than levels are joined as they stand.',
  compute(given) {
    const { low, high, frequency } = given;
    if (low.quantity !== high.quantity)
      return new Problem(
        say`“${low.title}” and “${high.title}” show different things; give curves of one kind.`,
        'high',
      );
    const wrong = outsideOf(low, frequency) ?? outsideOf(high, frequency);
    if (wrong) return wrong;
    const edges = [frequency * 2 ** (-given.width / 2), frequency * 2 ** (given.width / 2)] as const;
    if (edges[0] < high.from * (1 - 1e-9) || edges[1] > low.to * (1 + 1e-9))
      return new Problem(
        say`From ${measured(edges[0], 'frequency')} to ${measured(edges[1], 'frequency')} both curves must hold; choose a narrower passage or another frequency.`,
        'width',
      );
    const shift = given.match && low.quantity === 'level' ? readAt(high.y, frequency) - readAt(low.y, frequency) : 0;
    const share = (at: number): number =>
      given.width === 0 ? Number(at > frequency) : Math.min(1, Math.max(0, Math.log2(at / edges[0]) / given.width));
    const faded = (a: Float64Array, b: Float64Array, by: number): Float64Array =>
      frequencies.map((at, index) => (1 - share(at)) * (a[index]! + by) + share(at) * b[index]!);
    const turned = low.phase && high.phase ? readAt(high.phase, frequency) - readAt(low.phase, frequency) : 0;
    return {
      kind: 'curve' as const,
      title: `${low.title} and ${high.title}`,
      quantity: low.quantity,
      y: faded(low.y, high.y, shift),
      ...(low.phase && high.phase && { phase: faded(low.phase, high.phase, given.match ? turned : 0) }),
      from: low.from,
      to: high.to,
    };
  },
});

export const curveTable = define({
  name: 'CURVE.TABLE',
  summary: 'A curve as a table of frequencies and values, and phases where it has them.',
  parameters: {
    curve,
    perOctave: { quantity: 'ratio', min: 1, max: 48, default: 3, summary: 'rows an octave' },
    from: { ...usual.frequency, default: 20, summary: 'lower end' },
    to: { ...usual.frequency, default: 20000, summary: 'upper end' },
  },
  returns: { record: 'table', summary: 'columns Frequency, Value and Phase' },
  source: { source: 'own', at: 'straight in log f between 48 points an octave' },
  example: { formula: `=TABLE.AT(CURVE.TABLE(${line}, 1, "100 Hz", "1 kHz"), 2, "Frequency", 1 Hz)`, gives: 200 },
  compute(given) {
    const band = bandOf(given.curve, given.from, given.to);
    if (band instanceof Problem) return band;
    const { phase, y, quantity, title } = given.curve;
    const count = Math.floor(Math.log2(band.to / band.from) * given.perOctave + 1e-9) + 1;
    return {
      kind: 'table' as const,
      title,
      columns: [
        { name: 'Frequency', quantity: 'frequency' as const },
        { name: 'Value', quantity },
        ...(phase ? [{ name: 'Phase', quantity: 'angle' as const }] : []),
      ],
      rows: Array.from({ length: count }, (_, index) => {
        const at = band.from * 2 ** (index / given.perOctave);
        return [at, readAt(y, at), ...(phase ? [readAt(phase, at)] : [])];
      }),
    };
  },
});
