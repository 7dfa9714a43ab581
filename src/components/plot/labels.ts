/** A rectangle in pixels of the drawing. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a label may not or should rather not stand. */
export interface Obstacles {
  /** Pixels between two entries of the heights. */
  readonly stride: number;
  /** Heights of all curves, own ones included. */
  readonly curves: readonly Float64Array[];
  readonly ghosts: readonly Float64Array[];
  /** Texts that already have their place. */
  readonly boxes: readonly Box[];
  /** x of needles, y of limit lines. */
  readonly uprights: readonly number[];
  readonly levels: readonly number[];
  readonly width: number;
  readonly height: number;
}

const GAP = 5;
const BORDER = 3;
/** A label stays where it is until it stands this much worse than it could. */
const PATIENCE = 14;

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** How badly a box stands: crossings with curves, other texts and lines, and how far it is from being
 *  nearest to its own curve. Infinite outside the drawing. Counts no further than `enough`. */
export function costOf(box: Box, own: Float64Array | undefined, around: Obstacles, enough = Infinity): number {
  const outside =
    box.x < BORDER ||
    box.y < BORDER ||
    box.x + box.width > around.width - BORDER ||
    box.y + box.height > around.height - BORDER;
  if (outside) return Infinity;
  let cost = 0;
  for (const other of around.boxes) if (overlap(box, other)) cost += 100;
  for (const x of around.uprights) if (x > box.x - 2 && x < box.x + box.width + 2) cost += 24;
  for (const y of around.levels) if (y > box.y && y < box.y + box.height) cost += 10;
  const first = Math.max(0, Math.floor(box.x / around.stride));
  const last = Math.ceil((box.x + box.width) / around.stride);
  for (const heights of around.curves) {
    if (cost >= enough) return cost;
    const crossed = passes(heights, first, last, box, 1);
    cost += 8 * crossed;
    if (heights !== own) cost += passes(heights, first, last, box, 9) - crossed;
  }
  for (const heights of around.ghosts) cost += 3 * passes(heights, first, last, box, 0);
  return cost;
}

/** How many columns there are in which a line passes through a box, or past it within a margin. */
function passes(heights: Float64Array, first: number, last: number, { y, height }: Box, margin: number): number {
  const top = y - margin;
  const bottom = y + height + margin;
  let count = 0;
  for (let column = first; column <= last; column++) {
    const here = heights[column] ?? Number.NaN;
    const next = heights[column + 1] ?? here;
    if (Math.min(here, next) < bottom && Math.max(here, next) > top) count++;
  }
  return count;
}

/** The best place for a label beside its curve; the previous place while that is nearly as good.
 *  Undefined when the curve is nowhere inside the drawing. */
export function placeLabel(
  size: { readonly width: number; readonly height: number },
  own: Float64Array,
  around: Obstacles,
  previous?: Box,
): Box | undefined {
  const kept = previous && { ...previous, ...size };
  const keptCost = kept
    ? costOf(kept, own, around) + Math.max(0, distance(kept, own, around.stride) - GAP - 3) * 1.5
    : Infinity;
  // No place costs less than nothing, so there is no need to look for a better one.
  if (kept && keptCost <= PATIENCE) return kept;
  let best: Box | undefined;
  let bestCost = Infinity;
  offerPlaces(size, own, around, (x, y, extra) => {
    if (extra >= bestCost) return;
    const box = { x, y, ...size };
    const cost = extra + costOf(box, own, around, bestCost - extra);
    if (cost < bestCost) [best, bestCost] = [box, cost];
  });
  return kept && best && keptCost <= bestCost + PATIENCE ? kept : best;
}

/** Offers boxes above and below every stretch of the curve, and on both sides of where it is steep, by their corner and each with
 *  what it costs by itself: a flat stretch in the middle of the drawing is the best to stand on. */
function offerPlaces(
  { width, height }: { readonly width: number; readonly height: number },
  own: Float64Array,
  around: Obstacles,
  offer: (x: number, y: number, extra: number) => void,
): void {
  const span = Math.ceil(width / around.stride);
  for (let column = 1; column + span < own.length; column += 2) {
    let top = Infinity;
    let bottom = -Infinity;
    for (let k = column; k <= column + span; k++) {
      const y = own[k] ?? Number.NaN;
      if (Number.isNaN(y)) [top, bottom] = [-Infinity, Infinity];
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
    if (top < 0 || bottom > around.height) continue;
    const x = column * around.stride;
    const slope = (bottom - top) * 0.7;
    const offCentre = 4 * Math.abs((x + width / 2) / around.width - 0.45);
    offer(x, top - GAP - height, slope + offCentre);
    offer(x, bottom + GAP, slope + offCentre + 1.5);
  }
  for (let column = 0; column + 1 < own.length; column++) {
    const here = own[column] ?? Number.NaN;
    const next = own[column + 1] ?? Number.NaN;
    if (!(Math.abs(next - here) > around.stride * 0.9)) continue;
    const y = Math.min(Math.max((here + next) / 2, 0), around.height) - height / 2;
    const x = (column + 0.5) * around.stride;
    for (const gap of [GAP + 3, 4 * GAP]) {
      offer(x + gap, y, 3 + gap / 3);
      offer(x - gap - width, y, 3 + gap / 3);
    }
  }
}

function distance(box: Box, own: Float64Array, stride: number): number {
  let nearest = Infinity;
  for (let column = 0; column < own.length; column++) {
    const x = column * stride;
    const aside = Math.max(box.x - x, x - box.x - box.width, 0);
    const y = own[column] ?? Number.NaN;
    const off = Math.max(box.y - y, y - box.y - box.height, 0);
    const total = Math.hypot(aside, off);
    if (total < nearest) nearest = total;
  }
  return nearest;
}
