import { define } from '../define.ts';
import { standardNearest } from '../electrical/standard.ts';
import type { QuantityName } from '../quantities.ts';
import type { Leg, Network } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { noSuchPart } from './no-such-part.ts';
import { demoLow, network, place } from './parameters.ts';

type Part = 'resistance' | 'inductance' | 'coilResistance' | 'capacitance';

/** How each part is called, what it is measured in, and between which values it lies. */
const parts: Readonly<
  Record<string, { readonly key: Part; readonly quantity: QuantityName; readonly min: number; readonly max: number }>
> = {
  resistor: { key: 'resistance', quantity: 'resistance', min: 1e-3, max: 1e6 },
  coil: { key: 'inductance', quantity: 'inductance', min: 1e-9, max: 10 },
  'coil resistance': { key: 'coilResistance', quantity: 'resistance', min: 0, max: 1e6 },
  capacitor: { key: 'capacitance', quantity: 'capacitance', min: 1e-12, max: 1 },
};

export const networkChange = define({
  name: 'NETWORK.CHANGE',
  summary: 'The same filter with one part of another value.',
  parameters: {
    network,
    part: { choice: ['resistor', 'coil', 'coil resistance', 'capacitor'], summary: 'kind of part' },
    place,
    value: { quantity: 'any', min: 0, max: 1e6, summary: 'new value' },
  },
  returns: { record: 'network', summary: 'the changed filter' },
  source: { source: 'own', at: 'as put into the filter' },
  example: {
    formula: `=NETWORK.COIL(NETWORK.CHANGE(${demoLow}, "coil", 1, "1.2 mH"))`,
    gives: 0.0012,
  },
  remarks: 'For the part that the shop has, and for the wire resistance of each coil by itself.',
  compute: (given, context): Network | Problem => {
    const { key, quantity, min, max } = parts[given.part]!;
    if (context.quantity !== 'ratio' && context.quantity !== quantity)
      return new Problem(
        say`The value of a ${given.part} is not of this kind; give it in ${quantity === 'resistance' ? 'ohms' : quantity === 'inductance' ? 'henry' : 'farad'}.`,
        'value',
      );
    if (!(given.value >= min && given.value <= max))
      return new Problem(
        say`A ${given.part} must lie from ${measured(min, quantity)} to ${measured(max, quantity)}, but is ${measured(given.value, quantity)}; correct the value.`,
        'value',
      );
    const counted = key === 'coilResistance' ? 'inductance' : key;
    const holders = given.network.legs.filter((leg) => leg[counted] !== undefined);
    const wanted = holders[given.place - 1];
    if (wanted === undefined)
      return noSuchPart(
        `“${given.network.name}”`,
        holders.length,
        counted === 'inductance' ? 'coil' : given.part,
        given.place,
      );
    const legs = given.network.legs.map((leg) => (leg === wanted ? { ...leg, [key]: given.value } : leg));
    return { ...given.network, legs };
  },
});

const series = (default_: string, summary: string) =>
  ({ choice: ['E3', 'E6', 'E12', 'E24', 'E48', 'E96'], default: default_, summary }) as const;

const rounded = (value: number, name: string): number => {
  const found = standardNearest.compute({ value, series: name as 'E12' }, { quantity: 'ratio' });
  return found instanceof Problem ? value : found;
};

export const networkRound = define({
  name: 'NETWORK.ROUND',
  summary: 'The same filter with every part of the nearest value that is made.',
  parameters: {
    network,
    capacitors: series('E12', 'series of the capacitors'),
    coils: series('E12', 'series of the coils'),
    resistors: series('E12', 'series of the resistors'),
  },
  returns: { record: 'network', summary: 'the filter in shop values' },
  source: { source: 'iec60063', at: 'series E3 to E96' },
  example: { formula: `=NETWORK.CAPACITOR(NETWORK.ROUND(${demoLow}))`, gives: 0.0000068 },
  remarks:
    'Nearest by ratio, each part by itself; wire resistances stay. NETWORK.CORNER and NETWORK.Q tell what the filter has become.',
  compute: (given): Network => ({
    ...given.network,
    name: `${given.network.name}, shop values`,
    legs: given.network.legs.map((leg): Leg => ({
      ...leg,
      ...(leg.resistance === undefined ? {} : { resistance: rounded(leg.resistance, given.resistors) }),
      ...(leg.inductance === undefined ? {} : { inductance: rounded(leg.inductance, given.coils) }),
      ...(leg.capacitance === undefined ? {} : { capacitance: rounded(leg.capacitance, given.capacitors) }),
    })),
  }),
});
