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

  test('are as high as their words need, and those below them lie lower', () => {
    const fitted = new Geometry(table(2000, 1, { A1: '#Section' }), false, new Map([[2, 56]]));
    expect([0, 1, 2, 3, 4].map((row) => fitted.top(row))).toEqual([0, 34, 62, 118, 146]);
    expect(fitted.rowAt(117)).toBe(2);
    expect(fitted.height).toBe(34 + 56 + 1998 * 28);
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

describe('what stands in a column', () => {
  const wide = new Geometry({ ...table(1, 3), columns: [{ width: 240 }, { width: 400 }, { width: 400 }] }, false);

  test.each([
    [1100, 1, 400, 'has all of it where it is seen whole'],
    [540, 1, 300, 'ends at the border of the view'],
    [380, 1, 380, 'has the width of the view where little of it is seen'],
    [300, 1, 300, 'has that width where nothing of it is seen'],
    [900, 2, 260, 'ends at the border in every column'],
  ])('in a view of %i pixels, column %i: %i, %s', (view, column, width) =>
    expect(wide.seenWidth(column, view)).toBe(width),
  );
});
