import { formatAddress, parseAddress } from '../formula/address.ts';
import { contains, readRectangle, sizeOf, type Rectangle } from '../formula/area.ts';

export { contains, readRectangle, sizeOf, type Rectangle };

/** Reads `B4` or `B4:C18`, corners in any order. A text that is neither is a mistake of the program. */
export function rectangleOf(cells: string): Rectangle {
  const rectangle = readRectangle(cells);
  if (!rectangle) throw new Error(`"${cells}" is no cell and no range of cells.`);
  return rectangle;
}

export function formatRectangle({ top, left, bottom, right }: Rectangle): string {
  const first = formatAddress({ row: top, column: left });
  return top === bottom && left === right ? first : `${first}:${formatAddress({ row: bottom, column: right })}`;
}

export const moved = ({ top, left, bottom, right }: Rectangle, rows: number, columns: number): Rectangle => ({
  top: top + rows,
  left: left + columns,
  bottom: bottom + rows,
  right: right + columns,
});

/** All addresses of a rectangle, row by row. */
export function* addressesIn({ top, left, bottom, right }: Rectangle): Generator<string> {
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) yield formatAddress({ row, column });
  }
}

/** The addresses inside a rectangle that hold something; looks at the smaller of both sets. */
export function filledIn<T>(cells: ReadonlyMap<string, T>, rectangle: Rectangle): string[] {
  if (sizeOf(rectangle) <= cells.size) return [...addressesIn(rectangle)].filter((address) => cells.has(address));
  return [...cells.keys()].filter((address) => {
    const at = parseAddress(address);
    return at !== undefined && contains(rectangle, at.row, at.column);
  });
}
