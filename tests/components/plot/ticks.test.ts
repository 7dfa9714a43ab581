import { describe, expect, test } from 'vitest';
import {
  decadeLines,
  evenTicks,
  frequencyText,
  frequencyTicks,
  roundStep,
  thinned,
} from '../../../src/components/plot/ticks.ts';

describe('a frequency axis', () => {
  test('is labelled 1-2-5 where there is room', () => {
    const texts = frequencyTicks(20, 20000, 316).map(({ text }) => text);
    expect(texts).toEqual(['20', '50', '100', '200', '500', '1k', '2k', '5k', '10k', '20k']);
  });

  test('keeps the powers of ten when there is little room', () => {
    const texts = frequencyTicks(20, 20000, 90).map(({ text }) => text);
    for (const decade of ['100', '1k', '10k']) expect(texts).toContain(decade);
    expect(texts.length).toBeLessThan(6);
  });

  test('never sets two labels closer than asked', () => {
    for (const pixels of [90, 200, 316, 700]) {
      const at = (value: number): number => (pixels * Math.log(value / 20)) / Math.log(1000);
      const places = frequencyTicks(20, 20000, pixels).map(({ value }) => at(value));
      for (const [index, place] of places.slice(1).entries()) expect(place - places[index]!).toBeGreaterThanOrEqual(22);
    }
  });

  test('has a line at every digit of a decade, ends included', () => {
    expect(decadeLines(20, 100)).toEqual([20, 30, 40, 50, 60, 70, 80, 90, 100]);
  });

  test.each([
    [20, '20'],
    [999, '999'],
    [2150, '2.15k'],
    [20000, '20k'],
  ])('writes %d as %s', (hertz, text) => expect(frequencyText(hertz)).toBe(text));
});

describe('a value axis', () => {
  test('writes a real minus and only the decimals that its step needs', () => {
    expect(evenTicks(-0.5, 0.5, 0.25).map(({ text }) => text)).toEqual([
      '\u22120.50',
      '\u22120.25',
      '0.00',
      '0.25',
      '0.50',
    ]);
    expect(evenTicks(60, 90, 10).map(({ text }) => text)).toEqual(['60', '70', '80', '90']);
  });

  test('has its lines on multiples of the step, also when it begins between them', () => {
    expect(evenTicks(55, 95, 10).map(({ value }) => value)).toEqual([60, 70, 80, 90]);
  });

  test('thinned out, zero stays among them', () => {
    const kept = (from: number, to: number): readonly number[] =>
      thinned(evenTicks(from, to, 20), 2).map(({ value }) => value);
    expect(kept(-20, 60)).toEqual([0, 40]);
    expect(kept(20, 100)).toEqual([20, 60, 100]);
  });

  test.each([
    [7.7, 8],
    [0.21, 0.25],
    [1, 1],
    [901, 1000],
  ])('rounds a step of %d up to %d', (size, step) => expect(roundStep(size)).toBeCloseTo(step, 9));
});
