import { define } from '../define.ts';
import { airDensity } from '../air.ts';
import { struveH1 } from '../numeric/struve.ts';
import { usual } from '../usual.ts';
import { resistanceRatio } from './directivity.ts';
import { sd, sizeOf } from './piston.ts';

const frequency = { ...usual.frequency, summary: 'frequency' } as const;

export const pistonResistance = define({
  name: 'PISTON.RESISTANCE',
  summary: 'The radiation resistance of one side of a piston in a wall, over ρ·c·Sd.',
  parameters: { sd, frequency },
  returns: { quantity: 'ratio', summary: 'resistance that the air takes power with' },
  source: { source: 'beranek1954', at: 'piston in an infinite baffle, R1 = 1 − J1(2ka)/ka' },
  example: { formula: '=PISTON.RESISTANCE("137 cm²", "827.1 Hz")', gives: 0.423 },
  remarks:
    'Rises with the square of frequency up to ka = 1, then stays near 1: there a driver stops getting more efficient.',
  compute: (given) => resistanceRatio(sizeOf(given.sd, given.frequency)),
});

export const pistonReactance = define({
  name: 'PISTON.REACTANCE',
  summary: 'The radiation reactance of one side of a piston in a wall, over ρ·c·Sd.',
  parameters: { sd, frequency },
  returns: { quantity: 'ratio', summary: 'reactance of the air that moves along' },
  source: { source: 'abramowitz1964', at: '12.1, Struve function H1: X1 = H1(2ka)/ka' },
  example: { formula: '=PISTON.REACTANCE("137 cm²", "827.1 Hz")', gives: 0.647 },
  compute(given) {
    const ka = sizeOf(given.sd, given.frequency);
    return struveH1(2 * ka) / ka;
  },
});

export const pistonAirLoad = define({
  name: 'PISTON.AIR_LOAD',
  summary: 'The mass of air that one side of a piston in a wall carries along at low frequencies.',
  parameters: { sd },
  returns: { quantity: 'mass', summary: 'mass of air on one side' },
  source: { source: 'beranek1954', at: 'piston in an infinite baffle at low frequencies, 8·ρ·a³/3' },
  example: { formula: '=PISTON.AIR_LOAD("137 cm²")', gives: 0.000925 },
  remarks: 'Mms of a datasheet holds the air of both sides already; add it twice only to the mass of the bare cone.',
  compute: (given) => (8 / 3) * airDensity * (given.sd / Math.PI) ** 1.5,
});
