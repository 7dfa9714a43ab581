import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { middleOfStep, width } from './edge.ts';

const makeUp = {
  quantity: 'level',
  min: 0,
  max: 60,
  summary: 'how much of the step is made up',
  typical: [0, 6],
} as const;
const ohms = { ...usual.ohms, summary: 'ohms of the driver near the step' } as const;

interface Shelf {
  readonly width: number;
  readonly makeUp: number;
  readonly ohms: number;
}

const shelfOhms = (given: Shelf): number => given.ohms * (10 ** (given.makeUp / 20) - 1);

const shelfCoil = (given: Shelf): number =>
  (shelfOhms(given) * 10 ** (-given.makeUp / 40)) / (2 * Math.PI * middleOfStep(given.width));

export const edgeShelfResistance = define({
  name: 'EDGE.SHELF_RESISTANCE',
  summary: 'The resistor of the shelf in series with a driver that makes up the edge step.',
  parameters: { width, makeUp, ohms },
  returns: { quantity: 'resistance', summary: 'resistor across the coil' },
  source: { source: 'own', at: 'loss of a series resistor, R = Z·(10^(A/20) − 1)' },
  example: { formula: '=EDGE.SHELF_RESISTANCE("220 mm", "4.5 dB", "6.4 Ω")', gives: 4.3 },
  remarks:
    'Take the ohms above the step, where the resistor works, not the nominal ohms. The width does not change it; it stands here so that resistor and coil take the same arguments.',
  compute: shelfOhms,
});

export const edgeShelfInductance = define({
  name: 'EDGE.SHELF_INDUCTANCE',
  summary: 'The coil of the shelf in series with a driver that makes up the edge step.',
  parameters: { width, makeUp, ohms },
  returns: { quantity: 'inductance', summary: 'coil across the resistor' },
  source: { source: 'own', at: 'half of the loss in dB at EDGE.FREQUENCY, L = R·10^(−A/40)/(2πf)' },
  example: { formula: '=EDGE.SHELF_INDUCTANCE("220 mm", "4.5 dB", "6.4 Ω")', gives: 0.00102 },
  remarks:
    'For a load that is a resistance around the step; a rising impedance moves the shelf. Choose a coil of low resistance.',
  compute: shelfCoil,
});

/** The coil, with the resistance of its wire, and the resistor side by side, in series with the driver. */
function shelfOver(
  given: Shelf & { readonly coilResistance: number },
  read: (re: number, im: number) => number,
): Float64Array {
  const resistor = shelfOhms(given);
  const coil = shelfCoil(given);
  return frequencies.map((frequency) => {
    const reactance = 2 * Math.PI * frequency * coil;
    const wire = given.coilResistance;
    const square = (resistor + wire) ** 2 + reactance ** 2;
    if (square === 0) return read(given.ohms, 0);
    const re = (resistor * (wire * (resistor + wire) + reactance ** 2)) / square;
    const im = (resistor ** 2 * reactance) / square;
    return read(given.ohms + re, im);
  });
}

const coilResistance = { ...usual.ohms, min: 0, default: 0, summary: 'resistance of the wire of the coil' } as const;
const whole = { from: frequencies[0]!, to: frequencies.at(-1)! } as const;

export const edgeShelfLoss = define({
  name: 'EDGE.SHELF_LOSS',
  summary: 'What the shelf that makes up the edge step takes from the level, as a curve.',
  parameters: { width, makeUp, ohms, coilResistance },
  returns: {
    record: 'curve',
    of: 'level',
    summary: 'level in dB: what the coil costs low down, minus the make-up high up',
  },
  source: { source: 'own', at: 'voltage divider of shelf and load' },
  example: {
    formula: '=CURVE.AT(EDGE.SHELF_LOSS("220 mm", "4.5 dB", "6.4 Ω"), "523 Hz")',
    gives: -2.25,
  },
  remarks:
    'The price of the make-up in decibels: high up the driver is that much quieter, and low down it loses what the wire of the coil takes. For a load that is a resistance; NETWORK.RESPONSE has it on the real impedance.',
  compute: (given): Curve => ({
    kind: 'curve',
    title: 'Loss in the shelf',
    quantity: 'level',
    y: shelfOver(given, (re, im) => 20 * Math.log10(given.ohms / Math.hypot(re, im))),
    phase: shelfOver(given, (re, im) => -Math.atan2(im, re)),
    ...whole,
  }),
});

export const edgeShelfLoad = define({
  name: 'EDGE.SHELF_LOAD',
  summary: 'The ohms of a driver with the shelf that makes up the edge step in series, as a curve.',
  parameters: { width, makeUp, ohms, coilResistance },
  returns: { record: 'curve', of: 'resistance', summary: 'ohms that the amplifier sees' },
  source: { source: 'own', at: 'shelf and load in series' },
  example: {
    formula: '=CURVE.PEAK(EDGE.SHELF_LOAD("220 mm", "4.5 dB", "6.4 Ω"))',
    gives: 10.7,
  },
  remarks: 'The price of the make-up in ohms: high up the resistor stands in series, so a filter behind it sees more.',
  compute: (given): Curve => ({
    kind: 'curve',
    title: 'Ohms with the shelf',
    quantity: 'resistance',
    y: shelfOver(given, (re, im) => Math.hypot(re, im)),
    phase: shelfOver(given, (re, im) => Math.atan2(im, re)),
    ...whole,
  }),
});
