import { define } from '../define.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { box, demoVented, volts } from './parameters.ts';
import { portSpeedCurve } from './port-curves.ts';
import { effectiveLength, endCorrections } from './port-ends.ts';
import { usual } from '../usual.ts';

const ends = endCorrections['flanged and free'];
/** Steps of the search: 5 mm of diameter, a 24th of an octave of tuning, up to half an octave either way. */
const diameters = Array.from({ length: 37 }, (_, index) => 0.02 + 0.005 * index);
const shifts = Array.from({ length: 25 }, (_, index) => (index - 12) / 24);
const counts = [1, 2, 3, 4];

export const portSearch = define({
  name: 'PORT.SEARCH',
  summary: 'The sets of diameter, number and tuning that fit a depth and stay below a port speed, nearest first.',
  parameters: {
    box,
    depth: { ...usual.length, typical: [0.1, 1], summary: 'inner depth of the box behind the ports' },
    diameter: { ...usual.length, typical: [0.02, 0.25], summary: 'diameter wished for' },
    volts,
    speed: {
      quantity: 'speed',
      min: 1,
      max: 100,
      default: 17,
      typical: [10, 35],
      summary: 'largest peak speed of the air',
    },
  },
  returns: { record: 'table', summary: 'the twenty nearest sets, a row each' },
  source: { source: 'own', at: 'every set tried; one diameter kept free behind the ports' },
  example: {
    formula: `=PORT.SEARCH(${demoVented}, "250 mm", "68 mm", "12 V")`,
    gives: { title: 'Ports that fit' },
  },
  remarks:
    'Distance counts octaves: those of the tuning four times, those of the diameter once, and a tenth for each further port. Speeds are for the given voltage, the highest at any frequency.',
  compute: (given): TableRecord | Problem => {
    const { tuning, volume, fill } = given.box;
    if (given.box.style !== 'vented' || tuning === undefined) {
      return new Problem(say`Ports are searched for a vented box: give one made by VENTED.BOX.`, 'box');
    }
    const rows: (readonly number[])[] = [];
    for (const shift of shifts) {
      const at = tuning * 2 ** shift;
      const moved: Box = { ...given.box, tuning: at };
      const each = portSpeedCurve(moved, 1, given.volts);
      if (each instanceof Problem) return each;
      const flow = Math.max(...each);
      for (const count of counts) {
        for (const across of diameters) {
          const area = (count * Math.PI * across ** 2) / 4;
          const length = effectiveLength(area, volume * fill, at) - ends * across;
          const clearance = given.depth - length - across;
          if (length <= 0 || clearance < 0 || flow / area > given.speed) continue;
          const distance = 4 * Math.abs(shift) + Math.abs(Math.log2(across / given.diameter)) + 0.1 * (count - 1);
          rows.push([count, across, at, length, flow / area, clearance, distance]);
        }
      }
    }
    if (rows.length === 0) {
      return new Problem(
        say`No ports within half an octave of ${measured(tuning, 'frequency')} fit a depth of ${measured(given.depth, 'length')} below ${measured(given.speed, 'speed')}: allow a higher speed, a lower voltage, an elbow or a deeper box.`,
        'depth',
      );
    }
    return {
      kind: 'table',
      title: 'Ports that fit',
      columns: [
        { name: 'Ports', quantity: 'ratio' },
        { name: 'Diameter', quantity: 'length' },
        { name: 'Tuning', quantity: 'frequency' },
        { name: 'Length', quantity: 'length' },
        { name: 'Speed', quantity: 'speed' },
        { name: 'Clearance', quantity: 'length' },
        { name: 'Distance', quantity: 'octaves' },
      ],
      rows: rows.toSorted((one, other) => one.at(-1)! - other.at(-1)!).slice(0, 20),
    };
  },
});
