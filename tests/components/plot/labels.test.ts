import { describe, expect, test } from 'vitest';
import { type Box, costOf, type Obstacles, placeLabel } from '../../../src/components/plot/labels.ts';

const STRIDE = 4;
const flat = (y: number): Float64Array => new Float64Array(80).fill(y);
const scene = (curves: readonly Float64Array[], more: Partial<Obstacles> = {}): Obstacles => ({
  stride: STRIDE,
  curves,
  ghosts: [],
  boxes: [],
  uprights: [],
  levels: [],
  width: 316,
  height: 150,
  ...more,
});
const size = { width: 50, height: 16 };
const apart = (a: Box, b: Box): boolean =>
  a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;

describe('the name of a curve', () => {
  test('stands clear of every curve and inside the drawing', () => {
    const own = flat(60);
    const box = placeLabel(size, own, scene([own, flat(30)]))!;
    expect(costOf(box, own, scene([own, flat(30)]))).toBe(0);
    expect(box.y + box.height < 60 ? box.y > 30 : box.y > 60).toBe(true);
  });

  test('avoids other names, needles and limit lines', () => {
    const own = flat(60);
    const taken: Box = { x: 0, y: 30, width: 316, height: 28 };
    const box = placeLabel(size, own, scene([own], { boxes: [taken], uprights: [140], levels: [120] }))!;
    expect(apart(box, taken)).toBe(true);
    expect(box.x > 140 || box.x + box.width < 140).toBe(true);
  });

  test('stands beside a steep curve', () => {
    const steep = Float64Array.from({ length: 80 }, (_, column) => (column < 40 ? -30 : (column - 40) * 30));
    const box = placeLabel(size, steep, scene([steep]))!;
    expect(box.x > 155 || box.x + box.width < 172).toBe(true);
    expect(costOf(box, steep, scene([steep]))).toBe(0);
  });

  test('stays put while its curve moves a little', () => {
    const first = placeLabel(size, flat(60), scene([flat(60)]))!;
    const own = flat(61.5);
    expect(placeLabel(size, own, scene([own]), first)).toEqual(first);
  });

  test('moves on when its curve has moved away', () => {
    const first = placeLabel(size, flat(60), scene([flat(60)]))!;
    const own = flat(130);
    const next = placeLabel(size, own, scene([own]), first)!;
    expect(Math.abs(next.y + next.height / 2 - 130)).toBeLessThan(20);
  });

  test('is left out when the curve is nowhere inside', () => {
    const own = flat(-200);
    expect(placeLabel(size, own, scene([own]))).toBeUndefined();
  });

  test('does not fall over each other for six curves', () => {
    const curves = [20, 42, 64, 86, 108, 130].map(flat);
    const boxes: Box[] = [];
    for (const own of curves) boxes.push(placeLabel(size, own, scene(curves, { boxes }))!);
    for (const [index, a] of boxes.entries()) for (const b of boxes.slice(index + 1)) expect(apart(a, b)).toBe(true);
  });
});
