import type { Network } from '../network.ts';
import { field, type ReadableField } from './field.ts';

const count = (network: Network, part: 'resistance' | 'inductance' | 'capacitance'): number =>
  network.legs.filter((leg) => leg[part] !== undefined).length;

export const ofNetwork: readonly ReadableField<Network>[] = [
  field('name', 'Name', 'text', (network) => network.name),
  field('legs', 'Legs from amplifier to driver', 'ratio', (network) => network.legs.length, 'Legs'),
  field('coils', 'Coils', 'ratio', (network) => count(network, 'inductance')),
  field('capacitors', 'Capacitors', 'ratio', (network) => count(network, 'capacitance')),
  field('resistors', 'Resistors', 'ratio', (network) => count(network, 'resistance')),
];
