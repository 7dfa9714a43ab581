import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { areaOf, roomTemperature, wireResistance } from './copper.ts';

const length = { quantity: 'length', min: 0, max: 1e5, summary: 'length of the wire' } as const;
const temperature = {
  quantity: 'temperature',
  min: 200,
  max: 600,
  default: roomTemperature,
  summary: 'its temperature',
} as const;
const oneWay = {
  quantity: 'distance',
  min: 0,
  max: 1e5,
  typical: [0.1, 50],
  summary: 'length of the cable, one way',
} as const;
const area = {
  quantity: 'area',
  min: 1e-10,
  max: 1,
  typical: [1e-7, 2e-5],
  summary: 'copper of one conductor',
} as const;
const load = { ...usual.ohms, summary: 'ohms of the loudspeaker' } as const;
const copper = { source: 'iec60028', at: 'resistivity 1.7241e-8 Ω·m at 20 °C, rising 0.393 % a kelvin' } as const;

/** There and back. */
const loop = (given: { length: number; area: number }): number => wireResistance(2 * given.length, given.area);

export const wireDiameter = define({
  name: 'WIRE.DIAMETER',
  summary: 'The diameter of a wire of an American gauge.',
  parameters: {
    gauge: { quantity: 'ratio', min: -3, max: 56, typical: [4, 40], summary: 'gauge; −1, −2, −3 for 00, 000, 0000' },
  },
  returns: { quantity: 'length', summary: 'diameter of the bare solid wire' },
  source: { source: 'astmB258', at: 'd = 0.005 in · 92^((36 − n)/39)' },
  example: { formula: '=WIRE.DIAMETER(18)', gives: 0.0010237 },
  remarks: 'Six gauges halve the diameter, three halve the copper. Stranded wire of the same gauge is thicker.',
  compute: (given) => 0.000127 * 92 ** ((36 - given.gauge) / 39),
});

export const wireArea = define({
  name: 'WIRE.AREA',
  summary: 'The copper of a round wire.',
  parameters: { diameter: { quantity: 'length', min: 1e-6, max: 1, summary: 'diameter of the bare wire' } },
  returns: { quantity: 'area', summary: 'cross-section' },
  source: { source: 'own', at: 'π·d²/4' },
  example: { formula: '=WIRE.AREA("1.382 mm")', gives: 0.0000015 },
  compute: (given) => areaOf(given.diameter),
});

export const wireOhms = define({
  name: 'WIRE.RESISTANCE',
  summary: 'The resistance of a round copper wire.',
  parameters: {
    length,
    diameter: { quantity: 'length', min: 1e-6, max: 1, summary: 'diameter of the bare wire' },
    temperature,
  },
  returns: { quantity: 'resistance', summary: 'ohms at direct current' },
  source: copper,
  example: { formula: '=WIRE.RESISTANCE("21.2 m", "1 mm")', gives: 0.4654 },
  remarks:
    'At 20 kHz the current keeps to the outer half millimetre: wire above 1 mm has a little more resistance there.',
  compute: (given) => wireResistance(given.length, areaOf(given.diameter), given.temperature),
});

export const cableResistance = define({
  name: 'CABLE.RESISTANCE',
  summary: 'The resistance of a loudspeaker cable, there and back.',
  parameters: { length: oneWay, area },
  returns: { quantity: 'resistance', summary: 'ohms of both conductors' },
  source: copper,
  example: { formula: '=CABLE.RESISTANCE("5 m", "2.5 mm²")', gives: 0.069 },
  remarks: 'It adds to the series resistance of the box, and with it raises the Q of the bass.',
  compute: loop,
});

export const cableLoss = define({
  name: 'CABLE.LOSS',
  summary: 'The level that a loudspeaker cable costs.',
  parameters: { length: oneWay, area, ohms: load },
  returns: { quantity: 'level', summary: 'loss in dB, positive' },
  source: { source: 'own', at: 'voltage divider of loop and load' },
  example: { formula: '=CABLE.LOSS("10 m", "1.5 mm²", "4 Ω")', gives: 0.485 },
  remarks:
    'What is heard is less the loss than its change with the impedance: with 8 Ω here and 3 Ω there the response bends.',
  compute: (given) => 20 * Math.log10(1 + loop(given) / given.ohms),
});

export const cableDamping = define({
  name: 'CABLE.DAMPING',
  summary: 'The largest damping factor that a cable leaves to any amplifier.',
  parameters: { length: { ...oneWay, min: 1e-3 }, area, ohms: load },
  returns: { quantity: 'ratio', summary: 'ohms of the load over those of the loop' },
  source: { source: 'own', at: 'load over loop resistance' },
  example: { formula: '=CABLE.DAMPING("5 m", "2.5 mm²", "8 Ω")', gives: 116 },
  remarks: 'Above 20 or so the voice coil itself decides: its own 6 Ω are in the same loop.',
  compute: (given) => given.ohms / loop(given),
});
