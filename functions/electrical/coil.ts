import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { TableRecord } from '../values/table.ts';
import { areaOf, copperDensity, wireResistance } from './copper.ts';

/** L/(a·N²) of a winding as wide as deep, of mean radius a one and a half times that side: least wire for its inductance. */
const brooksConstant = 1.6994e-6;

const inductance = {
  quantity: 'inductance',
  min: 1e-9,
  max: 10,
  typical: [1e-5, 0.02],
  summary: 'inductance',
} as const;
const wire = {
  quantity: 'length',
  min: 1e-5,
  max: 0.05,
  typical: [0.0003, 0.003],
  summary: 'diameter of the bare wire',
} as const;
const packing = {
  quantity: 'ratio',
  min: 1,
  max: 2,
  default: 1.1,
  typical: [1.02, 1.3],
  summary: 'pitch of the winding over the bare diameter: enamel and gaps',
} as const;
const source = {
  source: 'grover1946',
  at: 'Brooks coil: square winding of side q, mean radius 1.5·q, L = 1.6994e-6·a·N²',
} as const;
const remarks =
  'An air coil of the shape that needs least wire: inner diameter twice, outer four times the side of the winding. Keep coils apart and at right angles, off magnets and steel.';

interface Winding {
  readonly turns: number;
  /** Width and depth of the winding. */
  readonly side: number;
  readonly length: number;
  readonly resistance: number;
  readonly weight: number;
}

interface Wanted {
  readonly inductance: number;
  readonly wire: number;
  readonly packing: number;
}

/** The Brooks coil of an inductance in a wire: q = pitch·√N, so L grows with N to the power of 2.5. */
function brooks({ inductance, wire, packing }: Wanted): Winding {
  const pitch = wire * packing;
  const turns = (inductance / (1.5 * brooksConstant * pitch)) ** 0.4;
  const side = pitch * Math.sqrt(turns);
  const length = 3 * Math.PI * side * turns;
  const area = areaOf(wire);
  return { turns, side, length, resistance: wireResistance(length, area), weight: copperDensity * area * length };
}

export const coilTurns = define({
  name: 'COIL.TURNS',
  summary: 'The turns of an air coil of the shape that needs least wire.',
  parameters: { inductance, wire, packing },
  returns: { quantity: 'ratio', summary: 'turns' },
  source,
  example: { formula: '=COIL.TURNS("1 mH", "1 mm")', gives: 166.3 },
  remarks,
  compute: (given) => brooks(given).turns,
});

export const coilSide = define({
  name: 'COIL.SIDE',
  summary: 'The width and depth of the winding of such an air coil.',
  parameters: { inductance, wire, packing },
  returns: { quantity: 'length', summary: 'side of the square winding; wind it on a core of twice this diameter' },
  source,
  example: { formula: '=COIL.SIDE("1 mH", "1 mm")', gives: 0.01419 },
  remarks,
  compute: (given) => brooks(given).side,
});

export const coilLength = define({
  name: 'COIL.WIRE_LENGTH',
  summary: 'The wire that such an air coil takes.',
  parameters: { inductance, wire, packing },
  returns: { quantity: 'length', summary: 'length of wire without its ends' },
  source,
  example: { formula: '=COIL.WIRE_LENGTH("1 mH", "1 mm")', gives: 22.23 },
  remarks,
  compute: (given) => brooks(given).length,
});

export const coilResistance = define({
  name: 'COIL.RESISTANCE',
  summary: 'The resistance of such an air coil.',
  parameters: { inductance, wire, packing },
  returns: { quantity: 'resistance', summary: 'ohms at direct current and 20 °C' },
  source,
  example: { formula: '=COIL.RESISTANCE("1 mH", "1 mm")', gives: 0.488 },
  remarks:
    'In series with a woofer it costs level, raises the Q and with it the litres: give it to the box as series resistance. Above 5 % of Re take thicker wire.',
  compute: (given) => brooks(given).resistance,
});

