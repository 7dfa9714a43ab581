import { formatAddress } from './address.ts';
import { readRectangle } from './area.ts';
import type { Compilation, Part } from './part.ts';

/** A column longer than this holds one thing. */
const LOOKED_AT = 400;

/** A cell by the id of its sheet. */
export interface Cell {
  readonly sheet: string;
  readonly cell: string;
}

/** The cells that are given, row by row; none where it is anything else. */
export function cellRows(part: Part | undefined, { scope }: Compilation): readonly (readonly Cell[])[] {
  const [, sheet = scope.sheet, cells = ''] =
    /^(?:'([^']*)'!)?(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/.exec(part?.text ?? '') ?? [];
  const area = readRectangle(cells);
  if (!area) return [];
  const { top, left, right } = area;
  const columns = right - left + 1;
  const count = Math.min(area.bottom - top + 1, Math.ceil(LOOKED_AT / columns));
  return Array.from({ length: count }, (_, row) =>
    Array.from({ length: columns }, (__, column) => ({
      sheet,
      cell: formatAddress({ row: top + row, column: left + column }),
    })),
  );
}
