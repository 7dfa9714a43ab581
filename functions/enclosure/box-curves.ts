import { define } from '../define.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { solveImpedance } from './impedance-curve.ts';
import { solveLumped } from './lumped.ts';
import { modelOf } from './circuit-of.ts';
import { flatLevel, loadOf, responseOf } from './model.ts';
import { box, demoClosed, demoVented, volts } from './parameters.ts';
import { travelCurve } from './travel-curve.ts';

export const whole = { from: frequencies[0]!, to: frequencies.at(-1)! } as const;

const coilRemark =
  'Small-signal theory: the coil inductance and the cone shape are left out, so the curve holds while the driver moves as a piston and its Le matters little, below some hundred hertz.';

export const boxResponse = define({
  name: 'BOX.RESPONSE',
  summary: 'Response of a box in decibels relative to its own flat level, with phase.',
  parameters: { box },
  returns: { record: 'curve', of: 'level', summary: 'response' },
  source: { source: 'small1973vented', at: 'response function with leakage, absorption and port losses' },
  example: { formula: `=BOX.RESPONSE(${demoClosed})`, gives: { title: 'Response', maximum: 0.0 } },
  remarks: coilRemark,
  compute: (given): Curve => ({
    kind: 'curve',
    title: 'Response',
    quantity: 'level',
    ...responseOf(given.box),
    ...whole,
  }),
});

export const boxLevel = define({
  name: 'BOX.LEVEL',
  summary: 'Level of a box at 1 m into half space, for a drive voltage.',
  parameters: { box, volts },
  returns: { record: 'curve', of: 'level', summary: 'level at 1 m' },
  source: { source: 'small1972direct', at: 'reference efficiency and response function' },
  example: { formula: `=BOX.LEVEL(${demoClosed})`, gives: { maximum: 89.2 } },
  remarks: coilRemark,
  compute(given): Curve {
    const flat = flatLevel(given.box) + 20 * Math.log10(given.volts);
    const { y, phase } = responseOf(given.box);
    return {
      kind: 'curve',
      title: 'Level at 1 m',
      quantity: 'level',
      y: y.map((level) => flat + level),
      phase,
      ...whole,
    };
  },
});

export const boxTravel = define({
  name: 'BOX.TRAVEL',
  summary: 'One-way peak travel of the cone for a sine of a drive voltage.',
  parameters: { box, volts },
  returns: { record: 'curve', of: 'travel', summary: 'one-way peak travel' },
  source: { source: 'small1973vented', at: 'cone displacement function' },
  example: { formula: `=BOX.TRAVEL(${demoVented}, "20 V")`, gives: { title: 'Travel' } },
  remarks:
    'The voltage is rms, the travel peak. The coil inductance is counted. Linear: a real cone runs into its stops above Xmax.',
  compute: (given): Curve | Problem => {
    const y = travelCurve(given.box, given.volts);
    return y instanceof Problem ? y : { kind: 'curve', title: 'Travel', quantity: 'travel', y, ...whole };
  },
});

export const boxImpedance = define({
  name: 'BOX.IMPEDANCE',
  summary: 'Impedance of the driver in its box, magnitude and phase, with voice-coil inductance.',
  parameters: { box },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance' },
  source: { source: 'small1973vented', at: 'electrical equivalent circuit' },
  example: { formula: `=BOX.IMPEDANCE(${demoClosed})`, gives: { title: 'Impedance', quantity: 'resistance' } },
  remarks:
    'At the terminals of the driver: series resistance ahead of it is not counted. The voice coil is Re and Le in series. With losses the dip between both humps of a vented box lies beside its tuning, not at it.',
  compute: (given): Curve => ({
    kind: 'curve',
    title: 'Impedance',
    quantity: 'resistance',
    ...solveImpedance(modelOf(given.box), frequencies, loadOf(given.box)),
    ...whole,
  }),
});

/** Half the relative step over which the slope of the phase is taken. */
const step = 1e-4;

export const boxDelay = define({
  name: 'BOX.DELAY',
  summary: 'Group delay of a box.',
  parameters: { box },
  returns: { record: 'curve', of: 'time', summary: 'group delay' },
  source: { source: 'own', at: 'slope of the phase of the response over frequency' },
  example: { formula: `=BOX.DELAY(${demoClosed})`, gives: { title: 'Group delay', quantity: 'time' } },
  compute: (given): Curve => {
    const model = modelOf(given.box);
    const above = solveLumped(
      model,
      frequencies.map((f) => f * (1 + step)),
    );
    const below = solveLumped(
      model,
      frequencies.map((f) => f * (1 - step)),
    );
    const y = frequencies.map((f, index) => {
      const aRe = above.pressureRe[index]!;
      const aIm = above.pressureIm[index]!;
      const bRe = below.pressureRe[index]!;
      const bIm = below.pressureIm[index]!;
      return -Math.atan2(aIm * bRe - aRe * bIm, aRe * bRe + aIm * bIm) / (4 * Math.PI * f * step);
    });
    return { kind: 'curve', title: 'Group delay', quantity: 'time', y, ...whole };
  },
});
