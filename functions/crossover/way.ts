import { define } from '../define.ts';
import { notWhole } from '../electrical/impedance.ts';
import type { Curve } from '../values/curve.ts';
import { commonBand } from '../values/interpolate.ts';
import type { Network } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Way } from '../values/way.ts';
import { demoHigh, demoLow, demoTweeter, demoWoofer } from './parameters.ts';
import { acousticOf } from './way-of.ts';

const wire: Network = { kind: 'network', name: 'Wire', legs: [] };
const offset = { quantity: 'length', min: -10, max: 10, default: 0 } as const;

const placing = {
  x: { ...offset, summary: 'how far to the right of the listening axis' },
  y: { ...offset, summary: 'how far above the listening axis' },
  z: { ...offset, summary: 'how far the acoustic centre lies behind the panel' },
  polarity: { choice: ['normal', 'reversed'], default: 'normal', summary: 'wiring of the driver' },
  gain: {
    quantity: 'level',
    min: -100,
    max: 60,
    default: 0,
    summary: 'gain ahead of it, when it has its own amplifier',
  },
  delay: { quantity: 'time', min: 0, max: 1, default: 0, summary: 'delay ahead of it, when it has its own amplifier' },
  title: { text: true, default: '', summary: 'what it is called; the name of the driver when left out' },
} as const;
const network = {
  record: 'network',
  optional: true,
  summary: 'filter between amplifier and driver; none when left out',
} as const;

interface Placed {
  readonly network: Network | undefined;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly polarity: string;
  readonly gain: number;
  readonly delay: number;
}

const placed = (given: Placed): Pick<Way, 'network' | 'position' | 'polarity' | 'gain' | 'delay'> => ({
  network: given.network ?? wire,
  position: { x: given.x, y: given.y, z: given.z },
  polarity: given.polarity === 'reversed' ? -1 : 1,
  gain: given.gain,
  delay: given.delay,
});

export const wayOf = define({
  name: 'WAY.OF',
  summary: 'A driver with its filter and its place on the front panel, as it takes part in a loudspeaker.',
  parameters: {
    source: { record: 'any', summary: 'a box with its driver, or a driver alone, taken as in an endless wall' },
    network,
    ...placing,
  },
  returns: { record: 'way', summary: 'the way' },
  source: {
    source: 'small1972direct',
    at: 'electrical equivalent circuit; pressure of the volume velocity in half space',
  },
  example: {
    formula: `=WAY.OF(${demoTweeter}, ${demoHigh}, 0, "70 mm")`,
    gives: { network: 'LR2 high-pass', y: 0.07 },
  },
  remarks:
    'The driver is a piston with voice-coil resistance and inductance, without break-up and cabinet edges: a measured way is nearer to the truth. A tweeter with a closed back is given as a driver. A series resistance that the box was sized with is left out here, since the coils of the filter bring their own; cable goes into the filter.',
  compute: (given): Way | Problem => {
    const { source } = given;
    if (source.kind !== 'driver' && source.kind !== 'box')
      return new Problem(say`A way is made of a driver or of a box with its driver; give one of them.`, 'source');
    const acoustic = acousticOf(source, 'source');
    if (acoustic instanceof Problem) return acoustic;
    const own = source.kind === 'box' ? source.driver.name : source.name;
    return { kind: 'way', name: given.title || own || 'Way', ...acoustic, ...placed(given) };
  },
});

/** Refuses a level curve that cannot be summed. */
function notPressure(curve: Curve, parameter: string): Problem | undefined {
  if (curve.quantity !== 'level')
    return new Problem(
      say`“${curve.title}” is not a level; give the level of the ${parameter === 'filter' ? 'filter' : 'driver'} in dB.`,
      parameter,
    );
  if (curve.phase !== undefined) return undefined;
  return new Problem(
    say`“${curve.title}” has no phase, and levels without phase do not sum; give a measurement with phase, or its minimum phase.`,
    parameter,
  );
}

export const wayMeasured = define({
  name: 'WAY.MEASURED',
  summary: 'A way from measured curves of the driver in its cabinet.',
  parameters: {
    pressure: { record: 'curve', summary: 'level at 1 m for 2.83 V at the driver, with phase, without any filter' },
    impedance: { record: 'curve', summary: 'impedance of the driver, with phase' },
    network,
    sd: {
      quantity: 'area',
      min: 0,
      max: 100,
      default: 0,
      summary: 'radiating area for the level off axis; a point when left out',
    },
    ...placing,
  },
  returns: { record: 'way', summary: 'the way' },
  source: { source: 'own', at: 'as measured' },
  example: {
    formula: `=WAY.MEASURED(FILTER.SLOPE("60 Hz", "BW2", "high"), LOAD.RESISTOR("6 ohm"), ${demoLow})`,
    gives: { basis: 'measured', network: 'LR2 low-pass' },
  },
  remarks:
    'The curve of a maker is taken on a large panel and lacks the step of your cabinet: add EDGE.STEP to it first. Measure all drivers of a loudspeaker from one microphone place with one time zero; then the places stay zero, because the phase holds them already. With phase from the magnitude alone, give the places.',
  compute: (given): Way | Problem => {
    const wrong = notPressure(given.pressure, 'pressure') ?? notWhole(given.impedance, 'impedance');
    if (wrong) return wrong;
    const band = commonBand([given.pressure, given.impedance]);
    if (band instanceof Problem) return new Problem(band.message, 'impedance');
    return {
      kind: 'way',
      name: given.title || given.pressure.title,
      pressure: given.pressure,
      impedance: given.impedance,
      sd: given.sd,
      basis: 'measured',
      ...placed(given),
    };
  },
});

const demoWay = `WAY.OF(${demoWoofer})`;

export const wayActive = define({
  name: 'WAY.ACTIVE',
  summary: 'The same way with an active filter ahead of its amplifier.',
  parameters: {
    way: { record: 'way', summary: 'the way' },
    filter: { record: 'curve', summary: 'level of the filter in dB, with phase' },
  },
  returns: { record: 'way', summary: 'the way behind the filter' },
  source: { source: 'own', at: 'product of the transfer functions' },
  example: { formula: `=WAY.ACTIVE(${demoWay}, FILTER.SLOPE("300 Hz", "LR4", "low"))`, gives: { basis: 'model' } },
  remarks: 'A filter that is there already stays: both act one after the other.',
  compute: (given): Way | Problem => {
    const { way, filter } = given;
    const wrong = notPressure(filter, 'filter');
    if (wrong) return wrong;
    const band = commonBand([way.pressure, way.impedance, filter]);
    if (band instanceof Problem) return new Problem(band.message, 'filter');
    if (way.active === undefined) return { ...way, active: filter };
    const { active } = way;
    const y = filter.y.map((level, index) => level + active.y[index]!);
    const phase = filter.phase!.map((angle, index) => angle + (active.phase?.[index] ?? 0));
    return { ...way, active: { ...filter, title: 'Active filters', y, phase, ...band } };
  },
});
