import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BarsData, PointsData, Shape, ShapesData } from '../../../src/components/drawing/data.ts';
import { frontOf } from '../../../src/components/drawing/front.ts';
import { placeAt, type Room } from '../../../src/components/drawing/laid.ts';
import { lay } from '../../../src/components/drawing/lay.ts';
import { rangeOf } from '../../../src/components/drawing/plane.ts';
import { drawingComparison, drawingFinding, readingsOf, spoken } from '../../../src/components/drawing/readings.ts';
import { isOnGround } from '../../../src/components/drawing/shapes.ts';
import { along, quietest } from '../../../src/components/drawing/spots.ts';
import { shortened } from '../../../src/components/drawing/words.ts';
import { asChosen, pairs, price, priceCap } from './samples.ts';

const room: Room = { width: 400, isSmall: false, measure: (text) => text.length * 7 };
const millimetres = { quantity: 'length', symbol: 'mm' } as const;

const bars: BarsData = {
  form: 'bars',
  title: 'Cost',
  axis: price,
  bars: [
    asChosen,
    {
      name: 'Other',
      parts: [
        { label: 'Drivers', line: 'woofer', value: 144 },
        { label: 'Wood', line: 'system', value: 70 },
      ],
    },
  ],
  limits: [priceCap],
  system: 'metric',
};

const points: PointsData = {
  form: 'points',
  title: 'Trade-offs',
  across: price,
  up: { quantity: 'octaves', symbol: 'oct' },
  groups: [pairs],
  limits: [],
  marks: [],
  best: ['low', 'high'],
  system: 'metric',
};

const flange: Shape = {
  name: 'Woofer',
  outline: 'circle',
  line: 'woofer',
  left: 0.11,
  below: 0.105,
  width: 0.166,
  height: 0.166,
};
const panel: ShapesData = {
  form: 'shapes',
  title: 'Front',
  axis: millimetres,
  width: 0.22,
  height: 0.36,
  grounds: [[flange, { ...flange, name: 'Tweeter', below: 0.34, width: 0.104, height: 0.104 }]],
  system: 'metric',
};

describe('bars', () => {
  test('say each part and what they come to', () => {
    expect(readingsOf(bars).map(spoken)).toEqual([
      'As chosen: Drivers 192\u00a0¤, Wood 70\u00a0¤, together 262\u00a0¤',
      'Other: Drivers 144\u00a0¤, Wood 70\u00a0¤, together 214\u00a0¤',
    ]);
  });

  test('tell their limit', () => expect(drawingFinding(bars)).toContain('price cap: not above 250\u00a0¤.'));

  test('have a place for each reading, one below the other', () => {
    const { places, height } = lay(bars, room);
    expect(places).toHaveLength(2);
    expect(places[1]!.y - places[0]!.y).toBe(26);
    expect(placeAt(places, 200, places[1]!.y)).toBe(1);
    expect(height).toBeGreaterThan(places[1]!.y);
  });
});

describe('points', () => {
  test('of the front are those that no other beats in both', () => {
    const all = points.groups[0]!.points;
    expect(frontOf(all, ['low', 'high']).map(({ name }) => name)).toEqual(['cheap', 'good']);
    expect(frontOf(all, ['high', 'high']).map(({ name }) => name)).toEqual(['good', 'beaten']);
    expect(spoken(readingsOf(points)[1]!)).toContain('no other beats it in both');
  });

  test('off the front are beaten by one of the front, whatever they are', () => {
    const pair = fc.record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) });
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1 }), (pairs) => {
        const front = frontOf(pairs, ['low', 'high']);
        expect(front.length).toBeGreaterThan(0);
        for (const each of pairs)
          expect(front.includes(each) || front.some(({ x, y }) => x <= each.x && y >= each.y)).toBe(true);
      }),
    );
  });

  test('are placed by their values', () => {
    const [cheap, good] = lay(points, room).places;
    expect(good!.x).toBeGreaterThan(cheap!.x);
    expect(good!.y).toBeLessThan(cheap!.y);
  });
});

