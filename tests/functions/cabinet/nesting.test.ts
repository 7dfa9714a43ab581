import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nest, type Piece, type Placed, type Sheet } from '../../../functions/cabinet/nesting.ts';

const sheet: Sheet = { length: 2.5, width: 1.25, kerf: 0.003 };
const piece = (length: number, width: number, turns = true): Piece => ({ name: 'part', length, width, turns });

/** Whether a saw that cuts from edge to edge can free every piece: some cut misses all pieces, and so on in both halves. */
function canBeSawn(pieces: readonly Placed[]): boolean {
  if (pieces.length <= 1) return true;
  for (const [start, size] of [
    ['x', 'length'],
    ['y', 'width'],
  ] as const)
    for (const { [start]: corner, [size]: extent } of pieces) {
      const at = corner + extent;
      const before = pieces.filter((each) => each[start] + each[size] <= at + 1e-9);
      const after = pieces.filter((each) => each[start] >= at - 1e-9);
      if (after.length === 0 || before.length + after.length < pieces.length) continue;
      return canBeSawn(before) && canBeSawn(after);
    }
  return false;
}

const pieces = fc.array(
  fc.record({
    length: fc.double({ min: 0.05, max: 1.2, noNaN: true }),
    width: fc.double({ min: 0.05, max: 1.2, noNaN: true }),
    turns: fc.boolean(),
  }),
  { minLength: 1, maxLength: 25 },
);

describe('panels on sheets', () => {
  test('lie inside, apart by the kerf, all of them, and every one can be sawn free', () => {
    fc.assert(
      fc.property(pieces, (wanted) => {
        const placed = nest(
          wanted.map((each) => ({ name: 'part', ...each })),
          sheet,
        );
        if (placed === undefined) throw new Error('every piece is smaller than a sheet');
        expect(placed).toHaveLength(wanted.length);
        for (const each of placed) {
          expect(each.x).toBeGreaterThanOrEqual(0);
          expect(each.x + each.length).toBeLessThanOrEqual(sheet.length + 1e-9);
          expect(each.y + each.width).toBeLessThanOrEqual(sheet.width + 1e-9);
          const turned = each.length !== each.piece.length;
          expect(turned ? each.piece.turns : true).toBe(true);
          for (const other of placed)
            if (other !== each && other.sheet === each.sheet) {
              const apart =
                each.x + each.length + sheet.kerf <= other.x + 1e-9 ||
                other.x + other.length + sheet.kerf <= each.x + 1e-9 ||
                each.y + each.width + sheet.kerf <= other.y + 1e-9 ||
                other.y + other.width + sheet.kerf <= each.y + 1e-9;
              expect(apart).toBe(true);
            }
        }
        const sheets = new Set(placed.map((each) => each.sheet));
        for (const number of sheets) expect(canBeSawn(placed.filter((each) => each.sheet === number))).toBe(true);
        expect(sheets.size).toBe(Math.max(...sheets));
      }),
      { numRuns: 60 },
    );
  });

  test('fill a sheet exactly where they can', () => {
    const quarter = piece((2.5 - 0.003) / 2, (1.25 - 0.003) / 2);
    const placed = nest([quarter, quarter, quarter, quarter], sheet);
    expect(new Set(placed?.map((each) => each.sheet)).size).toBe(1);
  });

  test('are refused when one is larger than a sheet, or must not be turned', () => {
    expect(nest([piece(2.6, 0.1)], sheet)).toBeUndefined();
    expect(nest([piece(1, 2, false)], sheet)).toBeUndefined();
    expect(nest([piece(1, 2, true)], sheet)).toHaveLength(1);
  });
});
