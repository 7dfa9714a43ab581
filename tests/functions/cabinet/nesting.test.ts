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

/** Whether pieces of whole units can lie on so many sheets of 6 by 4 units, by trying every place, turned and not. */
function canLie(wanted: readonly Piece[], sheets: number): boolean {
  const [long, wide] = [6, 4];
  const taken = new Uint8Array(sheets * long * wide);
  const cells = ({ length, width }: Pick<Piece, 'length' | 'width'>, start: number): number[] | undefined => {
    const [x, y] = [start % long, Math.floor(start / long)];
    if (x + length > long || (y % wide) + width > wide) return undefined;
    const found = Array.from(
      { length: length * width },
      (_, at) => start + (at % length) + Math.floor(at / length) * long,
    );
    return found.some((cell) => taken[cell] === 1) ? undefined : found;
  };
  const lay = ([piece, ...others]: readonly Piece[]): boolean => {
    if (piece === undefined) return true;
    for (const [length, width] of [
      [piece.length, piece.width],
      [piece.width, piece.length],
    ] as const)
      for (let start = 0; start < taken.length; start += 1) {
        const under = cells({ length, width }, start);
        if (under === undefined) continue;
        for (const cell of under) taken[cell] = 1;
        if (lay(others)) return true;
        for (const cell of under) taken[cell] = 0;
      }
    return false;
  };
  return lay(wanted);
}

describe('panels on sheets', () => {
  test('take the fewest sheets that trying every place finds, or one more where the saw cannot follow', () => {
    const unit = fc.record({ length: fc.integer({ min: 1, max: 5 }), width: fc.integer({ min: 1, max: 4 }) });
    let more = 0;
    fc.assert(
      fc.property(fc.array(unit, { minLength: 1, maxLength: 6 }), (sizes) => {
        const wanted = sizes.map(({ length, width }) => piece(length, width));
        const placed = nest(wanted, { length: 6, width: 4, kerf: 0 })!;
        const sheets = Math.max(...placed.map((each) => each.sheet));
        const most = [...wanted].sort((one, other) => other.length * other.width - one.length * one.width);
        let fewest = 1;
        while (!canLie(most, fewest)) fewest += 1;
        expect(sheets).toBeGreaterThanOrEqual(fewest);
        expect(sheets).toBeLessThanOrEqual(fewest + 1);
        more += sheets - fewest;
      }),
      { numRuns: 100 },
    );
    expect(more).toBeLessThanOrEqual(10);
  });

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
