import type { Way } from '../way.ts';
import { field, type ReadableField } from './field.ts';

export const ofWay: readonly ReadableField<Way>[] = [
  field('name', 'Name', 'text', (way) => way.name),
  field('driver', 'Name of the driver', 'text', (way) => way.driver?.name, 'Driver'),
  field('network', 'Name of the filter', 'text', (way) => way.network.name, 'Filter'),
  field(
    'polarity',
    'As wired, or reversed',
    'text',
    (way) => (way.polarity === 1 ? 'as wired' : 'reversed'),
    'Polarity',
  ),
  field('x', 'To the right of the listening axis', 'length', (way) => way.position.x),
  field('y', 'Above the listening axis', 'length', (way) => way.position.y),
  field('z', 'Acoustic centre behind the panel', 'length', (way) => way.position.z),
  field('gain', 'Gain ahead of it', 'level', (way) => way.gain, 'Gain'),
  field('delay', 'Delay ahead of it', 'time', (way) => way.delay, 'Delay'),
  field('sd', 'Radiating area', 'area', (way) => way.sd, 'Sd'),
  field('basis', 'Measured or from a model', 'text', (way) => way.basis, 'Basis'),
];
