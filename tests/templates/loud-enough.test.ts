import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('loud enough?', () => {
  // From the study of these drivers: 84.7 dB at 2.8 m, 3 dB a doubling, +3 dB for a pair, peaks of 100 dB.
  test('47 W in the room, 133 W in the open', async () => {
    const opened = await openTemplate('loud-enough');
    expect(opened.number('SystemLevel')).toBeCloseTo(84.7, 6);
    expect(Math.abs(opened.number('Watts') - 47)).toBeLessThanOrEqual(0.02 * 47);
    expect(Math.abs(opened.number('OpenWatts') - 133)).toBeLessThanOrEqual(0.02 * 133);
  });

  test('the same watts by the plain sum of decibels', async () => {
    const opened = await openTemplate('loud-enough');
    const raise = (decay: number): number => 100 - (84.7 - decay * Math.log2(2.8) + 3);
    const watts = (decay: number): number => (2.83 ** 2 / 8) * 10 ** (raise(decay) / 10);
    expect(opened.number('Watts') / watts(3)).toBeCloseTo(1, 3);
    expect(opened.number('OpenWatts') / watts(6)).toBeCloseTo(1, 3);
  });

  test('headroom is tight with 50 W, comfortable with 100 W, and clips with 25 W', async () => {
    const opened = await openTemplate('loud-enough');
    expect(opened.text('E40')).toMatch(/^Caution.*Tight/);
    await opened.write({ Power: '100 W' });
    expect(opened.text('E40')).toMatch(/^Good/);
    await opened.write({ Power: '25 W' });
    expect(opened.text('E40')).toMatch(/^Fail.*clips 2\.8 dB early/);
  });

  test('peaks above 100 dB bring the note on hearing, long ones a verdict', async () => {
    const opened = await openTemplate('loud-enough');
    expect(opened.text('E25')).not.toMatch(/Hearing/);
    await opened.write({ Peaks: '106 dB', Time: '4 h' });
    const value = opened.state('E25')?.value;
    expect(value?.kind === 'record' ? value.record : undefined).toMatchObject({
      status: 'good',
      note: [expect.stringMatching(/Hearing/)],
    });
    expect(opened.text('E43')).toMatch(/^Too long/);
  });

  test('in the bass the cone gives out first, higher up the amplifier', async () => {
    const opened = await openTemplate('loud-enough');
    expect(opened.text('FirstLimit')).toBe('travel');
    // Travel alone, from the formula of a simple source, less make-up and distance, plus the second loudspeaker.
    const pressure = (1.204 * 0.0132 * 0.0055 * (2 * Math.PI * 60) ** 2) / (2 * Math.PI * Math.SQRT2);
    const atChair = 20 * Math.log10(pressure / 20e-6) - 4.5 - 3 * Math.log2(2.8) + 3;
    expect(Math.abs(opened.number('BassLevel') - atChair)).toBeLessThanOrEqual(0.2);
    await opened.write({ BassFrequency: '200 Hz' });
    expect(opened.text('FirstLimit')).toBe('amplifier');
  });

  test('a coil ahead of the woofer costs level and so watts', async () => {
    const opened = await openTemplate('loud-enough');
    const before = opened.number('Watts');
    await opened.write({ SeriesOhms: '0.6 Ω' });
    expect(10 * Math.log10(opened.number('Watts') / before)).toBeCloseTo(20 * Math.log10(6.4 / 5.8), 3);
  });
});
