import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import {
  portCount as count,
  portDiameter as diameter,
  portEnds as ends,
  portLength as length,
  tuning,
  volume,
} from './parameters.ts';
import { diameterOf, effectiveLength, endCorrections, flareLength, helmholtz, slotEnds } from './port-ends.ts';
import { usual } from '../usual.ts';

const width = { ...usual.length, summary: 'width of the slot' } as const;
const height = { ...usual.length, summary: 'height of the slot' } as const;
export const along = {
  quantity: 'ratio',
  whole: true,
  min: 0,
  max: 2,
  default: 0,
  summary: 'how many walls of the box the inner end lies along',
} as const;
const source = { source: 'beranek1954', at: 'Helmholtz resonator with end correction' } as const;

const areaOf = (across: number, ports: number): number => (ports * Math.PI * across ** 2) / 4;

export const portTuning = define({
  name: 'PORT.TUNING',
  summary: 'The tuning that one or more equal round ports of a length give a volume.',
  parameters: { volume, length, diameter, count, ends },
  returns: { quantity: 'frequency', summary: 'tuning' },
  source,
  example: { formula: '=PORT.TUNING("22.3 L", "260 mm", "68 mm")', gives: 39.6 },
  compute: (given) =>
    helmholtz(
      areaOf(given.diameter, given.count),
      given.volume,
      given.length + endCorrections[given.ends] * given.diameter,
    ),
});

export const portSlotTuning = define({
  name: 'PORT.SLOT_TUNING',
  summary: 'The tuning that a slot port of a length gives a volume.',
  parameters: { volume, length, width, height, along },
  returns: { quantity: 'frequency', summary: 'tuning' },
  source,
  example: { formula: '=PORT.SLOT_TUNING("25 L", "180 mm", "200 mm", "25 mm")', gives: 50.0 },
  remarks:
    'The outer end is flush with the panel, the inner one stands free; its correction grows with each wall that it lies along, by the mirror image of the opening. Allow 5 % for wide slots.',
  compute: (given) => {
    const area = given.width * given.height;
    return helmholtz(area, given.volume, given.length + slotEnds(area, given.along));
  },
});

export const portSlotLength = define({
  name: 'PORT.SLOT_LENGTH',
  summary: 'Length of a slot port for a tuning.',
  parameters: { volume, tuning, width, height, along },
  returns: { quantity: 'length', summary: 'length' },
  source,
  example: { formula: '=PORT.SLOT_LENGTH("25 L", "50 Hz", "200 mm", "25 mm")', gives: 0.18 },
  compute: (given) => {
    const area = given.width * given.height;
    const found = effectiveLength(area, given.volume, given.tuning) - slotEnds(area, given.along);
    return found > 0
      ? found
      : new Problem(
          say`A slot of ${measured(given.height, 'length')} by ${measured(given.width, 'length')} is too small for this: its ends alone tune the box below ${measured(given.tuning, 'frequency')}. Take a larger slot, or tune lower.`,
          'height',
        );
  },
});

export const portFlaredLength = define({
  name: 'PORT.FLARED_LENGTH',
  summary: 'Whole length of each round port for a tuning, with one or both ends flared by a quarter circle.',
  parameters: {
    volume,
    tuning,
    diameter,
    flare: { ...usual.length, typical: [0.005, 0.05], summary: 'radius of the flare' },
    count,
    flares: { choice: ['outer end', 'both ends'], default: 'both ends', summary: 'which ends are flared' },
  },
  returns: { quantity: 'length', summary: 'length from mouth to mouth' },
  source: { source: 'own', at: 'air of the flare by its section, mouth as a flanged end' },
  example: { formula: '=PORT.FLARED_LENGTH("22.3 L", "39.6 Hz", "68 mm", "20 mm")', gives: 0.281 },
  remarks: 'The diameter is that of the throat. A plain inner end stands free.',
  compute: (given) => {
    const radius = given.diameter / 2;
    const end = flareLength(radius, given.flare);
    const other = given.flares === 'both ends' ? end : 0.613 * radius;
    const straight = effectiveLength(areaOf(given.diameter, given.count), given.volume, given.tuning) - end - other;
    return straight >= 0
      ? straight + given.flare * (given.flares === 'both ends' ? 2 : 1)
      : new Problem(
          say`The flares alone tune the box below ${measured(given.tuning, 'frequency')}: take a larger diameter, a smaller flare, or tune lower.`,
          'flare',
        );
  },
});

export const portElbow = define({
  name: 'PORT.ELBOW',
  summary: 'How much of a port lies behind a right-angled elbow when its first part keeps a diameter from the back.',
  parameters: {
    depth: { ...usual.length, summary: 'inner depth of the box behind the port' },
    length,
    diameter,
    bend: {
      ...usual.length,
      optional: true,
      summary: 'radius of the bend along its middle; one diameter when left out',
    },
  },
  returns: { quantity: 'length', summary: 'straight length behind the elbow; 0 where the port fits straight' },
  source: { source: 'practice', at: 'length along the middle of the bend' },
  example: { formula: '=PORT.ELBOW("250 mm", "260 mm", "68 mm")', gives: 0.0392 },
  compute: (given) => {
    const { depth, diameter: across } = given;
    const bend = given.bend ?? across;
    if (given.length + across <= depth) return 0;
    // The bend reaches its radius and half a diameter further than the straight part before it.
    const first = depth - bend - across / 2 - across / 2;
    if (first < 0) {
      return new Problem(
        say`A bend of ${measured(bend, 'length')} does not fit a depth of ${measured(depth, 'length')}: take a smaller diameter.`,
        'depth',
      );
    }
    return Math.max(0, given.length - first - (Math.PI / 2) * bend);
  },
});

export const portLeastArea = define({
  name: 'PORT.LEAST_AREA',
  summary: 'The least area of ports by rule of thumb, for a volume that the cone displaces.',
  parameters: {
    area: { ...usual.area, summary: 'cone area' },
    travel: { ...usual.travel, summary: 'largest one-way travel' },
    tuning,
  },
  returns: { quantity: 'area', summary: 'least total area' },
  source: { source: 'practice', at: 'S ≥ 0.8·fb·Sd·Xmax' },
  example: { formula: '=PORT.LEAST_AREA("137 cm2", "5.5 mm", "40 Hz")', gives: 0.0024 },
  remarks: 'From memory, a rule of thumb: BOX.PORT_SPEED shows the speed itself.',
  compute: (given) => 0.8 * given.tuning * given.area * given.travel,
});

export const portDiameterOf = define({
  name: 'PORT.ROUND_OF',
  summary: 'Diameter of a round port of an area.',
  parameters: { area: { ...usual.area, summary: 'area' } },
  returns: { quantity: 'length', summary: 'diameter' },
  source: { source: 'own', at: '√(4·S/π)' },
  example: { formula: '=PORT.ROUND_OF("50 cm2")', gives: 0.0798 },
  compute: (given) => diameterOf(given.area),
});
