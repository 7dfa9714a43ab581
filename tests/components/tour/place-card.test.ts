import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeCard } from '../../../src/components/tour/place-card.ts';

const window = { width: 1000, height: 800 };
const card = { width: 300, height: 200 };

describe('where the card of the tour stands', () => {
  test.each([
    ['below', { left: 100, top: 50, width: 200, height: 100 }, { left: 100, top: 164 }],
    ['above', { left: 100, top: 600, width: 200, height: 150 }, { left: 100, top: 386 }],
    ['at the right', { left: 0, top: 48, width: 208, height: 740 }, { left: 222, top: 48 }],
    ['at the left', { left: 650, top: 48, width: 350, height: 740 }, { left: 336, top: 48 }],
    ['in a corner', { left: 0, top: 0, width: 1000, height: 800 }, { left: 686, top: 586 }],
    ['in the middle', undefined, { left: 350, top: 300 }],
  ])('%s', (_, target, place) => {
    expect(placeCard(target, card, window)).toEqual(place);
  });

  test('is always inside the window, and off what it speaks of where there is room', () => {
    const size = fc.integer({ min: 10, max: 1000 });
    fc.assert(
      fc.property(size, size, size, size, (left, top, width, height) => {
        const target = { left, top, width: Math.min(width, 1000 - left), height: Math.min(height, 800 - top) };
        fc.pre(target.width > 0 && target.height > 0);
        const place = placeCard(target, card, window);
        expect(place.left).toBeGreaterThanOrEqual(8);
        expect(place.top).toBeGreaterThanOrEqual(8);
        expect(place.left + card.width).toBeLessThanOrEqual(992);
        expect(place.top + card.height).toBeLessThanOrEqual(792);
        const isBelow = place.top >= target.top + target.height;
        if (target.top + target.height <= 800 - 200 - 22) expect(isBelow).toBe(true);
      }),
    );
  });
});
