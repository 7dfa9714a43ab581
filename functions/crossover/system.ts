import { define } from '../define.ts';
import { curveOf, inverseOf, type ComplexCurve } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { commonBand, type Band } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Way } from '../values/way.ts';
import { onAxis, sumAt } from './direction.ts';
import { solveLadder } from './ladder.ts';
import { demoHighWay as high, demoLowWay as low } from './parameters.ts';
import { bandOfWay, silence } from './way-response.ts';

const ways = { record: 'way', many: true, summary: 'ways of the loudspeaker' } as const;
const angle = { quantity: 'angle', min: -Math.PI / 2, max: Math.PI / 2 } as const;
const source = { source: 'own', at: 'sum of the complex pressures' } as const;

/** The band in which all the ways hold, or why there is none. */
export function bandOfWays(all: readonly Way[]): Band | Problem {
  if (all.length === 0) return new Problem(say`There is no way; give at least one.`, 'ways');
  const band = commonBand(all.map(bandOfWay));
  return band instanceof Problem ? new Problem(band.message, 'ways') : band;
}

/** A curve of the sum over the band in which all the ways hold. */
export const summed = (title: string, all: readonly Way[], field: () => ComplexCurve): Curve | Problem => {
  const band = bandOfWays(all);
  return band instanceof Problem
    ? band
    : curveOf({ title: title, quantity: 'level', from: band.from, to: band.to }, field());
};

export const systemLevel = define({
  name: 'SYSTEM.LEVEL',
  summary: 'Level of all ways together at 1 m on the listening axis for 2.83 V at the terminals.',
  parameters: { ways },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source,
  example: { formula: `=SYSTEM.LEVEL(${low}, ${high})`, gives: { title: 'Level of the system' } },
  remarks:
    'With the phase of every way, its polarity, delay and the depth of its acoustic centre. Half space, far away.',
  compute: (given): Curve | Problem => summed('Level of the system', given.ways, () => sumAt(given.ways, onAxis)),
});

export const systemOffAxis = define({
  name: 'SYSTEM.OFF_AXIS',
  summary: 'Level of all ways together at 1 m in a direction beside or above the listening axis.',
  parameters: {
    horizontal: { ...angle, summary: 'to the right' },
    vertical: { ...angle, summary: 'upwards' },
    ways,
  },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: { source: 'beranek1954', at: 'pistons in an infinite baffle; path differences far away' },
  example: { formula: `=SYSTEM.OFF_AXIS(0, "10°", ${low}, ${high})`, gives: { title: 'Level off the axis' } },
  remarks: 'Each driver narrows as a piston of its area and comes nearer or goes farther by its place on the panel.',
  compute: (given): Curve | Problem => summed('Level off the axis', given.ways, () => sumAt(given.ways, given)),
});

/** Refuses ways that cannot share an amplifier: what acts ahead of it differs between them. A gain does not tell, since it
 *  may stand for what the cabinet takes. */
function apart(all: readonly Way[]): Problem | undefined {
  const [first] = all;
  const other = all.find(({ active, delay }) => active !== first?.active || delay !== first?.delay);
  if (first === undefined || other === undefined) return undefined;
  return new Problem(
    say`“${first.name}” and “${other.name}” differ in active filter or delay, so each has an amplifier of its own; give those that share one, or WAY.IMPEDANCE of each.`,
    'ways',
  );
}

export const systemImpedance = define({
  name: 'SYSTEM.IMPEDANCE',
  summary: 'The impedance of all ways together, as one amplifier sees it.',
  parameters: { ways },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance with phase' },
  source: { source: 'own', at: 'sum of the complex admittances' },
  example: { formula: `=SYSTEM.IMPEDANCE(${low}, ${high})`, gives: { quantity: 'resistance' } },
  remarks:
    'Only ways that share an amplifier belong here; those with an active filter or a delay of their own are refused. Below what the amplifier allows at any frequency, do not connect it.',
  compute: (given): Curve | Problem => {
    const band = apart(given.ways) ?? bandOfWays(given.ways);
    if (band instanceof Problem) return band;
    const sum = silence();
    for (const way of given.ways) {
      const { re, im } = solveLadder(way.network, way.impedance).admittance;
      for (let index = 0; index < re.length; index += 1) {
        sum.re[index] = sum.re[index]! + re[index]!;
        sum.im[index] = sum.im[index]! + im[index]!;
      }
    }
    return curveOf({ title: 'Impedance of the system', quantity: 'resistance', ...band }, inverseOf(sum, sum));
  },
});

/** Minus the slope of the phase over frequency, from the turn between the neighbours of each point: less than half a
 *  round, or the delay is misread. */
function groupDelay({ re, im }: ComplexCurve): Float64Array {
  const last = re.length - 1;
  return re.map((_, index) => {
    const [a, b] = [Math.max(index - 1, 0), Math.min(index + 1, last)];
    const real = re[b]! * re[a]! + im[b]! * im[a]!;
    const imaginary = im[b]! * re[a]! - re[b]! * im[a]!;
    return -Math.atan2(imaginary, real) / (2 * Math.PI * (frequencies[b]! - frequencies[a]!));
  });
}

export const systemDelay = define({
  name: 'SYSTEM.DELAY',
  summary: 'Group delay of all ways together on the listening axis.',
  parameters: { ways },
  returns: { record: 'curve', of: 'time', summary: 'group delay' },
  source: { source: 'own', at: 'slope of the phase of the sum over frequency, between neighbours on the grid' },
  example: { formula: `=SYSTEM.DELAY(${low}, ${high})`, gives: { quantity: 'time', title: 'Group delay' } },
  remarks: 'A delay that all ways share is in it.',
  compute: (given): Curve | Problem => {
    const band = bandOfWays(given.ways);
    if (band instanceof Problem) return band;
    // The shared part is added afterwards: it would turn the phase by more than half a round between neighbours.
    const shared = Math.min(...given.ways.map((way) => way.delay));
    const without = given.ways.map((way) => ({ ...way, delay: way.delay - shared }));
    const y = groupDelay(sumAt(without, onAxis)).map((time) => time + shared);
    return { kind: 'curve', title: 'Group delay', quantity: 'time', y, ...band };
  },
});
