import { describe, expect, test } from 'vitest';
import { calculated, expectNear, percent, inColumn, pair } from './calculated.ts';
import { pairs } from '../../references/pairs.ts';

describe('which woofer with which tweeter', () => {
  test.each(pairs)('%s with %s: %d octaves, %s', async (woofer, tweeter, width, word) => {
    const cell = await calculated('two-driver-check', pair(woofer, tweeter), 'WindowWidth', 'E41');
    expectNear(cell('WindowWidth'), width, 0.03);
    expect(cell('E41').text).toMatch(new RegExp(`^${word}`));
  });

  test('the cheapest comfortable pair costs 106', async () => {
    const cell = await calculated('two-driver-check', pair('W-130 A', 'T-28 B'), 'PairPrice');
    expect(cell('PairPrice').value / 2).toBe(106);
  });

  test('a louder target', async () => {
    const louder = await calculated('two-driver-check', { Target: '109 dB' }, 'C42', 'WindowWidth', 'E41');
    expectNear(louder('C42'), 1753, percent(1753));
    expectNear(louder('WindowWidth'), 0.13, 0.03);
    expect(louder('E41').text).toMatch(/travel/i);
    const other = await calculated('two-driver-check', { ...inColumn('C', 'T-28 B'), Target: '109' }, 'C42');
    expectNear(other('C42'), 1208, percent(1208));
  });

  test.each([
    ['T-25 A', 1755],
    ['T-28 B', 1209],
  ] as const)('103 dB with second order puts the limit of %s at %d Hz', async (tweeter, hertz) => {
    const set = { ...inColumn('C', tweeter), Target: '103 dB', Slope: 'LR2' };
    const cell = await calculated('two-driver-check', set, 'C34');
    expectNear(cell('C34'), hertz, percent(hertz));
  });

  test('at 30° the spacing binds', async () => {
    const cell = await calculated('two-driver-check', { Angle: '30°' }, 'D42', 'C36', 'WindowWidth', 'E41');
    expectNear(cell('D42'), 2469, percent(2469));
    expectNear(cell('C36'), 2719, percent(2719));
    expectNear(cell('WindowWidth'), 0.54, 0.03);
    expect(cell('E41').text).toMatch(/^Comfortable/);
  });
});
