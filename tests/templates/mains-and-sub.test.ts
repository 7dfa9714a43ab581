import { describe, expect, test } from 'vitest';
import { typedDriver } from '../references/demo-drivers.ts';
import { openTemplate } from './open-template.ts';

describe('mains and sub on their invented drivers', () => {
  // From the acceptance values for these drivers; hertz within 2 %, dB 0.2, Q and watts half a unit of the last digit.
  test.each([
    ['BoxResonance', 87, 1.7],
    ['Qtc', 0.73, 0.005],
    ['FullWatts', 9, 0.5],
    ['FilteredWatts', 33, 0.5],
    ['Relief', 5.5, 0.2],
    ['SubResonance', 37.8, 0.8],
    ['SubQtc', 0.72, 0.005],
    ['SubCeiling', 101.7, 0.2],
    ['Count', 2, 0],
  ] as const)('%s is %d', async (cell, expected, tolerance) => {
    const opened = await openTemplate('mains-and-sub');
    expect(Math.abs(opened.number(cell) - expected), opened.text(cell)).toBeLessThanOrEqual(tolerance);
  });

  test('box and filter together are close to LR4: 6 dB down at the hand-over', async () => {
    const opened = await openTemplate('mains-and-sub');
    expect(Math.abs(opened.number('MainsAtHandOver') + 6.02)).toBeLessThanOrEqual(0.2);
  });

  // Travel goes with volts and power with their square, so both ways of counting what the filter buys must agree.
  test('the watts gained are the decibels of relief', async () => {
    const opened = await openTemplate('mains-and-sub');
    const gained = 10 * Math.log10(opened.number('FilteredWatts') / opened.number('FullWatts'));
    expect(opened.number('Relief')).toBeCloseTo(gained, 1);
  });

  test('all is good as it opens', async () => {
    expect((await openTemplate('mains-and-sub')).text('E2')).toMatch(/^Good/u);
  });
});

describe('what it warns of', () => {
  test.each([
    ['mains that sag at the hand-over', { SubHandOver: '60 Hz' }, 'E30', /^Caution.*already sag/u],
    ['too much travel', { Target: '102 dB' }, 'E45', /^Caution.*Hand over higher/u],
    ['too little voltage for the mains', { Power: '10 W' }, 'E40', /^Fail/u],
    ['more than four subs', { SubTarget: '115 dB' }, 'E54', /^Caution.*larger ones/u],
    ['too little voltage for the subs', { SubPower: '60 W' }, 'E59', /^Fail.*More subs/u],
    ['a hot coil', { C13: '100 W' }, 'E60', /^Fail.*coil gets hot/u],
    ['a lift that few rooms give', { BoundaryGain: '9 dB' }, 'E52', /corners and small rooms/u],
    ['a level that hurts', { SubTarget: '112 dB' }, 'E50', /hearing/u],
  ] as const)('%s', async (_, set, cell, says) => {
    const opened = await openTemplate('mains-and-sub');
    expect(opened.text(cell)).toMatch(/^Good/u);
    await opened.write(set);
    expect(opened.text(cell)).toMatch(says);
  });

  test('other mains of 13 cm or 16 cm hold no problem', async () => {
    const opened = await openTemplate('mains-and-sub');
    const larger = typedDriver('W-165 A').map((text, row) => [`B${String(4 + row)}`, text] as const);
    await opened.write({ ...Object.fromEntries(larger), Volume: '12 L' });
    expect(opened.problems()).toEqual([]);
    expect(opened.number('Fall3')).toBeLessThan(85);
  });
});
