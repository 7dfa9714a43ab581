import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { neighbour } from '../../../src/components/gallery/neighbour.ts';

/** Cards 300 wide in three columns; the first group has two rows, the second begins a new one. */
const card = (row: number, column: number) => ({ left: column * 310, top: row * 220, width: 300 });
const places = [card(0, 0), card(0, 1), card(0, 2), card(1, 0), card(2, 0), card(2, 1)];

describe('the card that an arrow leads to', () => {
  test.each([
    [0, 'ArrowRight', 1],
    [2, 'ArrowRight', 3],
    [5, 'ArrowRight', 5],
    [3, 'ArrowLeft', 2],
    [0, 'ArrowLeft', 0],
    [0, 'ArrowDown', 3],
    [2, 'ArrowDown', 3],
    [3, 'ArrowDown', 4],
    [5, 'ArrowUp', 3],
    [3, 'ArrowUp', 0],
    [4, 'ArrowDown', 4],
    [1, 'ArrowUp', 1],
    [2, 'End', 5],
    [4, 'Home', 0],
    [2, 'x', 2],
  ])('from %d, %s, is %d', (at, key, expected) => {
    expect(neighbour(places, at, key)).toBe(expected);
  });

  test('is always one of them, and none is out of reach', () => {
    const layout = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(layout, (rows) => {
        const cards = rows.flatMap((count, row) => Array.from({ length: count }, (_, column) => card(row, column)));
        const reached = new Set([0]);
        for (const at of reached)
          for (const key of ['ArrowRight', 'ArrowDown', 'ArrowUp', 'ArrowLeft']) reached.add(neighbour(cards, at, key));
        expect([...reached].toSorted((a, b) => a - b)).toEqual([...cards.keys()]);
      }),
    );
  });
});
