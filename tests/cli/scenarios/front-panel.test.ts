import { describe, expect, test } from 'vitest';
import { type Described, calculated, expectNear, percent } from './calculated.ts';

describe('a front panel, its step and its pad', () => {
  const panel = (set: Record<string, string>, ...get: string[]): ReturnType<typeof calculated> =>
    calculated('front-panel', set, ...get);

  test.each([
    ['0 dB', 89.2, 0.8],
    ['4.5 dB', 84.7, 5.3],
  ] as const)('%s of make-up: %d dB, pad %d dB', async (makeUp, level, pad) => {
    const cell = await panel({ MakeUp: makeUp }, 'SystemLevel', 'Pad');
    expectNear(cell('SystemLevel'), level, 0.2);
    expectNear(cell('Pad'), pad, 0.2);
  });

  test('the step and its shelf', async () => {
    const cell = await panel({ SeriesOhms: '0.6 ohm' }, 'StepFrequency', 'ShelfOhms', 'ShelfResistor', 'ShelfCoil');
    expectNear(cell('StepFrequency'), 523, percent(523));
    expectNear(cell('ShelfOhms'), 6.4, 0.05);
    expectNear(cell('ShelfResistor'), 4.3, 0.05);
    expectNear(cell('ShelfCoil'), 1.02e-3, percent(1.02e-3));
    expectNear((await panel({ Width: '180 mm' }, 'StepFrequency'))('StepFrequency'), 639, percent(639));
  });

  test('the pad on real ohms, on printed ohms, and as one resistor', async () => {
    const cell = await panel(
      {},
      'RealOhms',
      'IdealSeries',
      'IdealShunt',
      'PadSeries',
      'PadShunt',
      'PadLoss',
      'PadInput',
    );
    expectNear(cell('RealOhms'), 6.1, 0.05);
    expectNear(cell('IdealSeries'), 2.78, 0.05);
    expectNear(cell('IdealShunt'), 7.27, 0.05);
    expectNear(cell('PadSeries'), 2.7, 0);
    expectNear(cell('PadShunt'), 6.8, 0);
    expectNear(cell('PadLoss'), 5.29, 0.2);
    expectNear(cell('PadInput'), 5.92, 0.05);
    const other = await panel({}, 'PrintedSeries', 'PrintedShunt', 'PrintedLoss', 'PrintedError', 'SingleResistor');
    expectNear(other('PrintedSeries'), 3.9, 0);
    expectNear(other('PrintedShunt'), 10, 0);
    expectNear(other('PrintedLoss'), 6.15, 0.2);
    expectNear(other('PrintedError'), 0.85, 0.2);
    expectNear(other('SingleResistor'), 5.1, 0.05);
    const single = await panel({}, 'SingleLoad', 'CapacitorShrinks');
    expectNear(single('SingleLoad'), 11.2, 0.05);
    expectNear(single('CapacitorShrinks'), 0.53, 0.005);
  });
});

describe('the heat of a pad', () => {
  const names = ['SeriesHeat', 'ShuntHeat', 'TweeterHeat'] as const;
  const watts = (actual: Described, expected: number): void => expectNear(actual, expected, percent(expected));

  test('100 W of music, unclipped', async () => {
    const cell = await calculated('first-crossover', {}, 'PadSeries', 'PadShunt', ...names);
    expectNear(cell('PadSeries'), 2.7, 0);
    expectNear(cell('PadShunt'), 6.8, 0);
    watts(cell('SeriesHeat'), 1.17);
    watts(cell('ShuntHeat'), 0.66);
    watts(cell('TweeterHeat'), 0.73);
  });

  test('driven into clipping, the tweeter is near its limit and says so', async () => {
    const clipped = names.map((name) => `Clipped${name}`);
    const cell = await calculated('first-crossover', {}, ...clipped, 'E86');
    watts(cell('ClippedSeriesHeat'), 15.5);
    watts(cell('ClippedShuntHeat'), 8.7);
    watts(cell('ClippedTweeterHeat'), 9.7);
    expect(cell('E86').text).toMatch(/^Caution/);
  });
});
