import type { BarsData, PointsData } from '../../../src/components/drawing/data.ts';

export const price = { quantity: 'price', symbol: '¤' } as const;

/** What a pair costs, in two parts. */
export const asChosen: BarsData['bars'][number] = {
  name: 'As chosen',
  parts: [
    { label: 'Drivers', line: 'woofer', value: 192 },
    { label: 'Wood', line: 'system', value: 70 },
  ],
};

export const priceCap: BarsData['limits'][number] = { label: 'price cap', value: 250, forbidden: 'above' };

/** Three pairs, the last of them beaten by the one before. */
export const pairs: PointsData['groups'][number] = {
  label: 'Pairs',
  line: 'system',
  points: [
    { name: 'cheap', x: 50, y: 0.1 },
    { name: 'good', x: 100, y: 0.8 },
    { name: 'beaten', x: 110, y: 0.7 },
  ],
};
