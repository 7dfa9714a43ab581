import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';

/** A resistance as an impedance curve. */
export const resistorLoad = (ohms: number): Curve => ({
  kind: 'curve',
  title: 'Resistor',
  quantity: 'resistance',
  y: new Float64Array(frequencies.length).fill(ohms),
  phase: new Float64Array(frequencies.length),
  from: frequencies[0]!,
  to: frequencies.at(-1)!,
});

export const loadResistor = define({
  name: 'LOAD.RESISTOR',
  summary: 'A resistance as an impedance curve, to see a filter on the load it was worked out for.',
  parameters: { ohms: { ...usual.ohms, summary: 'resistance' } },
  returns: { record: 'curve', of: 'resistance', summary: 'the same ohms at every frequency, phase zero' },
  source: { source: 'own', at: 'Ohm’s law' },
  example: { formula: '=LOAD.RESISTOR("8 ohm")', gives: { quantity: 'resistance', title: 'Resistor' } },
  compute: (given) => resistorLoad(given.ohms),
});
