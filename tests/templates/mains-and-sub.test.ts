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
    // 87.5 dB for 2.83 V, 2 W into 4 Ω; 350 W are 25.4 dB more, and the box is 5.3 dB down at 30 Hz.
    ['SubHeat', 104.6, 0.1],
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
    ['mains that sag at the hand-over', { SubHandOver: '60 Hz' }, 'E36', /^Caution.*already sag/u],
    ['too much travel', { Target: '102 dB' }, 'E51', /^Caution.*Hand over higher/u],
    ['too little voltage for the mains', { Power: '10 W' }, 'E46', /^Fail/u],
    ['more than four subs', { SubTarget: '115 dB' }, 'E62', /^Caution.*larger ones/u],
    ['too little voltage for the subs', { SubPower: '60 W' }, 'E67', /^Fail.*More subs/u],
    ['a hot coil', { C13: '100 W' }, 'E68', /^Caution.*coil gets hot/u],
    ['a lift that few rooms give', { BoundaryGain: '9 dB' }, 'E58', /corners and small rooms/u],
    ['a level that hurts', { SubTarget: '112 dB' }, 'E56', /hearing/u],
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

describe('a vented sub', () => {
  const vented = { SubStyle: 'vented', SubVolume: '90 L', SubTuning: '22 Hz', SubPort: '0 cm²' } as const;
  /** Level of a simple source in half space at 1 m by the peak volume that it displaces. */
  const levelOf = (volume: number, f: number): number =>
    20 * Math.log10((1.204 * (2 * Math.PI * f) ** 2 * volume) / (Math.SQRT2 * 2 * Math.PI * 20e-6));
  // Small (1973), Vented-Box Loudspeaker Systems: all that leaves the box over what the cone displaces, with a leak.
  const gain = (w: number): number => w ** 2 / Math.hypot(1 - w ** 2, w / 7);
  const band = (from: number, to: number): number[] =>
    Array.from({ length: 400 }, (_, index) => from * (to / from) ** (index / 399));

  test.each(['20 Hz', '22 Hz', '40 Hz'])(
    'its level by travel is the least from %s to the hand-over',
    async (lowest) => {
      const opened = await openTemplate('mains-and-sub');
      await opened.write({ ...vented, LowestNote: lowest });
      expect(opened.problems()).toEqual([]);
      const least = Math.min(
        ...band(parseFloat(lowest), 85).map((f) => levelOf(335e-4 * 15e-3, f) + 20 * Math.log10(gain(f / 22))),
      );
      expect(Math.abs(opened.number('SubCeiling') - least)).toBeLessThan(0.05);
    },
  );

  test('the air in the port sets a level of its own', async () => {
    const opened = await openTemplate('mains-and-sub');
    await opened.write({ ...vented, SubPort: '40 cm²' });
    // All that leaves the box is (f/fb)² of what leaves the port, and least at the lowest note.
    const port = levelOf((17 * 40e-4) / (2 * Math.PI * 30), 30) + 40 * Math.log10(30 / 22);
    expect(Math.abs(opened.number('SubCeiling') - port)).toBeLessThan(0.05);
    await opened.write({ PortSpeed: '8.5 m/s' });
    expect(opened.number('SubCeiling')).toBeCloseTo(port - 20 * Math.log10(2), 1);
  });

  test('a box that is too small for it is warned of', async () => {
    const opened = await openTemplate('mains-and-sub');
    await opened.write({ ...vented, SubVolume: '35 L', SubTuning: '32 Hz' });
    expect(opened.text('E33')).toMatch(/^(Caution|Fail).*larger box/u);
    expect(opened.text('E31')).toMatch(/^Good/u);
  });
});
