import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { bandOf, commonBand, outsideOf, readAt, type Band } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { demoLimits } from './limit.ts';

const limits = {
  record: 'curve',
  many: true,
  summary: 'limits, such as those of LIMIT.TRAVEL and LIMIT.HEAT',
} as const;
const source = { source: 'own', at: 'lowest of the limits at every frequency' } as const;

function shared(curves: readonly Curve[]): Band | Problem {
  const [first] = curves;
  if (first === undefined) return new Problem(say`There is no limit; give at least one.`, 'limits');
  const other = curves.find(({ quantity }) => quantity !== 'level');
  if (other !== undefined) return new Problem(say`“${other.title}” is not a level; give limits in dB.`, 'limits');
  const band = commonBand(curves);
  return band instanceof Problem ? new Problem(band.message, 'limits') : band;
}

const lowestAt = (curves: readonly Curve[], index: number): number =>
  curves.reduce((best, curve, which) => (curve.y[index]! < curves[best]!.y[index]! ? which : best), 0);

export const limitLowest = define({
  name: 'LIMIT.LOWEST',
  summary: 'The level at which the first of several limits is reached, at every frequency.',
  parameters: { limits },
  returns: { record: 'curve', of: 'level', summary: 'largest level at 1 m' },
  source,
  example: { formula: `=LIMIT.LOWEST(${demoLimits})`, gives: { title: 'First limit' } },
  compute: (given): Curve | Problem => {
    const band = shared(given.limits);
    if (band instanceof Problem) return band;
    const y = frequencies.map((_, index) => given.limits[lowestAt(given.limits, index)]!.y[index]!);
    return { kind: 'curve', title: 'First limit', quantity: 'level', y, ...band };
  },
});

export const limitAt = define({
  name: 'LIMIT.AT',
  summary: 'Which of several limits is reached first at a frequency.',
  parameters: { frequency: { ...usual.frequency, summary: 'frequency' }, limits },
  returns: { text: true, summary: 'title of the limit' },
  source,
  example: { formula: `=LIMIT.AT("40 Hz", ${demoLimits})`, gives: 'Travel of Way' },
  compute: (given): string | Problem => {
    const band = shared(given.limits);
    if (band instanceof Problem) return band;
    const first = given.limits[0]!;
    const outside = outsideOf({ ...first, ...band }, given.frequency);
    if (outside) return outside;
    return given.limits.reduce((best, each) =>
      readAt(each.y, given.frequency) < readAt(best.y, given.frequency) ? each : best,
    ).title;
  },
});

interface Stretch {
  readonly which: number;
  readonly from: number;
  to: number;
  lowest: number;
  highest: number;
}

/** Neighbouring points with the same first limit, in one stretch each; they meet half way. */
function stretchesOf(curves: readonly Curve[], band: Band): Stretch[] {
  const found: Stretch[] = [];
  for (let index = 0; index < frequencies.length; index += 1) {
    const f = frequencies[index]!;
    if (f < band.from * (1 - 1e-9) || f > band.to * (1 + 1e-9)) continue;
    const which = lowestAt(curves, index);
    const level = curves[which]!.y[index]!;
    const last = found.at(-1);
    if (last?.which === which) {
      last.to = f;
      last.lowest = Math.min(last.lowest, level);
      last.highest = Math.max(last.highest, level);
      continue;
    }
    const edge = last === undefined ? f : Math.sqrt(last.to * f);
    if (last !== undefined) last.to = edge;
    found.push({ which, from: edge, to: f, lowest: level, highest: level });
  }
  return found;
}

export const limitMap = define({
  name: 'LIMIT.MAP',
  summary: 'Which limit is reached first in which band, and at what level.',
  parameters: {
    from: { ...usual.frequency, summary: 'lower end of the band looked at' },
    to: { ...usual.frequency, summary: 'upper end of the band looked at' },
    limits,
  },
  returns: { record: 'table', summary: 'from, to, limit, lowest and highest level' },
  source,
  example: {
    formula: `=LIMIT.MAP("20 Hz", "20 kHz", ${demoLimits})`,
    gives: { title: 'First limit by frequency' },
  },
  remarks:
    'For a steady sine at 1 m. Give every limit the level of the whole loudspeaker as what is heard, and the map is that of the loudspeaker.',
  compute: (given): TableRecord | Problem => {
    const common = shared(given.limits);
    if (common instanceof Problem) return common;
    const band = bandOf({ ...given.limits[0]!, ...common }, given.from, given.to);
    if (band instanceof Problem) return band;
    return {
      kind: 'table',
      title: 'First limit by frequency',
      columns: [
        { name: 'From', quantity: 'frequency' },
        { name: 'To', quantity: 'frequency' },
        { name: 'Limit', quantity: 'text' },
        { name: 'Lowest level', quantity: 'level' },
        { name: 'Highest level', quantity: 'level' },
      ],
      rows: stretchesOf(given.limits, band).map(({ which, from, to, lowest, highest }) => [
        from,
        to,
        given.limits[which]!.title,
        lowest,
        highest,
      ]),
    };
  },
});
