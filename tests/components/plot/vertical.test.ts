import { describe, expect, test } from 'vitest';
import { steadyRange } from '../../../src/components/plot/vertical.ts';
import { closedBox, curveOf, plotOf, seriesOf } from './curves.ts';

const same = (si: number): number => si;
const level = (gain: number) => plotOf([seriesOf('System', closedBox(gain))]);

describe('the range of a value axis', () => {
  test('holds all of an impedance from zero, with round lines', () => {
    const impedance = curveOf('resistance', (hertz) => 6 + 24 / (1 + (hertz / 68 - 68 / hertz) ** 2));
    const range = steadyRange(plotOf([seriesOf('System', impedance)]), same);
    expect(range).toEqual({ from: 0, to: 32, step: 8 });
  });

  test('shows the top of a level that falls without end', () => {
    const falling = curveOf('level', (hertz) => 87 - 40 * Math.log10(1 + hertz / 100));
    const { from, to } = steadyRange(plotOf([seriesOf('Woofer', falling)]), same);
    expect(to).toBeGreaterThan(86);
    expect(to - from).toBeLessThanOrEqual(50);
  });

  test('stays while a number is dragged and the curve still fits', () => {
    const first = steadyRange(level(0), same);
    for (const gain of [-1, -0.5, 0.5]) expect(steadyRange(level(gain), same, first)).toBe(first);
  });

  test('moves when the curve leaves it, or becomes small in it', () => {
    const first = steadyRange(level(0), same);
    const higher = steadyRange(level(8), same, first);
    expect(higher.to).toBeGreaterThanOrEqual(95);
    const large = curveOf('travel', () => 40);
    const small = curveOf('travel', () => 4);
    const wide = steadyRange(plotOf([seriesOf('Woofer', large)]), same);
    expect(steadyRange(plotOf([seriesOf('Woofer', small)]), same, wide).to).toBeLessThan(10);
  });

  test('leaves room for the forbidden side of a limit', () => {
    const travel = curveOf('travel', (hertz) => 4.6 / (1 + (hertz / 90) ** 4));
    const data = plotOf([seriesOf('Woofer', travel)], { limits: [{ label: 'limit', value: 5.5, forbidden: 'above' }] });
    expect(steadyRange(data, same).to).toBeGreaterThan(6);
  });

  test('does not flatten the curve for a limit far above it', () => {
    const travel = curveOf('travel', () => 0.3);
    const data = plotOf([seriesOf('Woofer', travel)], { limits: [{ label: 'limit', value: 5.5, forbidden: 'above' }] });
    expect(steadyRange(data, same).to).toBeLessThan(1);
  });

  test('is the given one where one is given, in the axis unit', () => {
    const data = plotOf(
      [
        seriesOf(
          'Woofer',
          curveOf('travel', () => 0.004),
        ),
      ],
      { vertical: [0, 0.01] },
    );
    expect(steadyRange(data, (si) => si * 1000)).toEqual({ from: 0, to: 10, step: 2.5 });
  });

  test('is something even without a single value', () => {
    const nothing = curveOf('level', () => Number.NaN);
    const { from, to, step } = steadyRange(plotOf([seriesOf('Woofer', nothing)]), same);
    expect(to).toBeGreaterThan(from);
    expect(step).toBeGreaterThan(0);
  });

  test('survives a curve that is zero everywhere', () => {
    const { from, to, step } = steadyRange(
      plotOf([
        seriesOf(
          'Woofer',
          curveOf('travel', () => 0),
        ),
      ]),
      same,
    );
    expect(to).toBeGreaterThan(from);
    expect(step).toBeGreaterThan(0);
  });
});
