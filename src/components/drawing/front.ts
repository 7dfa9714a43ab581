import type { PointsData } from './data.ts';

interface Pair {
  readonly x: number;
  readonly y: number;
}

/** The points that no other beats: another is as good on both axes and better on one. In the order of the bottom axis. */
export function frontOf<T extends Pair>(points: readonly T[], best: NonNullable<PointsData['best']>): T[] {
  const [across, up] = best.map((end) => (end === 'high' ? 1 : -1));
  const lead = (of: 'x' | 'y', a: T, b: T): number => ((of === 'x' ? across : up) ?? 1) * (a[of] - b[of]);
  const isBeaten = (point: T): boolean =>
    points.some(
      (other) =>
        lead('x', other, point) >= 0 &&
        lead('y', other, point) >= 0 &&
        lead('x', other, point) + lead('y', other, point) > 0,
    );
  return points.filter((point) => !isBeaten(point)).toSorted((a, b) => a.x - b.x || a.y - b.y);
}
