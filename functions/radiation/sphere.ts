import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { sphereField } from '../numeric/sphere.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';

export const edgeSphere = define({
  name: 'EDGE.SPHERE',
  summary: 'The level of a small driver on a hard sphere over that of the same driver in a wide wall.',
  parameters: {
    diameter: { ...usual.length, max: 3, summary: 'diameter of the sphere', typical: [0.08, 1] },
    angle: { quantity: 'angle', min: 0, max: Math.PI, default: 0, summary: 'angle from the axis, up to 180° behind' },
  },
  returns: { record: 'curve', of: 'level', summary: 'level in dB: near 0 high up in front, −6 low down' },
  source: { source: 'olson1969', at: 'the sphere among the shapes of enclosures; computed here by its harmonics' },
  example: {
    formula: '=CURVE.AT(EDGE.SPHERE("20 cm"), "542 Hz")',
    gives: -3.01,
  },
  remarks:
    'Exact for a sphere, the cabinet with the smoothest step: it shows what a step looks like without the ripple of sharp edges, and how sound goes round to the back. A panel of some width behaves like a sphere a little smaller.',
  compute(given): Curve {
    const y = new Float64Array(frequencies.length);
    const phase = new Float64Array(frequencies.length);
    const cosines = [Math.cos(given.angle)];
    for (let index = 0; index < y.length; index += 1) {
      const { re, im } = sphereField((Math.PI * frequencies[index]! * given.diameter) / soundSpeed, cosines);
      y[index] = Math.max(-300, 20 * Math.log10(Math.hypot(re[0]!, im[0]!)));
      phase[index] = Math.atan2(im[0]!, re[0]!);
    }
    return {
      kind: 'curve',
      title: 'On a sphere',
      quantity: 'level',
      y,
      phase,
      from: frequencies[0]!,
      to: frequencies.at(-1)!,
    };
  },
});
