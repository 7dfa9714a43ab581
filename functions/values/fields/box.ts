import { resonance, totalQ } from '../../enclosure/qtc.ts';
import type { Box } from '../box.ts';
import { field, finite, type ReadableField } from './field.ts';

export const ofBox: readonly ReadableField<Box>[] = [
  field('style', 'Closed or vented', 'text', (box) => box.style, 'Style'),
  field('driver', 'Name of the driver', 'text', (box) => box.driver.name, 'Driver'),
  field('volume', 'Net volume', 'volume', (box) => box.volume),
  field('tuning', 'Port tuning', 'frequency', (box) => box.tuning),
  field('resonance', 'Resonance in the box, or the tuning', 'frequency', resonance, 'Resonance'),
  field('qtc', 'Total Q, closed only', 'ratio', (box) => (box.style === 'closed' ? totalQ(box) : undefined), 'Qtc'),
  field('fill', 'Apparent-volume factor of the filling', 'ratio', (box) => box.fill, 'Filling'),
  field('seriesresistance', 'Series resistance', 'resistance', (box) => box.seriesResistance),
  field('leakageq', 'Leakage Q', 'ratio', (box) => finite(box.leakageQ)),
  field('absorptionq', 'Absorption Q', 'ratio', (box) => finite(box.absorptionQ)),
  field('portq', 'Port Q', 'ratio', (box) => finite(box.portQ)),
  field('highpass', 'High-pass ahead of it', 'frequency', (box) => box.highPass?.frequency, 'High-pass'),
  field('highpassorder', 'Order of the high-pass', 'ratio', (box) => box.highPass?.order),
];
