import { resonanceOf } from '../../enclosure/box-driver.ts';
import { totalQ } from '../../enclosure/total-q.ts';
import { styleNames } from '../../enclosure/style-names.ts';
import type { Box } from '../box.ts';
import { field, finite, type ReadableField } from './field.ts';

export const ofBox: readonly ReadableField<Box>[] = [
  field('style', 'Kind of enclosure', 'text', (box) => styleNames[box.style], 'Style'),
  field('driver', 'Name of the driver', 'text', (box) => box.driver.name, 'Driver'),
  field('volume', 'Net volume', 'volume', (box) => finite(box.volume)),
  field('frontvolume', 'Net volume before the cone', 'volume', (box) => box.frontVolume),
  field('tuning', 'Port tuning', 'frequency', (box) => box.tuning),
  field('resonance', 'Resonance in the box, or the tuning', 'frequency', resonanceOf, 'Resonance'),
  field('notch', 'Resonance of the radiators in free air', 'frequency', (box) => box.radiator?.fp, 'Notch'),
  field('radiatorarea', 'Area of the radiators', 'area', (box) => box.radiator?.area),
  field('radiators', 'Number of radiators', 'ratio', (box) => box.radiator?.count, 'Radiators'),
  field(
    'qtc',
    'Total Q, closed box or baffle only',
    'ratio',
    (box) => (box.style === 'closed' || box.style === 'baffle' ? totalQ(box) : undefined),
    'Qtc',
  ),
  field('fill', 'Apparent-volume factor of the filling', 'ratio', (box) => box.fill, 'Filling'),
  field('seriesresistance', 'Series resistance', 'resistance', (box) => box.seriesResistance),
  field('leakageq', 'Leakage Q', 'ratio', (box) => finite(box.leakageQ)),
  field('absorptionq', 'Absorption Q', 'ratio', (box) => finite(box.absorptionQ)),
  field('portq', 'Port Q', 'ratio', (box) => finite(box.portQ)),
  field('highpass', 'High-pass ahead of it', 'frequency', (box) => box.highPass?.frequency, 'High-pass'),
  field('highpassorder', 'Order of the high-pass', 'ratio', (box) => box.highPass?.order),
];
