import { describe, expect, test } from 'vitest';
import { type Described, calculated, expectNear, percent } from './calculated.ts';

describe('a closed box and the coil', () => {
  const names = ['WantedVolume', 'BoxResonance', 'Qtc', 'Fall3', 'Fall10', 'Peak', 'SeriesLoss'] as const;
  const box = (set: Record<string, string>): ReturnType<typeof calculated> =>
    calculated('closed-box-bench', set, ...names, 'TravelFrequency', 'TravelWatts', 'D43');
  const litres = (cell: Described): number => cell.value * 1000;

  test('without a coil', async () => {
    const cell = await box({});
    expect(Math.abs(litres(cell('WantedVolume')) - 12.1)).toBeLessThanOrEqual(percent(12.1));
    expectNear(cell('BoxResonance'), 69.6, percent(69.6));
    expectNear(cell('Fall3'), 69.6, percent(69.6));
    expectNear(cell('Fall10'), 40.2, percent(40.2));
  });

  test('with 0.6 Ω in series', async () => {
    const cell = await box({ SeriesOhms: '0.6 ohm' });
    expect(cell('Qtc').value).toBeCloseTo(0.774, 2);
    expectNear(cell('Peak'), 0.12, 0.2);
    expectNear(cell('Fall3'), 64.1, percent(64.1));
    expectNear(cell('SeriesLoss'), 0.86, 0.2);
    expect(Math.abs(litres(cell('WantedVolume')) - 15.85)).toBeLessThanOrEqual(percent(15.85));
    expectNear((await box({ SeriesOhms: '0.6 ohm', Volume: '15.85 L' }))('Fall3'), 63.6, percent(63.6));
  });

  test('with fill, and in 9 L', async () => {
    const filled = await box({ Fill: '1.15' });
    expect(filled('Qtc').value).toBeCloseTo(0.674, 2);
    expectNear(filled('BoxResonance'), 66.3, percent(66.3));
    expectNear(filled('Fall3'), 69.7, percent(69.7));
    const small = await box({ Volume: '9 L' });
    expect(small('Qtc').value).toBeCloseTo(0.789, 2);
    expectNear(small('Fall3'), 70.4, percent(70.4));
    expectNear(small('Fall10'), 43.4, percent(43.4));
  });

  test('what the cone takes', async () => {
    const cell = await box({});
    expectNear(cell('TravelFrequency'), 98, percent(98));
    expectNear(cell('TravelWatts'), 10.9, percent(10.9));
    expect(cell('D43').text).toMatch(/cone limit/);
  });
});