export const coilWeight = define({
  name: 'COIL.WEIGHT',
  summary: 'The copper of such an air coil.',
  parameters: { inductance, wire, packing },
  returns: { quantity: 'mass', summary: 'weight of the copper' },
  source,
  example: { formula: '=COIL.WEIGHT("1 mH", "1 mm")', gives: 0.155 },
  remarks,
  compute: (given) => brooks(given).weight,
});

export const coilPrice = define({
  name: 'COIL.PRICE',
  summary: 'The price of such an air coil by its weight.',
  parameters: {
    inductance,
    wire,
    kilogram: { quantity: 'price', min: 0, max: 1e9, summary: 'price of one kilogram of wire' },
    packing,
  },
  returns: { quantity: 'price', summary: 'price of the copper' },
  source: { source: 'own', at: 'weight of the copper times the price of a kilogram' },
  example: { formula: '=COIL.PRICE("1 mH", "1 mm", 30 ¤)', gives: 4.7 },
  remarks: 'A wound coil in a shop costs more, but scales alike: price it by a coil you know.',
  compute: (given) => brooks(given).weight * given.kilogram,
});

export const coilWire = define({
  name: 'COIL.WIRE',
  summary: 'The wire that gives such an air coil a wanted resistance.',
  parameters: { inductance, resistance: { ...usual.ohms, summary: 'largest resistance wanted' }, packing },
  returns: { quantity: 'length', summary: 'diameter of the bare wire' },
  source,
  example: { formula: '=COIL.WIRE("1 mH", "0.488 Ω")', gives: 0.001 },
  remarks: 'Half the resistance takes 1.5 times the wire diameter and nearly three times the copper.',
  compute: (given) => {
    // The resistance falls with the diameter to the power of 1.6.
    const { resistance } = brooks({ ...given, wire: 1e-3 });
    return 1e-3 * (resistance / given.resistance) ** (1 / 1.6);
  },
});

const wires = [0.5e-3, 0.63e-3, 0.8e-3, 1e-3, 1.25e-3, 1.4e-3, 1.6e-3, 2e-3, 2.5e-3] as const;

export const coilChoices = define({
  name: 'COIL.CHOICES',
  summary: 'An air coil in every usual wire: turns, size, wire, resistance, weight and price.',
  parameters: {
    inductance,
    kilogram: { quantity: 'price', min: 0, max: 1e9, default: 0, summary: 'price of one kilogram of wire' },
    packing,
  },
  returns: {
    record: 'table',
    summary: 'Wire, Turns, Side, Outer diameter, Wire length, Resistance, Weight, Price',
  },
  source,
  example: { formula: '=TABLE.AT(COIL.CHOICES("1 mH", 30 ¤), 4, "Resistance", 1 Ω)', gives: 0.488 },
  remarks,
  compute(given): TableRecord {
    return {
      kind: 'table',
      title: 'Air coils',
      columns: [
        { name: 'Wire', quantity: 'length' },
        { name: 'Turns', quantity: 'ratio' },
        { name: 'Side', quantity: 'length' },
        { name: 'Outer diameter', quantity: 'length' },
        { name: 'Wire length', quantity: 'length' },
        { name: 'Resistance', quantity: 'resistance' },
        { name: 'Weight', quantity: 'mass' },
        { name: 'Price', quantity: 'price' },
      ],
      rows: wires.map((wire) => {
        const { turns, side, length, resistance, weight } = brooks({ ...given, wire });
        return [wire, turns, side, 4 * side, length, resistance, weight, weight * given.kilogram];
      }),
    };
  },
});

export const coilQuality = define({
  name: 'COIL.Q',
  summary: 'The quality of a coil at a frequency.',
  parameters: {
    inductance,
    resistance: { ...usual.ohms, summary: 'its resistance' },
    frequency: { ...usual.frequency, summary: 'frequency' },
  },
  returns: { quantity: 'ratio', summary: 'reactance over resistance' },
  source: { source: 'own', at: 'definition, ω·L/R' },
  example: { formula: '=COIL.Q("1.2 mH", "0.35 Ω", "2 kHz")', gives: 43.1 },
  compute: (given) => (2 * Math.PI * given.frequency * given.inductance) / given.resistance,
});
