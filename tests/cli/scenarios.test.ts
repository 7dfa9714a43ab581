import { describe, expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { run } from '../../src/cli/run.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { templates } from '../../templates/index.ts';
import { typedDriver } from '../references/demo-drivers.ts';

interface Described {
  readonly kind: string;
  readonly value: number;
  readonly unit: string;
  readonly text: string;
}

/** What the command line prints as JSON for a starter sheet with these cells set. */
async function calculated(
  template: string,
  set: Readonly<Record<string, string>>,
  ...get: readonly string[]
): Promise<(cell: string) => Described> {
  const out: string[] = [];
  const error: string[] = [];
  const given = [
    template,
    ...Object.entries(set).flatMap(([cell, text]) => ['--set', `${cell}=${text}`]),
    ...get.flatMap((cell) => ['--get', cell]),
    '--json',
  ];
  const status = await run(given, {
    out: (text) => out.push(text),
    error: (text) => error.push(text),
    read: async () => undefined,
    newEngine: createEngine,
    catalogue,
    templates: new Map<string, unknown>(templates.map(({ id, content }) => [id, content])),
  });
  expect({ status, error }).toEqual({ status: 0, error: [] });
  const cells = JSON.parse(out.join('\n')) as Record<string, Described>;
  return (cell) => {
    const found = cells[cell];
    if (!found) throw new Error(`Nothing is printed for ${cell}`);
    return found;
  };
}

/** The rule of the scenarios: hertz, litres and millimetres within 2 %, dB within 0.2, octaves 0.03. */
function expectNear(actual: Described, expected: number, tolerance: number): void {
  expect(Math.abs(actual.value - expected), `${actual.text}, not ${expected}`).toBeLessThanOrEqual(tolerance);
}
const percent = (of: number): number => Math.abs(of) * 0.02;

const inColumn = (column: string, id: string): Record<string, string> =>
  Object.fromEntries(typedDriver(id).map((text, index) => [`${column}${4 + index}`, text]));
const pair = (woofer: string, tweeter: string): Record<string, string> => ({
  ...inColumn('B', woofer),
  ...inColumn('C', tweeter),
});

describe('which woofer with which tweeter', () => {
  test.each([
    ['W-130 A', 'T-19 C', -0.46, 'Stretch'],
    ['W-130 A', 'T-25 A', 0.495, 'Tight'],
    ['W-130 A', 'T-28 B', 1.15, 'Comfortable'],
    ['W-165 A', 'T-19 C', -0.78, 'Stretch'],
    ['W-165 A', 'T-25 A', 0.18, 'Tight'],
    ['W-165 A', 'T-28 B', 0.83, 'Comfortable'],
    ['W-220 A', 'T-19 C', -1.15, 'No shared band'],
    ['W-220 A', 'T-25 A', -0.2, 'Stretch'],
    ['W-220 A', 'T-28 B', 0.46, 'Tight'],
  ] as const)('%s with %s: %d octaves, %s', async (woofer, tweeter, width, word) => {
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

describe('a closed box and the coil', () => {
  const names = ['WantedVolume', 'BoxResonance', 'Qtc', 'Fall3', 'Fall10', 'Peak', 'SeriesLoss'] as const;
  const box = (set: Record<string, string>): ReturnType<typeof calculated> =>
    calculated('closed-box-bench', set, ...names, 'TravelFrequency', 'TravelWatts', 'D37');
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
    expect(cell('D37').text).toMatch(/cone limit/);
  });
});

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
      const cell = await vented({ Diameter: diameter }, 'PortLength', 'TopSpeed', 'CleanSpeed', 'D48');
      expect(Math.abs(millimetres(cell('PortLength')) - long)).toBeLessThanOrEqual(percent(long));
      expectNear(cell('TopSpeed'), fast, percent(fast));
      expectNear(cell('CleanSpeed'), clean, percent(clean));
      expect(cell('D48').text).toMatch(clean <= 17 ? /^Good/ : /^(?!Good)/);
    },
  );

  test('fails by 78 mm with 68 mm', async () => {
    const cell = await vented({}, 'Clearance', 'D35');
    expect(Math.abs(millimetres(cell('Clearance')) + 78)).toBeLessThanOrEqual(percent(328));
    expect(cell('D35').text).toMatch(/78 mm|elbow/);
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

describe('two woofers on an amplifier for 4 Ω and more', () => {
  const many = (set: Record<string, string>, ...get: string[]): ReturnType<typeof calculated> =>
    calculated('many-cones', set, ...get);
  const four = inColumn('B', 'W-165 A4');
  const expectOhms = (actual: Described, expected: number): void => expectNear(actual, expected, 0.05);

  test.each([
    ['W-165 A in parallel', inColumn('B', 'W-165 A'), '2', '2', 95.2, 2.91, /^Low load.*41[01] Hz.*music is strong/],
    ['W-165 A in series', inColumn('B', 'W-165 A'), '2', '1', 89.2, 11.65, /^Good/],
    ['W-165 A4 in series', four, '2', '1', 91.9, 6.23, /^Good/],
    ['W-165 A4 in parallel', four, '2', '2', 97.9, 1.56, /^(?!Good|Low load)/],
    ['four W-165 A, pairs in series', inColumn('B', 'W-165 A'), '4', '2', 95.2, 5.83, /^Good/],
  ] as const)('%s', async (_, driver, count, number, level, ohms, word) => {
    const set = { ...driver, Count: count, WiringNumber: number };
    const cell = await many(set, 'GroupLevel', 'LowestOhms', 'LowestAt', 'F47', 'PerWatt');
    expectNear(cell('GroupLevel'), level, 0.2);
    expectOhms(cell('LowestOhms'), ohms);
    expect(cell('F47').text).toMatch(word);
    // For the same watts n units close together gain 10·lg n, in every even wiring.
    expect(cell('PerWatt').value).toBeCloseTo(10 * Math.log10(Number(count)), 6);
  });

  test('the load is lowest near 410 Hz', async () => {
    expectNear((await many({}, 'LowestAt'))('LowestAt'), 410, percent(410));
  });

  test('round a tweeter, and as a two-and-a-half-way', async () => {
    const names = ['SystemLevel', 'Pad', 'PairSpacing', 'PairNull', 'HalfSpacing', 'HalfNull'] as const;
    const degrees = (cell: Described): Described => ({ ...cell, value: (cell.value * 180) / Math.PI });
    const cell = await many({ ...four, WiringNumber: '1', MakeUp: '4.5 dB' }, ...names);
    expectNear(cell('SystemLevel'), 87.4, 0.2);
    expectNear(cell('Pad'), 2.6, 0.2);
    expectNear(cell('PairSpacing'), 0.278, percent(0.278));
    expectNear(degrees(cell('PairNull')), 19, 0.1);
    expectNear(cell('HalfSpacing'), 0.139, percent(0.139));
    expectNear(degrees(cell('HalfNull')), 40.5, 0.1);
    const half = await many({}, 'HalfLevel', 'HalfLowest', 'F79');
    expectNear(half('HalfLevel'), 89.2, 0.2);
    expectOhms(half('HalfLowest'), 2.91);
    expect(half('F79').text).toMatch(/^Low load.*2\.91/);
  });
});

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
