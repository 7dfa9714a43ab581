import { describe, expect, test } from 'vitest';
import { marksOf } from '../../../src/components/ruler/marks.ts';
import {
  decimalsOf,
  roundDown,
  roundInward,
  roundUp,
  scaleOf,
  snap,
  stepAt,
  stepFrom,
} from '../../../src/components/ruler/scale.ts';

const crossover = scaleOf(1000, 4000);

describe('a rule', () => {
  test('is logarithmic over a factor of two and more, even otherwise and across zero', () => {
    expect(crossover.logarithmic).toBe(true);
    expect(crossover.place(2000)).toBeCloseTo(0.5, 12);
    expect(scaleOf(330, 360).logarithmic).toBe(false);
    expect(scaleOf(-12, 3).place(-4.5)).toBeCloseTo(0.5, 12);
    expect(scaleOf(0, 10).logarithmic).toBe(false);
  });

  test('gives back the value of every place', () => {
    for (const scale of [crossover, scaleOf(-12, 3)])
      for (const place of [0, 0.3, 1]) expect(scale.place(scale.value(place))).toBeCloseTo(place, 12);
  });

  test('takes its ends in either order', () => expect(scaleOf(4000, 1000).from).toBe(1000));
});

describe('a step', () => {
  test('is about a two-hundredth of the rule, as 1, 2 or 5', () => {
    expect(stepAt(crossover, 2150)).toBe(10);
    expect(stepAt(scaleOf(-12, 3), -4)).toBe(0.05);
    expect(stepAt(scaleOf(20, 20000), 50)).toBe(1);
    expect(stepAt(scaleOf(20, 20000), 5000)).toBe(100);
  });

  test.each([
    [14.9, 10, 20],
    [20, 20, 20],
    [0.0749, 0.05, 0.1],
    [3, 2, 5],
  ])('rounds %d down to %d and up to %d', (size, down, up) => {
    expect(roundDown(size)).toBeCloseTo(down, 12);
    expect(roundUp(size)).toBeCloseTo(up, 12);
  });

  test('goes to the next multiple from an odd value, and from multiple to multiple', () => {
    expect(stepFrom(crossover, 2153, 10, 1)).toBe(2160);
    expect(stepFrom(crossover, 2153, 10, -1)).toBe(2150);
    expect(stepFrom(crossover, 2150, 10, 1)).toBe(2160);
    expect(stepFrom(crossover, 2150, 10, -1)).toBe(2140);
    expect(stepFrom(scaleOf(-12, 3), -4.7, 0.05, 1)).toBe(-4.65);
  });

  test('stops at the ends', () => {
    expect(stepFrom(crossover, 4000, 10, 1)).toBe(4000);
    expect(snap(crossover, 12, 10)).toBe(1000);
  });

  test('rounds the ends of a window so that they still pass', () => {
    expect(roundInward(10, 1943.2, 'low')).toBe(1950);
    expect(roundInward(10, 2016.9, 'high')).toBe(2010);
    expect(roundInward(10, 1950, 'low')).toBe(1950);
  });

  test('leaves no binary dust in what is typed', () => {
    expect(`${snap(scaleOf(0, 1), 0.30000000000000004, 0.1)}`).toBe('0.3');
    expect([1, 0.5, 0.05, 20].map(decimalsOf)).toEqual([0, 1, 2, 0]);
  });
});

describe('the lines of a rule', () => {
  test('are numbered at the ends and on the roundest values between', () => {
    const numbers = marksOf(crossover, 500)
      .filter(({ labelled }) => labelled)
      .map(({ value }) => value);
    expect(numbers).toEqual([1000, 1500, 2000, 2500, 3000, 4000]);
  });

  for (const [low, high] of [
    [1000, 4000],
    [20, 20000],
    [-12, 3],
    [330, 360],
    [0.0001, 0.01],
  ] as const)
    test(`never stand too close between ${low} and ${high}`, () => {
      const scale = scaleOf(low, high);
      for (const pixels of [260, 520, 900]) {
        const marks = marksOf(scale, pixels);
        expect(marks.length).toBeGreaterThan(8);
        const places = marks.filter(({ rank }) => rank !== 'long').map(({ value }) => scale.place(value) * pixels);
        for (const [index, place] of places.slice(1).entries()) expect(place - places[index]!).toBeGreaterThan(4);
        expect(Math.max(...marks.map(({ value }) => value))).toBe(high);
        expect(Math.min(...marks.map(({ value }) => value))).toBe(low);
      }
    });
});
