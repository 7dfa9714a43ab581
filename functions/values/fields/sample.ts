import { percentile } from '../../numeric/percentile.ts';
import type { Sample } from '../sample.ts';
import { field, type ReadableField } from './field.ts';

export const ofSample: readonly ReadableField<Sample>[] = [
  field('title', 'Title', 'text', (sample) => sample.title),
  field('low', '5 % of runs are below', 'ratio', (sample) => percentile(sample.values, 0.05), '5 %'),
  field('median', 'Half of the runs are below', 'ratio', (sample) => percentile(sample.values, 0.5), 'Median'),
  field('high', '95 % of runs are below', 'ratio', (sample) => percentile(sample.values, 0.95), '95 %'),
  field('count', 'Runs', 'ratio', (sample) => sample.values.length),
  field('seed', 'Seed', 'ratio', (sample) => sample.seed),
];
