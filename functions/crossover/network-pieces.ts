import { define } from '../define.ts';
import type { Leg, Network } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { capacitance, coilResistance, demoHigh, inductance, resistance } from './parameters.ts';

const named = (name: string, ...legs: readonly Leg[]): Network => ({ kind: 'network', name, legs });
const withoutZero = (resistance: number): Pick<Leg, 'coilResistance'> =>
  resistance === 0 ? {} : { coilResistance: resistance };
const source = { source: 'own', at: 'legs of a ladder, solved part by part' } as const;
const returns = { record: 'network', summary: 'piece of a filter, for NETWORK.JOIN' } as const;
const orNone = { quantity: 'resistance', min: 0, max: 1e6 } as const;

export const networkWire = define({
  name: 'NETWORK.WIRE',
  summary: 'No filter at all, or a resistance alone: a cable, a resistor in series.',
  parameters: { resistance: { ...orNone, default: 0, summary: 'resistance in series' } },
  returns,
  source,
  example: { formula: '=NETWORK.WIRE("0.2 ohm")', gives: { name: 'Wire', legs: 1, resistors: 1 } },
  compute: (given) =>
    given.resistance === 0
      ? named('Wire')
      : named('Wire', { place: 'series', form: 'chain', resistance: given.resistance, label: 'series resistor' }),
});

export const networkPad = define({
  name: 'NETWORK.PAD',
  summary: 'A pad of a resistor in series and one across the driver.',
  parameters: {
    series: { ...resistance, summary: 'resistor in series' },
    shunt: { ...resistance, summary: 'resistor across the driver' },
  },
  returns,
  source,
  example: { formula: '=NETWORK.PAD("2.7 ohm", "6.8 ohm")', gives: { name: 'Pad', legs: 2, resistors: 2 } },
  remarks: 'Its place is between the filter and the driver, so that the filter sees steady ohms.',
  compute: (given) =>
    named(
      'Pad',
      { place: 'series', form: 'chain', resistance: given.series, label: 'pad, in series' },
      { place: 'shunt', form: 'chain', resistance: given.shunt, label: 'pad, across' },
    ),
});

export const networkFlatten = define({
  name: 'NETWORK.FLATTEN',
  summary: 'Resistor and capacitor in series across a driver, against the rise of its impedance.',
  parameters: {
    resistor: { ...resistance, summary: 'resistor' },
    capacitor: { ...capacitance, summary: 'capacitor' },
  },
  returns,
  source,
  example: { formula: '=NETWORK.FLATTEN("5.8 ohm", "16 µF")', gives: { name: 'Flattening', legs: 1, capacitors: 1 } },
  remarks: 'With R = Re and C = Le/Re² the voice coil above resonance becomes a resistance.',
  compute: (given) =>
    named('Flattening', {
      place: 'shunt',
      form: 'chain',
      resistance: given.resistor,
      capacitance: given.capacitor,
      label: 'flattening',
    }),
});

const resonant = {
  resistor: { ...resistance, summary: 'resistor' },
  coil: { ...inductance, summary: 'coil' },
  capacitor: { ...capacitance, summary: 'capacitor' },
  coilResistance,
} as const;

export const networkTrap = define({
  name: 'NETWORK.TRAP',
  summary: 'Resistor, coil and capacitor in series across a driver, against the hump of its resonance.',
  parameters: resonant,
  returns,
  source,
  example: {
    formula: '=NETWORK.TRAP("6.5 ohm", "1.04 mH", "28 µF")',
    gives: { name: 'Trap', legs: 1, coils: 1, capacitors: 1 },
  },
  remarks: 'The wire resistance of the coil adds to the resistor: choose the resistor smaller by it.',
  compute: (given) =>
    named('Trap', {
      place: 'shunt',
      form: 'chain',
      resistance: given.resistor,
      inductance: given.coil,
      ...withoutZero(given.coilResistance),
      capacitance: given.capacitor,
      label: 'trap',
    }),
});

export const networkNotch = define({
  name: 'NETWORK.NOTCH',
  summary: 'Resistor, coil and capacitor side by side in series with a driver, against a peak of its response.',
  parameters: resonant,
  returns,
  source,
  example: {
    formula: '=NETWORK.NOTCH("22 ohm", "0.22 mH", "4.7 µF")',
    gives: { name: 'Notch', legs: 1, coils: 1, resistors: 1 },
  },
  remarks: 'Deepest at 1/(2π·√(L·C)), where the resistor alone is left.',
  compute: (given) =>
    named('Notch', {
      place: 'series',
      form: 'tank',
      resistance: given.resistor,
      inductance: given.coil,
      ...withoutZero(given.coilResistance),
      capacitance: given.capacitor,
      label: 'notch',
    }),
});

export const networkShelf = define({
  name: 'NETWORK.SHELF',
  summary: 'Resistor and coil side by side in series with a driver, to make up the edge step.',
  parameters: { resistor: resonant.resistor, coil: resonant.coil, coilResistance },
  returns,
  source,
  example: { formula: '=NETWORK.SHELF("4.3 ohm", "1.02 mH")', gives: { name: 'Shelf', legs: 1, coils: 1 } },
  remarks: 'EDGE.SHELF_RESISTANCE and EDGE.SHELF_INDUCTANCE give the values.',
  compute: (given) =>
    named('Shelf', {
      place: 'series',
      form: 'tank',
      resistance: given.resistor,
      inductance: given.coil,
      ...withoutZero(given.coilResistance),
      label: 'shelf',
    }),
});

/** More legs than any loudspeaker has; beyond it a loop has crept in. */
const mostLegs = 200;

export const networkJoin = define({
  name: 'NETWORK.JOIN',
  summary: 'Chains filters and their pieces, from the amplifier to the driver.',
  parameters: { networks: { record: 'network', many: true, summary: 'pieces in the order of the signal' } },
  returns: { record: 'network', summary: 'the whole filter' },
  source,
  example: {
    formula: `=NETWORK.JOIN(${demoHigh}, NETWORK.PAD("2.7 ohm", "6.8 ohm"))`,
    gives: { name: 'LR2 high-pass, Pad', legs: 4 },
  },
  remarks: 'The pad and whatever flattens the driver come last, next to it.',
  compute: (given): Network | Problem => {
    const legs = given.networks.flatMap((each) => each.legs);
    if (given.networks.length === 0) return new Problem(say`There is no piece; give at least one.`, 'networks');
    return legs.length > mostLegs
      ? new Problem(
          say`Together the pieces have ${String(legs.length)} legs, more than the ${String(mostLegs)} allowed: leave some out.`,
          'networks',
        )
      : named(given.networks.map(({ name }) => name).join(', '), ...legs);
  },
});
