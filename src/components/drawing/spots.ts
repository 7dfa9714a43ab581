/** A rectangle in pixels of the drawing. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** The first of the boxes that lies over the fewest others. */
export function quietest(boxes: readonly Box[], taken: readonly Box[]): Box | undefined {
  const counted = boxes.map((box) => ({ box, over: taken.filter((other) => overlap(box, other)).length }));
  return counted.toSorted((a, b) => a.over - b.over)[0]?.box;
}

/** Little boxes along a line through points, for words to keep off. */
export function along(points: readonly { readonly x: number; readonly y: number }[]): Box[] {
  return points.slice(1).flatMap(({ x, y }, index) => {
    const from = points[index] ?? { x, y };
    const count = Math.max(1, Math.ceil(Math.hypot(x - from.x, y - from.y) / STEP));
    return Array.from({ length: count + 1 }, (_, step): Box => {
      const part = step / count;
      return { x: from.x + (x - from.x) * part - 1, y: from.y + (y - from.y) * part - 1, width: 2, height: 2 };
    });
  });
}

const STEP = 4;
