import { describe, expect, test } from 'vitest';
import { frequencies } from '../../../functions/values/grid.ts';
import { frameOf } from '../../../src/components/plot/frame.ts';
import { heightsOf, pathOf, valueAt } from '../../../src/components/plot/path.ts';
import { curveOf } from './curves.ts';

const frame = frameOf({ width: 364, height: 180 }, [20, 20000], { from: 0, to: 10, step: 2 });
const same = (si: number): number => si;

describe('a path', () => {
  test('runs along the curve in pixels', () => {
    const path = pathOf(
      curveOf('level', () => 5),
      frame,
      same,
    );
    expect(path.startsWith('M')).toBe(true);
    const heights = [...path.matchAll(/,(-?[\d.]+)/g)].map(([, y]) => Number(y));
    expect(new Set(heights)).toEqual(new Set([frame.height / 2]));
  });

  test('is drawn only where the curve holds', () => {
    const path = pathOf(
      curveOf('level', () => 5, [100, 1000]),
      frame,
      same,
    );
    const xs = [...path.matchAll(/[ML](-?[\d.]+),/g)].map(([, x]) => Number(x));
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(frame.x(100) - 0.1);
    expect(Math.max(...xs)).toBeLessThanOrEqual(frame.x(1000) + 0.1);
  });

  test('is broken where the curve has no value', () => {
    const path = pathOf(
      curveOf('level', (hertz) => (hertz > 500 && hertz < 600 ? Number.NaN : 5)),
      frame,
      same,
    );
    expect(path.match(/M/g)).toHaveLength(2);
  });

  test('holds no number that is not one, however far the curve runs off', () => {
    const path = pathOf(
      curveOf('level', (hertz) => (hertz < 100 ? -Infinity : hertz > 5000 ? Infinity : 5)),
      frame,
      same,
    );
    expect(path).not.toMatch(/NaN|Infinity/);
  });
});

describe('the value at a frequency', () => {
  const slope = curveOf('level', (hertz) => 6 * Math.log2(hertz / 1000));

  test('is that of the grid on the grid', () => {
    for (const index of [0, 1, 300, 576]) expect(valueAt(slope, frequencies[index]!)).toBeCloseTo(slope.y[index]!, 9);
  });

  test('lies on a straight line of the logarithm between', () => {
    for (const hertz of [33, 1234.5, 19000]) expect(valueAt(slope, hertz)).toBeCloseTo(6 * Math.log2(hertz / 1000), 9);
  });

  test('is no number off the grid', () => {
    expect(valueAt(slope, 5)).toBeNaN();
    expect(valueAt(slope, 50000)).toBeNaN();
  });

  test('has no height where the curve does not hold', () => {
    const heights = heightsOf(
      curveOf('level', () => 5, [100, 1000]),
      frame,
      same,
      4,
    );
    expect(heights[0]).toBeNaN();
    expect(heights[Math.round(frame.x(300) / 4)]).toBeCloseTo(frame.height / 2, 6);
  });
});
