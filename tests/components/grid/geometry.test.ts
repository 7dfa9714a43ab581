import { describe, expect, test } from 'vitest';
import { Geometry } from '../../../src/components/grid/geometry.ts';
import { table } from './table.ts';

const sections = [0, 7, 8, 20, 999];
const large = new Geometry(
  table(100_000, 50, Object.fromEntries(sections.map((row) => [`A${String(row + 1)}`, '#Section']))),
  false,
);

describe('rows', () => {
  test('are one height, headings of sections a little more', () => {
    expect(large.heightOf(1)).toBe(28);
    for (const row of sections) expect(large.heightOf(row)).toBe(34);
    expect(large.height).toBe(100_000 * 28 + sections.length * 6);
  });

  test('lie below one another without a gap, and each is found at its first and its last pixel', () => {
    let top = 0;
    for (let row = 0; row < large.rows; row++) {
      const height = sections.includes(row) ? 34 : 28;
      if (large.top(row) !== top || large.rowAt(top) !== row || large.rowAt(top + height - 1) !== row)
        expect.fail(`row ${String(row)}: top ${String(large.top(row))}, expected ${String(top)}`);
      top += height;
    }
    expect(top).toBe(large.height);
  });

  test('above and below the sheet the first and the last one is meant', () => {
    expect(large.rowAt(-500)).toBe(0);
    expect(large.rowAt(large.height + 500)).toBe(99_999);
  });

  test('are higher under a finger', () => {
    const touched = new Geometry(table(3, 1, { A1: '#Section' }), true);
    expect([touched.heightOf(0), touched.heightOf(1)]).toEqual([44, 40]);
  });

  test('a sheet without rows has no height', () => {
    const none = new Geometry(table(0, 0), false);
    expect([none.height, none.width, none.rowAt(10), none.columnAt(10)]).toEqual([0, 0, 0, 0]);
  });
});

test('every column is found at its first and its last pixel, and the nearest one beside them', () => {
  for (let column = 0; column < 50; column++) {
    expect(large.columnAt(large.left(column))).toBe(column);
    expect(large.columnAt(large.left(column + 1) - 1)).toBe(column);
    expect(large.widthOf(column)).toBe(100 + 10 * (column % 3));
  }
  expect(large.columnAt(-9)).toBe(0);
  expect(large.columnAt(large.width + 9)).toBe(49);
});
