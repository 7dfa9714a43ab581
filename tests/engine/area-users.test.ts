import fc from 'fast-check';
import { expect, test } from 'vitest';
import { AreaUsers } from '../../src/engine/area-users.ts';
import { contains } from '../../src/formula/area.ts';

const place = fc.nat({ max: 6 });
const area = fc.record({
  key: fc.constantFrom('x', 'y', 'z'),
  sheet: fc.constantFrom('one', 'two'),
  rectangle: fc.tuple(place, place, place, place).map(([a, b, c, d]) => ({
    top: Math.min(a, b),
    bottom: Math.max(a, b),
    left: Math.min(c, d),
    right: Math.max(c, d),
  })),
});

test('a cell is used by those whose rectangles hold it, and by none that were forgotten', () => {
  fc.assert(
    fc.property(fc.array(area), fc.constantFrom('x', 'y', 'z'), place, place, (areas, forgotten, row, column) => {
      const users = new AreaUsers();
      for (const { key, sheet, rectangle } of areas) users.add(key, sheet, rectangle);
      users.forget(forgotten);
      const holding = areas.filter(
        ({ key, sheet, rectangle }) => sheet === 'one' && key !== forgotten && contains(rectangle, row, column),
      );
      expect(new Set(users.of('one', row, column))).toEqual(new Set(holding.map(({ key }) => key)));
    }),
  );
});
