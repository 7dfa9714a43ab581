import { describe, expect, test } from 'vitest';
import { type Described, calculated, expectNear, percent } from './calculated.ts';

describe('a port that will not fit', () => {
  const vented = (set: Record<string, string>, ...get: string[]): ReturnType<typeof calculated> =>
    calculated('vented-box', set, ...get);
  const millimetres = (cell: Described): number => cell.value * 1000;

  test('the tuning without ripple', async () => {
    const cell = await vented({}, 'FlatVolume', 'FlatTuning', 'Fall3', 'Fall10');
    expect(Math.abs(cell('FlatVolume').value * 1000 - 22.3)).toBeLessThanOrEqual(percent(22.3));
    expectNear(cell('FlatTuning'), 39.6, percent(39.6));
    expectNear(cell('Fall3'), 41.2, percent(41.2));
    expectNear(cell('Fall10'), 30.6, percent(30.6));
  });

  test.each([
    ['50 mm', 131, 43, 26.9],
    ['60 mm', 197, 30, 18.7],
    ['68 mm', 260, 23.3, 14.5],
    ['75 mm', 322, 19.2, 11.9],
  ] as const)(
    '%s wants %d mm; the air moves at %d m/s, at the power of the cone %d',
    async (diameter, long, fast, clean) => {
      const cell = await vented({ Diameter: diameter }, 'PortLength', 'TopSpeed', 'CleanSpeed', 'D54');
      expect(Math.abs(millimetres(cell('PortLength')) - long)).toBeLessThanOrEqual(percent(long));
      expectNear(cell('TopSpeed'), fast, percent(fast));
      expectNear(cell('CleanSpeed'), clean, percent(clean));
      expect(cell('D54').text).toMatch(clean <= 17 ? /^Good/ : /^(?!Good)/);
    },
  );

  test('fails by 78 mm with 68 mm', async () => {
    const cell = await vented({}, 'Clearance', 'D41');
    expect(Math.abs(millimetres(cell('Clearance')) + 78)).toBeLessThanOrEqual(percent(328));
    expect(cell('D41').text).toMatch(/78 mm|elbow/);
  });

  test('the cone takes 19.4 W at 58 Hz', async () => {
    const cell = await vented({}, 'TravelWatts', 'TravelWattsAt');
    expectNear(cell('TravelWatts'), 19.4, percent(19.4));
    expectNear(cell('TravelWattsAt'), 58, percent(58));
  });

  // 102.0 dB is the level of 19.4 W on a flat response. At 58 Hz the response of this box is 0.3 dB down, and the sheet
  // gives what arrives, 101.7 dB.
  test.fails('102.0 dB there', async () => {
    expectNear((await vented({}, 'TravelLevel'))('TravelLevel'), 102, 0.2);
  });

  test('16 L at 45 Hz', async () => {
    const cell = await vented({ Volume: '16 L', Tuning: '45 Hz' }, 'Peak', 'Fall3', 'PortLength');
    expectNear(cell('Peak'), 0.9, 0.2);
    expectNear(cell('Fall3'), 47.4, percent(47.4));
    expect(Math.abs(millimetres(cell('PortLength')) - 285)).toBeLessThanOrEqual(percent(285));
  });

  test('travel without and with the high-pass', async () => {
    const cell = await vented({}, 'DeepTravel', 'FilteredPeak');
    expect(Math.abs(millimetres(cell('DeepTravel')) - 27.7)).toBeLessThanOrEqual(percent(27.7));
    expect(Math.abs(millimetres(cell('FilteredPeak')) - 6.9)).toBeLessThanOrEqual(percent(6.9));
  });

  test('0.6 Ω in series', async () => {
    const cell = await vented({ SeriesOhms: '0.6 ohm' }, 'Peak', 'FlatVolume', 'FlatTuning');
    expectNear(cell('Peak'), 0.65, 0.2);
    expect(Math.abs(cell('FlatVolume').value * 1000 - 32.4)).toBeLessThanOrEqual(percent(32.4));
    expectNear(cell('FlatTuning'), 36.6, percent(36.6));
  });
});
