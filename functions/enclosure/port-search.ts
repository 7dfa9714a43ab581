import { define } from '../define.ts';
import type { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { box, demoVented, volts } from './parameters.ts';
import { endCorrections } from './port-ends.ts';
import { largestSpeed, portSets } from './port-sets.ts';
import { usual } from '../usual.ts';

const ends = endCorrections['flanged and free'];
/** Tried in steps of 5 mm. */
const diameters = Array.from({ length: 37 }, (_, index) => 0.02 + 0.005 * index);
const counts = [1, 2, 3, 4];

export const portSearch = define({
  name: 'PORT.SEARCH',
  summary: 'The sets of diameter, number and tuning that fit a depth and stay below a port speed, nearest first.',
  parameters: {
    box,
    depth: { ...usual.length, typical: [0.1, 1], summary: 'inner depth of the box behind the ports' },
    diameter: { ...usual.length, typical: [0.02, 0.25], summary: 'diameter wished for' },
    volts,
    speed: largestSpeed,
  },
  returns: { record: 'table', summary: 'the twenty nearest sets, a row each' },
  source: { source: 'own', at: 'every set tried; one diameter kept free behind the ports' },
  example: {
    formula: `=PORT.SEARCH(${demoVented}, "250 mm", "68 mm", "12 V")`,
    gives: { title: 'Ports that fit' },
  },
  remarks:
    'Distance counts octaves: those of the tuning four times, those of the diameter once, and a tenth for each further port. Speeds are for the given voltage, the highest at any frequency.',
  compute: ({ diameter, ...given }): TableRecord | Problem =>
    portSets(
      given,
      counts.flatMap((count) =>
        diameters.map((across) => ({
          sizes: [count, across],
          area: (count * Math.PI * across ** 2) / 4,
          ends: ends * across,
          free: across,
          away: Math.abs(Math.log2(across / diameter)) + 0.1 * (count - 1),
        })),
      ),
      {
        title: 'Ports that fit',
        sizes: [
          { name: 'Ports', quantity: 'ratio' },
          { name: 'Diameter', quantity: 'length' },
        ],
        nothing: (tuning) =>
          say`No ports within half an octave of ${measured(tuning, 'frequency')} fit a depth of ${measured(given.depth, 'length')} below ${measured(given.speed, 'speed')}: allow a higher speed, a lower voltage, an elbow or a deeper box.`,
      },
    ),
});
