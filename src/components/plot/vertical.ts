import type { QuantityName } from '../../../functions/quantities.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { PlotData } from './data.ts';
import { roundStep } from './ticks.ts';

/** Ends of the value axis and the distance of its lines, in the axis unit. */
export interface VerticalRange {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

interface Extent {
  readonly lowest: number;
  readonly highest: number;
}

/** Levels fall without end: only this much below the top is shown, and must stay visible before the axis moves. */
const LEVEL_DEPTH = 35;
const LEVEL_DEPTH_KEPT = 26;

/** The range to draw now. The previous one stays while the curves fit in it and fill half of it, so that the
 *  axis does not jump while a number is dragged. */
export function steadyRange(data: PlotData, unit: (si: number) => number, previous?: VerticalRange): VerticalRange {
  if (data.vertical) return givenRange(unit(data.vertical[0]), unit(data.vertical[1]));
  const quantity = data.series[0]?.curve.quantity ?? 'ratio';
  const extent = extentOf(data, unit);
  if (!extent) return previous ?? { from: 0, to: 1, step: 0.25 };
  const wanted = suggest(extent, quantity, data.marks.length);
  return previous && stillFits(previous, extent, wanted, quantity) ? previous : wanted;
}

function givenRange(from: number, to: number): VerticalRange {
  return { from: Math.min(from, to), to: Math.max(from, to), step: roundStep(Math.abs(to - from) / 4 || 1) };
}

function stillFits(previous: VerticalRange, extent: Extent, wanted: VerticalRange, quantity: QuantityName): boolean {
  const lowest = quantity === 'level' ? Math.max(extent.lowest, extent.highest - LEVEL_DEPTH_KEPT) : extent.lowest;
  const inside = lowest >= previous.from && extent.highest <= previous.to;
  return inside && wanted.to - wanted.from >= 0.5 * (previous.to - previous.from);
}

function suggest({ lowest, highest }: Extent, quantity: QuantityName, flags: number): VerticalRange {
  if (quantity === 'level') {
    const span = Math.min(highest - lowest, LEVEL_DEPTH);
    const step = span > 20 ? 10 : span > 8 ? 5 : 2;
    const half = step / 2;
    // The flags of needles need room above the curves.
    const to = Math.ceil((highest + Math.max(step * 0.2, span * 0.13 * Math.min(flags, 2))) / half) * half;
    return { from: Math.floor((Math.max(lowest, highest - LEVEL_DEPTH) + 1e-9) / step) * step, to, step };
  }
  const base = lowest >= 0 ? 0 : lowest;
  const step = roundStep(((highest - base) * 1.04) / 4 || 0.25);
  return {
    from: Math.floor(base / step + 1e-9) * step,
    to: Math.ceil((highest * 1.04) / step - 1e-9) * step || step,
    step,
  };
}

/** What must be seen: the curves and ghosts inside the frequency axis, and the limits with room for their hatch. */
function extentOf(data: PlotData, unit: (si: number) => number): Extent | undefined {
  let lowest = Infinity;
  let highest = -Infinity;
  const take = (value: number): void => {
    if (!Number.isFinite(value)) return;
    if (value < lowest) lowest = value;
    if (value > highest) highest = value;
  };
  const takeCurve = (curve: Curve): void => {
    const low = Math.max(data.horizontal[0], curve.from);
    const high = Math.min(data.horizontal[1], curve.to);
    for (let index = 0; index < frequencies.length; index++) {
      const frequency = frequencies[index] ?? 0;
      if (frequency >= low && frequency <= high) take(unit(curve.y[index] ?? Number.NaN));
    }
  };
  for (const { curve, ghost } of data.series) {
    takeCurve(curve);
    if (ghost) takeCurve(ghost);
  }
  if (lowest > highest) return undefined;
  const isLevel = data.series[0]?.curve.quantity === 'level';
  for (const limit of data.limits) {
    const value = unit(limit.value);
    const room = isLevel ? 3 : Math.abs(value) * 0.2;
    // A limit far above everything would flatten the curves; it is then named at the edge instead.
    if (!isLevel && value > 4 * highest) continue;
    take(limit.forbidden === 'above' ? value + room : value - (isLevel ? room : 0));
  }
  return { lowest, highest };
}
