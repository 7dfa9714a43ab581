import type { Leg, Network } from './network.ts';
import type { TableRecord } from './table.ts';

const places = { series: 'in series', shunt: 'across' } as const;
const forms = { chain: 'parts in series', tank: 'parts in parallel' } as const;
const partsOf = (leg: Leg): number =>
  [leg.resistance, leg.inductance, leg.capacitance].filter((part) => part !== undefined).length;

/** The legs of a network as a table, from the amplifier to the driver. */
export const networkTable = (network: Network): TableRecord => ({
  kind: 'table',
  title: network.name,
  columns: [
    { name: 'Leg', quantity: 'text' },
    { name: 'Where', quantity: 'text' },
    { name: 'Resistor', quantity: 'resistance' },
    { name: 'Coil', quantity: 'inductance' },
    { name: 'Coil resistance', quantity: 'resistance' },
    { name: 'Capacitor', quantity: 'capacitance' },
  ],
  rows: network.legs.map((leg, index) => [
    leg.label ?? String(index + 1),
    partsOf(leg) > 1 ? `${places[leg.place]}, ${forms[leg.form]}` : places[leg.place],
    leg.resistance ?? null,
    leg.inductance ?? null,
    leg.coilResistance ?? null,
    leg.capacitance ?? null,
  ]),
});
