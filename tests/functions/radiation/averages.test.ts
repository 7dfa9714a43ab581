import { describe, expect, test } from 'vitest';
import { inRoom, shares } from '../../../functions/radiation/angles.ts';
import { agrees, input, references } from '../../references/read.ts';
import { averages } from './averages.ts';

const cardioid = (angle: number): number => ((1 + Math.cos(angle)) / 2) ** 2;

describe('the averages of the standard', () => {
  test.each(references('directivity-averages', '').filter(({ id }) => /-(cardio|omni)$/.test(id)))(
    '$id',
    (reference) => {
      const [average, pattern] = reference.id.split('-') as [string, string];
      agrees(averages(pattern === 'omni' ? () => 1 : cardioid)[average], reference);
    },
  );
  test.each(references('directivity-averages', 'w'))('weight, $id', (reference) => {
    const step = input(reference, 'angle') / 10;
    // The table sums to 0.99637 over the 70 directions; shares are of that.
    agrees(shares.right[step]!.power * 0.996373088, reference);
    agrees(shares.right[18 - step]!.power * 0.996373088, reference);
    if (step > 0) agrees(shares.down[step]!.power * 0.996373088, reference);
  });
  test('nine directions in the window, 70 in the power, and every average counts to 1', () => {
    const all = Object.values(shares).flat();
    const [nine] = references('directivity-averages', 'n-lw');
    agrees(all.filter((share) => share.window > 0).length, nine!);
    expect(all.filter((share) => share.power > 0)).toHaveLength(70);
    for (const of of ['window', 'early', 'power'] as const)
      expect(all.reduce((sum, share) => sum + share[of], 0)).toBeCloseTo(1, 12);
    expect(inRoom.window + inRoom.early + inRoom.power).toBeCloseTo(1, 12);
  });
  test('the weighted power of a cardioid is within a tenth of a decibel of the exact one', () => {
    const [exact] = references('directivity-averages', 'sp-cardioid-exact');
    expect(Math.abs(averages(cardioid)['sp']! - (exact!.expected.value as number))).toBeLessThan(0.1);
  });
});
