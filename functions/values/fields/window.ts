import type { Window } from '../window.ts';
import { field, type ReadableField } from './field.ts';

export const ofWindow: readonly ReadableField<Window>[] = [
  field('low', 'Lowest shared frequency', 'frequency', (window) => window.low.at, 'Low'),
  field('lowname', 'What sets the lowest', 'text', (window) => window.low.name, 'Set by'),
  field('high', 'Highest shared frequency', 'frequency', (window) => window.high.at, 'High'),
  field('highname', 'What sets the highest', 'text', (window) => window.high.name, 'Set by'),
  field('octaves', 'Width; negative where the limits do not meet', 'octaves', (window) => window.octaves, 'Width'),
  field('centre', 'Middle of the window', 'frequency', (window) => Math.sqrt(window.low.at * window.high.at), 'Centre'),
  field(
    'stretchedoctaves',
    'Width with every rule stretched',
    'octaves',
    (window) => window.stretchedOctaves,
    'Stretched width',
  ),
];
