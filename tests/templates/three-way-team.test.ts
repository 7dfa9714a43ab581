import { describe, expect, test } from 'vitest';
import { typedDriver } from '../references/demo-drivers.ts';
import { openTemplate } from './open-template.ts';

describe('the three-way team on its invented drivers', () => {
  // From the acceptance values for these drivers at 103 dB; hertz within 2 %, dB 0.2.
  test.each([
    ['MidResonance', 104, 2.1],
    ['C42', 178, 3.6],
    ['SystemLevel', 85.8, 0.2],
    ['MidPad', 3.7, 0.2],
    ['Pad', 4.1, 0.2],
  ] as const)('%s is %d', async (cell, expected, tolerance) => {
    const opened = await openTemplate('three-way-team');
    expect(Math.abs(opened.number(cell) - expected), opened.text(cell)).toBeLessThanOrEqual(tolerance);
  });

  test('the low hand-over begins at 208 Hz by the chamber, the high one lies from 1700 to 2984 Hz', async () => {
    const opened = await openTemplate('three-way-team');
    const ends = ['LowWindow', 'HighWindow'].map((name) => {
      const window = opened.state(name)?.value;
      if (window?.kind !== 'record' || window.record.kind !== 'window') throw new Error(`${name} is no window`);
      return window.record;
    });
    const [low, high] = [ends[0]!, ends[1]!];
    expect(Math.abs(low.low.at - 208)).toBeLessThanOrEqual(4.2);
    expect(low.low.name).toBe('resonance');
    expect(Math.abs(high.low.at - 1700)).toBeLessThanOrEqual(34);
    expect(Math.abs(high.high.at - 2984)).toBeLessThanOrEqual(60);
  });

  test('all is good as it opens', async () => {
    expect((await openTemplate('three-way-team')).text('F2')).toMatch(/^Good/u);
  });
});

describe('what the three-way team warns of', () => {
  test('a band under three octaves', async () => {
    const opened = await openTemplate('three-way-team');
    await opened.write({ LowHandOver: '400 Hz' });
    expect(opened.text('F26')).toMatch(/^Caution.*two-way may do the same job/u);
  });

  test('a chamber that resonates above half the low hand-over', async () => {
    const opened = await openTemplate('three-way-team');
    await opened.write({ MidVolume: '0.8 L' });
    expect(opened.number('MidResonance')).toBeGreaterThan(140);
    expect(opened.text('F37')).toMatch(/^Caution.*inside the filter slope/u);
  });

  test('a mid that is quieter than the woofer after make-up', async () => {
    const opened = await openTemplate('three-way-team');
    await opened.write({ C14: '84 dB' });
    expect(opened.text('F69')).toMatch(/^Fail.*active drive/u);
    expect(opened.text('F2')).toMatch(/^Fail/u);
  });

  test('litres for a mid with a closed back, whose printed resonance is taken', async () => {
    const opened = await openTemplate('three-way-team');
    const dome = typedDriver('M-54 D').map((text, row) => [`C${String(4 + row)}`, text] as const);
    await opened.write({ ...Object.fromEntries(dome), MidBack: 'closed', LowHandOver: '800 Hz' });
    expect(opened.text('F35')).toMatch(/brings its own chamber/u);
    expect(opened.number('MidResonance')).toBe(330);
    expect(opened.problems()).toEqual([]);
  });
});
