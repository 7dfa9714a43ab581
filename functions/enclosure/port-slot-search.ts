import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { box, demoVented, volts } from './parameters.ts';
import { portSpeedCurve } from './port-curves.ts';
import { effectiveLength, slotEnds } from './port-ends.ts';
import { along } from './port-tuning.ts';

/** Steps of the search: 2.5 mm of height, a 24th of an octave of tuning, up to half an octave either way. */
const heights = Array.from({ length: 61 }, (_, index) => 0.01 + 0.0025 * index);
const shifts = Array.from({ length: 25 }, (_, index) => (index - 12) / 24);

export const portSlotSearch = define({
  name: 'PORT.SLOT_SEARCH',
  summary: 'The heights and tunings of a slot port that fit a depth and stay below a speed, nearest first.',
  parameters: {
    box,
    depth: { ...usual.length, typical: [0.1, 1], summary: 'inner depth of the box behind the slot' },
    width: { ...usual.length, typical: [0.05, 0.6], summary: 'width of the slot, often that of the box inside' },
    height: { ...usual.length, typical: [0.01, 0.15], summary: 'height wished for' },
    volts,
    speed: {
      quantity: 'speed',
      min: 1,
      max: 100,
      default: 17,
      typical: [10, 35],
      summary: 'largest peak speed of the air',
    },
    along: { ...along, default: 1 },
  },
  returns: { record: 'table', summary: 'the twenty nearest sets: Height, Tuning, Length, Speed, Clearance, Distance' },
  source: { source: 'own', at: 'every set tried; one height kept free behind the slot' },
  example: {
    formula: `=PORT.SLOT_SEARCH(${demoVented}, "300 mm", "180 mm", "20 mm", "12 V")`,
    gives: { title: 'Slots that fit' },
  },
  remarks:
    'Distance counts octaves: those of the tuning four times, those of the height once. A slot that is very flat loses more to its walls than the model says; keep the width below some eight heights (common practice, no source).',
  compute(given): TableRecord | Problem {
    const { tuning, volume, fill } = given.box;
    if (given.box.style !== 'vented' || tuning === undefined)
      return new Problem(say`Ports are searched for a vented box: give one made by VENTED.BOX.`, 'box');
    const rows: (readonly number[])[] = [];
    for (const shift of shifts) {
      const at = tuning * 2 ** shift;
      const moved: Box = { ...given.box, tuning: at };
      const each = portSpeedCurve(moved, 1, given.volts);
      if (each instanceof Problem) return each;
      const flow = Math.max(...each);
      for (const height of heights) {
        const area = height * given.width;
        const length = effectiveLength(area, volume * fill, at) - slotEnds(area, given.along);
        const clearance = given.depth - length - height;
        if (length <= 0 || clearance < 0 || flow / area > given.speed) continue;
        const distance = 4 * Math.abs(shift) + Math.abs(Math.log2(height / given.height));
        rows.push([height, at, length, flow / area, clearance, distance]);
      }
    }
    if (rows.length === 0)
      return new Problem(
        say`No slot of ${measured(given.width, 'length')} within half an octave of ${measured(tuning, 'frequency')} fits a depth of ${measured(given.depth, 'length')} below ${measured(given.speed, 'speed')}: allow a higher speed, a lower voltage, another width or a deeper box.`,
        'depth',
      );
    return {
      kind: 'table',
      title: 'Slots that fit',
      columns: [
        { name: 'Height', quantity: 'length' },
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
