import { soundSpeed } from '../air.ts';
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
import { effectiveLength, endCorrections } from './port-ends.ts';
import { usual } from '../usual.ts';

const depth = { ...usual.length, summary: 'inner depth of the box behind the port' } as const;

const usualEnds = endCorrections['flanged and free'];

const areaOf = (across: number, ports: number): number => (ports * Math.PI * across ** 2) / 4;

const source = { source: 'beranek1954', at: 'Helmholtz resonator with end correction' } as const;

export const portArea = define({
  name: 'PORT.AREA',
  summary: 'Area of round ports.',
  parameters: { diameter, count },
  returns: { quantity: 'area', summary: 'total area' },
  source: { source: 'own', at: 'n·π·d²/4' },
  example: { formula: '=PORT.AREA("68 mm")', gives: 0.003632 },
  compute: (given) => areaOf(given.diameter, given.count),
});

export const portSlotArea = define({
  name: 'PORT.SLOT_AREA',
  summary: 'Area of a slot port.',
  parameters: {
    width: { ...usual.length, summary: 'width of the slot' },
    height: { ...usual.length, summary: 'height of the slot' },
  },
  returns: { quantity: 'area', summary: 'area' },
  source: { source: 'own', at: 'width times height' },
  example: { formula: '=PORT.SLOT_AREA("200 mm", "25 mm")', gives: 0.005 },
  remarks: 'Walls that touch the slot lengthen it in effect; allow some 5 % in the tuning.',
  compute: (given) => given.width * given.height,
});

export const portLength = define({
  name: 'PORT.LENGTH',
  summary: 'Length of each of one or more equal round ports for a tuning.',
  parameters: {
    volume,
    tuning,
    diameter,
    count,
    ends,
  },
  returns: { quantity: 'length', summary: 'length' },
  source,
  example: { formula: '=PORT.LENGTH("22.3 L", "39.6 Hz", "68 mm")', gives: 0.26 },
  remarks:
    'The ends add 0.732, 0.850 or 0.614 diameters of one port to its length. From a quarter of the wavelength of the tuning on, the air in it no longer moves as one mass and the length means little: judge it by PORT.RESONANCE.',
  compute: (given) => {
    const correction = endCorrections[given.ends] * given.diameter;
    const found = effectiveLength(areaOf(given.diameter, given.count), given.volume, given.tuning) - correction;
    return found > 0
      ? found
      : new Problem(
          say`A port of ${measured(given.diameter, 'length')} is too narrow for this: its ends alone tune the box below ${measured(given.tuning, 'frequency')}. Take a larger diameter or more ports, or tune lower.`,
          'diameter',
        );
  },
});

export const portResonance = define({
  name: 'PORT.RESONANCE',
  summary: 'First resonance of the air in the port itself, where it lets midrange out.',
  parameters: { length, diameter },
  returns: { quantity: 'frequency', summary: 'first pipe resonance' },
  source: {
    source: 'levine1948',
    at: 'free end 0.6133 radii; with a flanged end of 8/(3π), half a wave in the length',
  },
  example: { formula: '=PORT.RESONANCE("260 mm", "68 mm")', gives: 554 },
  remarks:
    'Of the pipe with its ends, open to both sides. Common practice, no source: keep it well above the hand-over, or let the port open away from the listener.',
  compute: (given) => soundSpeed / (2 * (given.length + usualEnds * given.diameter)),
});

export const portVolume = define({
  name: 'PORT.VOLUME',
  summary: 'Volume that round ports take from the box, walls included.',
  parameters: {
    length,
    diameter,
    count,
    wall: {
      quantity: 'length',
      min: 0,
      max: 1,
      default: 0,
      typical: [0, 0.02],
      summary: 'thickness of the wall of the port',
    },
  },
  returns: { quantity: 'volume', summary: 'volume' },
  source: { source: 'own', at: 'cylinder over the outer diameter' },
  example: { formula: '=PORT.VOLUME("260 mm", "68 mm", 1, "3 mm")', gives: 0.001118 },
  remarks: 'It comes off the litres of the cabinet, as do driver and braces: a box is tuned by the air that is left.',
  compute: (given) => given.length * areaOf(given.diameter + 2 * given.wall, given.count),
});

export const portClearance = define({
  name: 'PORT.CLEARANCE',
  summary: 'Depth left over behind a straight port, one diameter kept free; negative when it does not fit.',
  parameters: { depth, length, diameter },
  returns: { quantity: 'length', summary: 'depth left over' },
  source: { source: 'practice', at: 'one diameter free behind the inner end' },
  example: { formula: '=PORT.CLEARANCE("250 mm", "260 mm", "68 mm")', gives: -0.078 },
  compute: (given) => given.depth - given.length - given.diameter,
});

export const portLargest = define({
  name: 'PORT.LARGEST',
  summary: 'The largest diameter of straight round ports that fit a depth with one diameter free behind them.',
  parameters: { volume, tuning, depth, count },
  returns: { quantity: 'length', summary: 'inner diameter of each port' },
  source: { source: 'own', at: 'length from the tuning plus one diameter equals the depth' },
  example: { formula: '=PORT.LARGEST("22.3 L", "39.6 Hz", "250 mm")', gives: 0.0591 },
  compute: (given) => {
    // length + d = a·d² + (1 − 0.732)·d = depth
    const a = effectiveLength(areaOf(1, given.count), given.volume, given.tuning);
    const b = 1 - usualEnds;
    const across = (Math.sqrt(b ** 2 + 4 * a * given.depth) - b) / (2 * a);
    return a * across > usualEnds
      ? across
      : new Problem(
          say`No port fits a depth of ${measured(given.depth, 'length')} at ${measured(given.tuning, 'frequency')}: a port narrow enough to fit is tuned too low by its ends alone. Take more ports, or tune lower.`,
          'depth',
        );
  },
});
