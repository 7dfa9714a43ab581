import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { box, demoVented, volts } from './parameters.ts';
import { slotEnds } from './port-ends.ts';
import { largestSpeed, portSets } from './port-sets.ts';
import { along } from './port-tuning.ts';

/** Tried in steps of 2.5 mm. */
const heights = Array.from({ length: 61 }, (_, index) => 0.01 + 0.0025 * index);

export const portSlotSearch = define({
  name: 'PORT.SLOT_SEARCH',
  summary: 'The heights and tunings of a slot port that fit a depth and stay below a speed, nearest first.',
  parameters: {
    box,
    depth: { ...usual.length, typical: [0.1, 1], summary: 'inner depth of the box behind the slot' },
    width: { ...usual.length, typical: [0.05, 0.6], summary: 'width of the slot, often that of the box inside' },
    height: { ...usual.length, typical: [0.01, 0.15], summary: 'height wished for' },
    volts,
    speed: largestSpeed,
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
  compute: ({ width, height, along: walls, ...given }): TableRecord | Problem =>
    portSets(
      given,
      heights.map((high) => ({
        sizes: [high],
        area: high * width,
        ends: slotEnds(high * width, walls),
        free: high,
        away: Math.abs(Math.log2(high / height)),
      })),
      {
        title: 'Slots that fit',
        sizes: [{ name: 'Height', quantity: 'length' }],
        nothing: (tuning) =>
          say`No slot of ${measured(width, 'length')} within half an octave of ${measured(tuning, 'frequency')} fits a depth of ${measured(given.depth, 'length')} below ${measured(given.speed, 'speed')}: allow a higher speed, a lower voltage, another width or a deeper box.`,
      },
    ),
});