describe('shapes', () => {
  test('are drawn to scale, the same both ways', () => {
    const [woofer, tweeter] = lay(panel, room).places;
    expect(woofer!.halfWidth).toBeCloseTo(woofer!.halfHeight, 9);
    expect(woofer!.halfWidth / tweeter!.halfWidth).toBeCloseTo(166 / 104, 9);
    const perMetre = (2 * woofer!.halfWidth) / 0.166;
    expect(woofer!.y - tweeter!.y).toBeCloseTo((0.34 - 0.105) * perMetre, 6);
  });

  test('say so when they reach over the edge', () => {
    expect(isOnGround(flange, panel)).toBe(true);
    expect(readingsOf(panel).map(spoken)).toEqual([
      'Woofer: diameter 166\u00a0mm, middle from left 110\u00a0mm, middle from below 105\u00a0mm',
      expect.stringContaining('Tweeter: diameter 104\u00a0mm') as unknown,
    ]);
    expect(spoken(readingsOf(panel)[1]!)).toContain('reaches over the edge');
  });

  test('the smaller of two that lie over one another is read', () => {
    const places = [
      { x: 50, y: 50, halfWidth: 40, halfHeight: 40 },
      { x: 50, y: 50, halfWidth: 10, halfHeight: 10 },
    ];
    expect(placeAt(places, 52, 50)).toBe(1);
    expect(placeAt(places, 80, 50)).toBe(0);
  });
});

describe('with a baseline behind it', () => {
  test('bars, points and shapes tell what they were', () => {
    const cheaper = { ...asChosen, parts: asChosen.parts.map((part) => ({ ...part, value: part.value / 2 })) };
    const ghost = [cheaper, ...bars.bars.slice(1)];
    expect(readingsOf({ ...bars, ghost }).map(spoken)).toEqual([
      'As chosen: Drivers 192\u00a0¤, was 96\u00a0¤, Wood 70\u00a0¤, was 35\u00a0¤, together 262\u00a0¤, was 131\u00a0¤',
      'Other: Drivers 144\u00a0¤, Wood 70\u00a0¤, together 214\u00a0¤',
    ]);
    const moved = { ...pairs, points: pairs.points.map((point) => ({ ...point, y: point.y - 0.05 })) };
    expect(spoken(readingsOf({ ...points, ghost: [moved] })[0]!)).toContain('upwards 0.10\u00a0oct, was 0.05\u00a0oct');
    const before: ShapesData = { ...panel, ghost: [[{ ...flange, left: 0.1 }, panel.grounds[0]![1]!]] };
    expect(spoken(readingsOf(before)[0]!)).toContain('middle from left 110\u00a0mm, was 100\u00a0mm');
    expect(spoken(readingsOf(before)[1]!)).not.toContain('was');
  });

  test('they say whether anything differs', () => {
    expect(drawingComparison(bars)).toBe('none');
    expect(drawingComparison({ ...bars, ghost: bars.bars })).toBe('same');
    expect(drawingComparison({ ...panel, ghost: [[{ ...flange, left: 0.1 }]] })).toBe('changed');
  });

  test('an axis has room for both', () => {
    const far = { ...asChosen, parts: [{ label: 'Drivers', line: 'woofer' as const, value: 4000 }] };
    const width = (data: BarsData): string =>
      JSON.stringify(lay(data, room).picture.values).match(/"([\d ]+) ¤"/)?.[1] ?? '';
    expect(Number(width({ ...bars, ghost: [far] }).replaceAll(' ', ''))).toBeGreaterThanOrEqual(4000);
    expect(Number(width(bars).replaceAll(' ', ''))).toBeLessThan(4000);
  });
});

test('words stand where the least is in their way', () => {
  const box = (x: number, y: number) => ({ x, y, width: 10, height: 10 });
  const line = along([
    { x: 0, y: 0 },
    { x: 40, y: 40 },
  ]);
  expect(quietest([box(0, 0), box(20, 0), box(30, 0)], line)).toEqual(box(20, 0));
  expect(quietest([], line)).toBeUndefined();
});

test('an axis holds all its values and has even steps', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 1 }), (values) => {
      const { from, to, step } = rangeOf(values);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(from - step * 1e-6);
      expect(Math.max(...values)).toBeLessThanOrEqual(to + step * 1e-6);
      expect((to - from) / step).toBeCloseTo(Math.round((to - from) / step), 6);
    }),
    { examples: [[[5e-324, 0]], [[1e4, 1e4 - 2e-12]], [[0]]] },
  );
});

test('a text that does not fit says that there is more', () => {
  expect(shortened('Crossover and wiring', 84, room.measure)).toBe('Crossover a…');
  expect(shortened('Wood', 84, room.measure)).toBe('Wood');
});
