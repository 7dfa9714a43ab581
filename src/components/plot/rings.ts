import type { PlotData } from './data.ts';
import { extremesOf } from './finding.ts';
import type { Frame } from './frame.ts';
import { type Box, costOf, type Obstacles } from './labels.ts';
import type { Measures, Memory } from './layout.ts';
import { type AxisUnit, spellRoughly } from './unit.ts';

/** A ringed minimum or maximum. */
export interface DrawnRing {
  readonly x: number;
  readonly y: number;
  readonly value: string;
  readonly at: string;
  readonly broken: boolean;
  readonly place: Box;
}

const RING_HEIGHT = 31;

/** Rings around the extremes that the series ask for, each with its value and frequency at the end of a leader. */
export function layRings(
  data: PlotData,
  frame: Frame,
  unit: AxisUnit,
  around: Obstacles,
  measures: Measures,
  memory: Memory,
): DrawnRing[] {
  return data.series.flatMap(({ label, curve, ring }) => {
    const extreme = ring && extremesOf(curve, data.horizontal)?.[ring];
    if (!extreme) return [];
    const x = frame.x(extreme.frequency);
    const y = frame.y(unit.of(extreme.value));
    if (y < 0 || y > frame.height) return [];
    const value = unit.text(extreme.value);
    const at = `at ${spellRoughly(extreme.frequency, data.system)}`;
    const broken = data.limits.some((limit) =>
      limit.forbidden === 'above' ? extreme.value > limit.value : extreme.value < limit.value,
    );
    const size = { width: Math.max(measures.label(value) * 1.08, measures.small(at)), height: RING_HEIGHT };
    const key = `ring ${label}`;
    const place = placeRing(x, y, size, around, memory.labels.get(key));
    memory.labels.set(key, { ...place, x: place.x - x, y: place.y - y });
    return [{ x, y, value, at, broken, place }];
  });
}

/** A place off the ring for its two lines; `before` is the offset it had. */
function placeRing(
  x: number,
  y: number,
  size: { readonly width: number; readonly height: number },
  around: Obstacles,
  before: Box | undefined,
): Box {
  const offsets = [26, 42, 60, 84].flatMap((dy) =>
    [14, 30, 50].flatMap((dx) => [
      { dx, dy: -dy - size.height / 2 },
      { dx: -dx - size.width, dy: -dy - size.height / 2 },
      { dx, dy: dy - size.height / 2 },
      { dx: -dx - size.width, dy: dy - size.height / 2 },
    ]),
  );
  const all = before ? [{ dx: before.x, dy: before.y }, ...offsets] : offsets;
  let best: Box = { x: Math.min(Math.max(x + 14, 4), around.width - size.width - 4), y: Math.max(4, y - 50), ...size };
  let bestCost = Infinity;
  for (const [index, { dx, dy }] of all.entries()) {
    const box = { x: x + dx, y: y + dy, ...size };
    const length = Math.hypot(dx > 0 ? dx : dx + size.width, dy + size.height / 2) / 12;
    const cost = costOf(box, undefined, around, bestCost) + length - (before && index === 0 ? 12 : 0);
    if (cost < bestCost) [best, bestCost] = [box, cost];
  }
  return best;
}
