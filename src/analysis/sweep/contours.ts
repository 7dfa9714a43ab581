import type { Line } from './types.ts';

/** A height at each point of a grid, row by row from the lowest value of `up`; NaN where there is none. */
export interface Field {
  readonly across: readonly number[];
  readonly up: readonly number[];
  readonly values: ArrayLike<number>;
}

type Point = readonly [number, number];

/** The lines on which a field has a height: marching squares with straight lines inside each cell. A saddle is parted by the
 *  mean of its corners; cells with a corner without a height are left out. */
export function contourLines(field: Field, level: number): Line[] {
  return joined(segmentsOf(field, level));
}

/** Round levels between the ends of a field, some eight of them. */
export function roundLevels(values: ArrayLike<number>): number[] {
  let [low, high] = [Infinity, -Infinity];
  for (let index = 0; index < values.length; index++) {
    const value = values[index] ?? Number.NaN;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(low < high) || !Number.isFinite(high - low)) return [];
  const rough = (high - low) / 8;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((each) => each * power >= rough) ?? 10);
  const first = Math.ceil(low / step);
  const count = Math.floor(high / step) - first + 1;
  // A product, and not a running sum, so that 0.3 is 0.3.
  return Array.from({ length: count }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}

function segmentsOf({ across, up, values }: Field, level: number): [Point, Point][] {
  const segments: [Point, Point][] = [];
  const width = across.length;
  // A height exactly on the level counts as above it, so that no line runs through a corner twice.
  const heightAt = (column: number, row: number): number => (values[row * width + column] ?? Number.NaN) - level;
  for (let row = 0; row + 1 < up.length; row++) {
    for (let column = 0; column + 1 < width; column++) {
      const [x0, x1, y0, y1] = [across[column] ?? 0, across[column + 1] ?? 0, up[row] ?? 0, up[row + 1] ?? 0];
      const a = heightAt(column, row);
      const b = heightAt(column + 1, row);
      const c = heightAt(column + 1, row + 1);
      const d = heightAt(column, row + 1);
      if (Number.isNaN(a + b + c + d)) continue;
      const between = (from: number, to: number): number => from / (from - to);
      const bottom = (): Point => [x0 + (x1 - x0) * between(a, b), y0];
      const right = (): Point => [x1, y0 + (y1 - y0) * between(b, c)];
      const top = (): Point => [x0 + (x1 - x0) * between(d, c), y1];
      const left = (): Point => [x0, y0 + (y1 - y0) * between(a, d)];
      const corners = Number(a >= 0) + 2 * Number(b >= 0) + 4 * Number(c >= 0) + 8 * Number(d >= 0);
      const isMiddleAbove = a + b + c + d >= 0;
      for (const [from, to] of linesOf(corners, isMiddleAbove, bottom, right, top, left)) segments.push([from(), to()]);
    }
  }
  return segments.filter(([from, to]) => from[0] !== to[0] || from[1] !== to[1]);
}

type Side = () => Point;

function linesOf(
  corners: number,
  isMiddleAbove: boolean,
  bottom: Side,
  right: Side,
  top: Side,
  left: Side,
): [Side, Side][] {
  switch (corners) {
    case 1:
    case 14:
      return [[left, bottom]];
    case 2:
    case 13:
      return [[bottom, right]];
    case 3:
    case 12:
      return [[left, right]];
    case 4:
    case 11:
      return [[right, top]];
    case 6:
    case 9:
      return [[bottom, top]];
    case 7:
    case 8:
      return [[left, top]];
    case 5:
      return isMiddleAbove
        ? [
            [left, top],
            [bottom, right],
          ]
        : [
            [left, bottom],
            [right, top],
          ];
    case 10:
      return isMiddleAbove
        ? [
            [left, bottom],
            [right, top],
          ]
        : [
            [left, top],
            [bottom, right],
          ];
    default:
      return [];
  }
}

/** Pieces that share an end, made into lines. */
function joined(segments: readonly [Point, Point][]): Line[] {
  const keyOf = ([x, y]: Point): string => `${x},${y}`;
  const at = new Map<string, number[]>();
  for (const [index, segment] of segments.entries())
    for (const end of segment) at.set(keyOf(end), [...(at.get(keyOf(end)) ?? []), index]);
  const used = new Set<number>();
  const next = (end: Point): Point | undefined => {
    const index = at.get(keyOf(end))?.find((each) => !used.has(each));
    const segment = index === undefined ? undefined : segments[index];
    if (index === undefined || !segment) return undefined;
    used.add(index);
    return keyOf(segment[0]) === keyOf(end) ? segment[1] : segment[0];
  };
  const lines: Line[] = [];
  for (const [index, [from, to]] of segments.entries()) {
    if (used.has(index)) continue;
    used.add(index);
    const line: Point[] = [from, to];
    for (let end = next(to); end; end = next(end)) line.push(end);
    const before: Point[] = [];
    for (let end = next(from); end; end = next(end)) before.push(end);
    lines.push([...before.reverse(), ...line]);
  }
  return lines;
}
