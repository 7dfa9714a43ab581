import { edgeBetween, lowestBetween, rootBetween, type Reading } from './scan.ts';

/** A value of an input with what the result misses its target by. */
export interface Point {
  readonly x: number;
  /** NaN where there is no result. */
  readonly miss: number;
}

/** Values so near their target count as reaching it, as a share of the size of both. */
export const NEAR = 1e-6;

/** Whether a reading that is on one side of zero at two neighbours may cross it between them: where it goes on as it came, from
 *  either side, it does. */
export function mayCross(left: Point, right: Point, before: Point | undefined, after: Point | undefined): boolean {
  if (!(left.miss * right.miss > 0)) return false;
  const width = right.x - left.x;
  const onward = (from: Point, past: Point | undefined): number =>
    past ? from.miss + ((from.miss - past.miss) / Math.abs(from.x - past.x)) * width : from.miss;
  return onward(left, before) * left.miss < 0 || onward(right, after) * right.miss < 0;
}

/** The places where a reading is zero, found from its values over a grid: where the sign changes, and where it turns round at
 *  zero without passing it. `size` is how large the result is, so that nearness means something. */
export async function solutionsIn(read: Reading, grid: readonly Point[], size: number): Promise<number[]> {
  const points = await withEdges(read, grid);
  const found: number[] = [];
  for (const [index, point] of points.entries()) {
    const next = points[index + 1];
    if (point.miss === 0) found.push(point.x);
    if (!next || Number.isNaN(point.miss) || Number.isNaN(next.miss)) continue;
    if (point.miss * next.miss < 0) found.push(await rootBetween(read, point.x, next.x, point.miss, next.miss));
    else if (isTurning(points, index)) found.push(...(await turningAt(read, points, index, size)));
  }
  return found.sort((a, b) => a - b).filter((x, index, all) => index === 0 || !isSame(x, all[index - 1] ?? NaN));
}

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-7 * Math.max(Math.abs(a), Math.abs(b));

/** The grid with the last value before each place where results cease. */
async function withEdges(read: Reading, grid: readonly Point[]): Promise<Point[]> {
  const points: Point[] = [];
  for (const [index, point] of grid.entries()) {
    points.push(point);
    const next = grid[index + 1];
    if (!next || Number.isNaN(point.miss) === Number.isNaN(next.miss)) continue;
    const isFirst = !Number.isNaN(point.miss);
    const isResult = async (x: number): Promise<boolean> => !Number.isNaN(await read(x));
    const x = await edgeBetween(isResult, isFirst ? point.x : next.x, isFirst ? next.x : point.x);
    if (x !== point.x && x !== next.x) points.push({ x, miss: await read(x) });
  }
  if (points.length === grid.length) return points;
  // Between an edge and what lies beyond it stands a gap, which the two sides show as NaN.
  return points;
}

/** Whether the miss is least at a point and of one sign around it. */
function isTurning(points: readonly Point[], index: number): boolean {
  const [before, here, after] = [points[index - 1], points[index], points[index + 1]];
  if (!before || !here || !after) return false;
  if (!(before.miss * here.miss > 0) || !(after.miss * here.miss > 0)) return false;
  return Math.abs(here.miss) <= Math.abs(before.miss) && Math.abs(here.miss) <= Math.abs(after.miss);
}

async function turningAt(read: Reading, points: readonly Point[], index: number, size: number): Promise<number[]> {
  const [before, here, after] = [points[index - 1], points[index], points[index + 1]];
  if (!before || !here || !after) return [];
  const sense = Math.sign(here.miss);
  const [x, value] = await lowestBetween(async (at) => sense * (await read(at)), before.x, after.x);
  if (value < 0) {
    const miss = sense * value;
    return [
      await rootBetween(read, before.x, x, before.miss, miss),
      await rootBetween(read, x, after.x, miss, after.miss),
    ];
  }
  return value <= NEAR * size ? [x] : [];
}
