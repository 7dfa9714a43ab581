import { expect, test } from 'vitest';
import { isWithin, pointed } from '../../../src/components/grid/pointed.ts';
import { table } from './table.ts';

const sheet = table(100, 6);
const here = { anchor: { row: 3, column: 1 }, focus: { row: 5, column: 2 } };
const at = { row: 9, column: 4 };

test('a cell is selected alone, and with Shift from the corner that stays', () => {
  expect(pointed('cell', at, sheet, here, false)).toEqual({ anchor: at, focus: at });
  expect(pointed('cell', at, sheet, here, true)).toEqual({ anchor: here.anchor, focus: at });
});

test('a head selects its whole column or row, with the first cell as the active one', () => {
  expect(pointed('column', at, sheet, here, false)).toEqual({
    anchor: { row: 99, column: 4 },
    focus: { row: 0, column: 4 },
  });
  expect(pointed('row', at, sheet, here, false)).toEqual({
    anchor: { row: 9, column: 5 },
    focus: { row: 9, column: 0 },
  });
});

test('with Shift a head selects all columns or rows from the corner that stays', () => {
  expect(pointed('column', at, sheet, here, true)).toEqual({
    anchor: { row: 99, column: 1 },
    focus: { row: 0, column: 4 },
  });
  expect(pointed('row', at, sheet, here, true)).toEqual({
    anchor: { row: 3, column: 5 },
    focus: { row: 9, column: 0 },
  });
});

test('the corner selects everything', () => {
  const { anchor, focus } = pointed('all', at, sheet, here, false);
  expect([anchor, focus]).toEqual([
    { row: 99, column: 5 },
    { row: 0, column: 0 },
  ]);
});

test('what is within a selection does not depend on which corner is active', () => {
  const turned = { anchor: here.focus, focus: here.anchor };
  for (const [row, column, isInside] of [
    [3, 1, true],
    [5, 2, true],
    [4, 2, true],
    [2, 1, false],
    [6, 2, false],
    [4, 0, false],
    [4, 3, false],
  ] as const) {
    expect(isWithin({ row, column }, here)).toBe(isInside);
    expect(isWithin({ row, column }, turned)).toBe(isInside);
  }
});
