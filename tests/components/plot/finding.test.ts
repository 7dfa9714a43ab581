import { describe, expect, test } from 'vitest';
import { breaches, comparison, extremesOf, isSame, list } from '../../../src/components/plot/finding.ts';
import { readingAt, stepFrequency, thirdOctaves } from '../../../src/components/plot/readings.ts';
import { closedBox, curveOf, plotOf, seriesOf } from './curves.ts';

const dip = curveOf('resistance', (hertz) => 6 - 3 * Math.exp(-((Math.log(hertz / 2900) / 0.3) ** 2)));
const limit = { label: 'limit', value: 4, forbidden: 'below' } as const;

describe('extremes', () => {
  test('are found inside the band', () => {
    const { minimum } = extremesOf(dip, [20, 20000])!;
    expect(minimum.value).toBeCloseTo(3, 2);
    expect(Math.abs(Math.log2(minimum.frequency / 2900))).toBeLessThan(1 / 48);
    expect(extremesOf(dip, [20, 200])!.minimum.value).toBeCloseTo(6, 6);
  });

  test('are absent where the curve does not hold', () => {
    expect(
      extremesOf(
        curveOf('level', () => 1, [10, 15]),
        [20, 20000],
      ),
    ).toBeUndefined();
  });
});

describe('a broken limit', () => {
  test('is told by the band in which the curve is beyond it', () => {
    const [band] = breaches(dip, limit, [20, 20000]);
    // 6 - 3 exp(-(ln(f/2900)/0.3)²) = 4 at ln(f/2900) = ±0.3 √ln(3/2).
    const half = 0.3 * Math.sqrt(Math.log(1.5));
    expect(Math.abs(Math.log2(band![0] / (2900 * Math.exp(-half))))).toBeLessThan(1 / 24);
    expect(Math.abs(Math.log2(band![1] / (2900 * Math.exp(half))))).toBeLessThan(1 / 24);
  });

  test('is told once for each band', () => {
    const two = curveOf('resistance', (hertz) =>
      hertz > 100 && hertz < 200 ? 3 : hertz > 1000 && hertz < 2000 ? 3 : 6,
    );
    expect(breaches(two, limit, [20, 20000])).toHaveLength(2);
    expect(breaches(two, limit, [20, 500])).toHaveLength(1);
    expect(breaches(two, { ...limit, forbidden: 'above', value: 7 }, [20, 20000])).toHaveLength(0);
  });
});

describe('the comparison with the baseline', () => {
  test('tells unchanged from changed and from no baseline', () => {
    expect(comparison(plotOf([seriesOf('System', closedBox())]))).toBe('none');
    expect(comparison(plotOf([seriesOf('System', closedBox(), { ghost: closedBox() })]))).toBe('same');
    expect(comparison(plotOf([seriesOf('System', closedBox(), { ghost: closedBox(0.5) })]))).toBe('changed');
  });

  test('takes values that are missing on both sides for equal', () => {
    const gap = () => curveOf('level', (hertz) => (hertz < 100 ? -Infinity : 5));
    expect(isSame(gap(), gap())).toBe(true);
    const missing = () => curveOf('level', (hertz) => (hertz < 100 ? Number.NaN : 5));
    expect(isSame(missing(), missing())).toBe(true);
  });
});

describe('readings', () => {
  test('follow the preferred third-octave numbers', () => {
    // ISO 3, series R10, as ISO 266 uses it for frequencies.
    expect(thirdOctaves(20, 200)).toEqual([20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200]);
  });

  test('have no value where a curve does not hold', () => {
    const data = plotOf([
      seriesOf(
        'Woofer',
        curveOf('level', () => 80, [20, 5000]),
      ),
    ]);
    expect(readingAt(data, 1000).values[0]!.value).toBeCloseTo(80, 9);
    expect(readingAt(data, 8000).values[0]!.value).toBeUndefined();
  });

  test('step by a 24th of an octave, an octave coarsely, and stop at the ends', () => {
    expect(stepFrequency(1000, 1, true, [20, 20000])).toBe(2000);
    expect(stepFrequency(1000, 1, false, [20, 20000]) / 1000).toBeCloseTo(2 ** (1 / 24), 12);
    expect(stepFrequency(21, -1, true, [20, 20000])).toBe(20);
  });
});

test.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b'], 'a and b'],
  [['a', 'b', 'c'], 'a, b and c'],
])('lists %j as words', (words, text) => expect(list(words)).toBe(text));
