import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('first-draft crossover', () => {
  const within = (actual: number, expected: number, share: number): void =>
    expect(Math.abs(actual / expected - 1), `${String(actual)}, not ${String(expected)}`).toBeLessThanOrEqual(share);

  test('1900 Hz LR2 on 6.3 Ω: 1.06 mH and 6.65 µF, from the shop 1.0 and 6.8, then 1930 Hz and Q 0.52', async () => {
    const opened = await openTemplate('first-crossover');
    within(opened.number('LowCoil'), 1.06e-3, 0.02);
    within(opened.number('LowCapacitor'), 6.65e-6, 0.02);
    within(opened.number('LowCoilBought'), 1e-3, 1e-9);
    within(opened.number('LowCapacitorBought'), 6.8e-6, 1e-9);
    within(opened.number('LowCorner'), 1930, 0.02);
    expect(opened.number('LowQ')).toBeCloseTo(0.52, 2);
  });

  test('unflattened, the woofer has 8.6 Ω there', async () => {
    const opened = await openTemplate('first-crossover');
    expect(Math.abs(opened.number('WooferAtHandOver') - 8.6)).toBeLessThanOrEqual(0.05);
  });

  test('the printed ohms in place of the real ones are a caution that names both', async () => {
    const opened = await openTemplate('first-crossover');
    expect(opened.text('E44')).toMatch(/^Good/);
    await opened.write({ LowOhms: '8 ohm' });
    expect(opened.text('E44')).toMatch(/^Caution.*6\.5 Ω, not 8 Ω/);
  });

  test('the first order has a coil and no capacitor in the low-pass, the fourth two of each', async () => {
    const opened = await openTemplate('first-crossover');
    await opened.write({ FilterSlope: 'BW1' });
    expect([opened.text('LowCapacitor'), opened.text('LowQ'), opened.text('HighCoil')]).toEqual(['', '', '']);
    expect(opened.number('LowCoil')).toBeCloseTo(6.3 / (2 * Math.PI * 1900), 9);
    await opened.write({ FilterSlope: 'LR4' });
    expect(opened.number('LowSecondCoil')).toBeGreaterThan(0);
    expect(opened.number('SeriesOhms')).toBeGreaterThan(opened.number('LowCoilOhms'));
    expect(opened.problems()).toEqual([]);
  });

  test('the coil goes back into the box: a higher Qtc, more litres for the same', async () => {
    const opened = await openTemplate('first-crossover');
    expect(opened.text('SeriesOhms')).toMatch(/^0\.4[89]/);
    expect(opened.number('Qtc')).toBeGreaterThan(opened.number('QtcBefore'));
    expect(opened.number('VolumeWithCoil')).toBeGreaterThan(opened.number('Volume'));
  });

  test('second order sums with the tweeter reversed, not as it stands', async () => {
    const opened = await openTemplate('first-crossover');
    const at = (cell: string, hertz: number): number => {
      const value = opened.state(cell)?.value;
      if (value?.kind !== 'record' || value.record.kind !== 'curve') return Number.NaN;
      return value.record.y[Math.round(48 * Math.log2(hertz / 10))] ?? Number.NaN;
    };
    const reversed = at('SumLevel', 1900);
    await opened.write({ Polarity: 'normal' });
    expect(reversed - at('SumLevel', 1900)).toBeGreaterThan(1);
  });
});
