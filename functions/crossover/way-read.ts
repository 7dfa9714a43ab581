import { standardVolts } from '../air.ts';
import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { curveOf } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Way } from '../values/way.ts';
import { onAxis, wayFieldAt } from './direction.ts';
import { inputImpedance } from './ladder.ts';
import { demoHigh, demoTweeter } from './parameters.ts';
import { bandOfWay, driveOf } from './way-response.ts';

const way = { record: 'way', summary: 'the way' } as const;
const angle = { quantity: 'angle', min: -Math.PI / 2, max: Math.PI / 2, default: 0 } as const;
const demo = `WAY.OF(${demoTweeter}, ${demoHigh})`;
const solution = {
  source: 'own',
  at: 'ladder on the real impedance, times the pressure per volt of the driver',
} as const;

export const wayLevel = define({
  name: 'WAY.LEVEL',
  summary: 'Level of one way at 1 m on the listening axis for 2.83 V at the terminals of the loudspeaker.',
  parameters: { way },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: solution,
  example: { formula: `=CURVE.AT(WAY.LEVEL(${demo}), "10 kHz")`, gives: 90.2 },
  remarks: 'Half space. Filter, polarity, gain, delay and the depth of the acoustic centre are in it.',
  compute: (given): Curve => {
    const { from, to } = bandOfWay(given.way);
    return curveOf({ title: given.way.name, quantity: 'level', from, to }, wayFieldAt(given.way, onAxis));
  },
});

export const wayOffAxis = define({
  name: 'WAY.OFF_AXIS',
  summary: 'Level of one way at 1 m in a direction beside or above the listening axis.',
  parameters: {
    way,
    horizontal: { ...angle, summary: 'to the right' },
    vertical: { ...angle, summary: 'upwards' },
  },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: { source: 'beranek1954', at: 'piston in an infinite baffle; path difference far away' },
  example: {
    formula: `=WAY.OFF_AXIS(${demo}, "45°")`,
    gives: { quantity: 'level' },
  },
  remarks: 'For a listener far away against the size of the panel, in front of it.',
  compute: (given): Curve => {
    const { from, to } = bandOfWay(given.way);
    return curveOf({ title: given.way.name, quantity: 'level', from, to }, wayFieldAt(given.way, given));
  },
});

export const wayDrive = define({
  name: 'WAY.DRIVE',
  summary: 'The voltage at the driver over that at the terminals of the loudspeaker, through all filters.',
  parameters: { way },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: { source: 'own', at: 'ladder on the real impedance' },
  example: { formula: `=CURVE.AT(WAY.DRIVE(${demo}), "10 kHz")`, gives: 0.48 },
  compute: (given): Curve => {
    const { from, to } = bandOfWay(given.way);
    return curveOf({ title: 'Voltage at the driver', quantity: 'level', from, to }, driveOf(given.way));
  },
});

export const wayImpedance = define({
  name: 'WAY.IMPEDANCE',
  summary: 'The impedance of a way with its filter, as the amplifier sees it.',
  parameters: { way },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance with phase' },
  source: { source: 'own', at: 'ladder on the real impedance' },
  example: { formula: `=WAY.IMPEDANCE(${demo})`, gives: { quantity: 'resistance' } },
  compute: (given): Curve => inputImpedance(given.way.network, given.way.impedance),
});

/** One-way peak travel through the filters per volt at the terminals, or why there is none. */
export function travelPerVoltOf(of: Way): Float64Array | Problem {
  const { travel } = of;
  if (travel === undefined)
    return new Problem(
      say`“${of.name}” is made of measured curves and knows no travel; make it of a driver or a box with WAY.OF.`,
      'way',
    );
  const { re, im } = driveOf(of);
  return re.map((real, index) => (travel.y[index]! / standardVolts) * Math.hypot(real, im[index]!));
}

export const wayTravel = define({
  name: 'WAY.TRAVEL',
  summary: 'One-way peak travel of a driver through its filter, for a sine of a voltage at the loudspeaker.',
  parameters: {
    way,
    volts: { ...usual.volts, default: standardVolts, typical: [0.1, 100], summary: 'drive at the terminals, V rms' },
  },
  returns: { record: 'curve', of: 'travel', summary: 'one-way peak travel' },
  source: { source: 'small1973vented', at: 'cone displacement function, through the ladder on the real impedance' },
  example: {
    formula: `=WAY.TRAVEL(${demo}, "20 V")`,
    gives: { quantity: 'travel', title: 'Travel through the filter' },
  },
  remarks:
    'Linear: a real cone runs into its stops. With a second-order filter a tweeter moves most around its own resonance, where the filter meets a hump of many ohms.',
  compute: (given): Curve | Problem => {
    const each = travelPerVoltOf(given.way);
    if (each instanceof Problem) return each;
    const { from, to } = bandOfWay(given.way);
    const y = each.map((travel) => travel * given.volts);
    return { kind: 'curve', title: 'Travel through the filter', quantity: 'travel', y, from, to };
  },
});
