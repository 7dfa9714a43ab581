import type { Curve } from '../../../functions/values/curve.ts';
import type { Line } from '../../document/types.ts';
import type { PlotData } from './data.ts';
import { comparison, extremesOf, isSame } from './finding.ts';
import { frameOf, type Frame } from './frame.ts';
import { type Box, type Obstacles, placeLabel } from './labels.ts';
import { Kept } from './kept.ts';
import { LABEL_HEIGHT, type Measures, type Memory } from './layout.ts';
import { type DrawnLimit, layLimit } from './limits.ts';
import { type DrawnMark, layMarks } from './marks.ts';
import { heightsOf, pathOf } from './path.ts';
import { type DrawnRing, layRings } from './rings.ts';
import { evenTicks, type Tick } from './ticks.ts';
import { type AxisUnit, axisUnit } from './unit.ts';
import { steadyRange } from './vertical.ts';

export interface DrawnSeries {
  readonly label: string;
  readonly line: Line;
  readonly path: string;
  readonly ghost: string;
  readonly place: Box | undefined;
}

/** Everything that a plot of curves draws, in pixels. */
export interface Drawing {
  readonly frame: Frame;
  readonly unit: AxisUnit;
  readonly values: readonly Tick[];
  readonly series: readonly DrawnSeries[];
  readonly limits: readonly DrawnLimit[];
  readonly marks: readonly DrawnMark[];
  readonly rings: readonly DrawnRing[];
}

const STRIDE = 4;

const paths = new Kept<Curve, string>();
const courses = new Kept<Curve, Float64Array>();

/** Lays a plot out. Changes the memory it is given. */
export function draw(data: PlotData, measures: Measures, memory: Memory): Drawing {
  const unit = unitOf(data);
  memory.range = steadyRange(data, unit.of, memory.range);
  const frame = frameOf(measures, data.horizontal, memory.range);
  const marks = layMarks(data, frame, unit, measures);
  const ghosts =
    comparison(data) === 'changed' ? data.series.filter((one) => one.ghost && !isSame(one.curve, one.ghost)) : [];
  const { width, height, horizontal, vertical } = frame;
  const scale = [width, height, ...horizontal, vertical.from, vertical.to, unit.symbol].join(' ');
  const path = (curve: Curve): string => paths.get(curve, scale, () => pathOf(curve, frame, unit.of));
  const course = (curve: Curve): Float64Array =>
    courses.get(curve, scale, () => heightsOf(curve, frame, unit.of, STRIDE));
  const heights = data.series.map(({ curve }) => course(curve));
  const boxes: Box[] = marks.map((mark) => mark.flag);
  const around: Obstacles = {
    stride: STRIDE,
    curves: heights,
    ghosts: ghosts.flatMap(({ ghost }) => (ghost ? [course(ghost)] : [])),
    boxes,
    uprights: marks.map((mark) => mark.x),
    levels: data.limits.map((limit) => frame.y(unit.of(limit.value))),
    width,
    height,
  };
  const limits = data.limits.map((limit) => {
    const drawn = layLimit(
      `${limit.label} ${unit.exactly(limit.value)}`,
      frame.y(unit.of(limit.value)),
      limit.forbidden,
      around,
      measures,
      memory,
    );
    boxes.push(drawn.place);
    return drawn;
  });
  const rings = layRings(data, frame, unit, around, measures, memory).map((ring) => {
    boxes.push(ring.place, { x: ring.x - 7, y: ring.y - 7, width: 14, height: 14 });
    return ring;
  });
  const series = data.series.map(({ label, line, curve, ghost }, index): DrawnSeries => {
    const size = { width: measures.label(label), height: LABEL_HEIGHT };
    const key = `series ${label}`;
    const place = placeLabel(size, heights[index] ?? new Float64Array(), around, memory.labels.get(key));
    if (place) {
      boxes.push(place);
      memory.labels.set(key, place);
    }
    const ghostPath = ghost && ghosts.some((one) => one.ghost === ghost) ? path(ghost) : '';
    return { label, line, path: path(curve), ghost: ghostPath, place };
  });
  return {
    frame,
    unit,
    values: evenTicks(memory.range.from, memory.range.to, memory.range.step),
    series,
    limits,
    marks,
    rings,
  };
}

/** The unit of the value axis, chosen for the largest value of the first curve. */
export function unitOf(data: PlotData): AxisUnit {
  const quantity = data.series[0]?.curve.quantity ?? 'ratio';
  const extremes = data.series[0] && extremesOf(data.series[0].curve, data.horizontal);
  const largest =
    data.vertical?.[1] ?? Math.max(Math.abs(extremes?.maximum.value ?? 1), Math.abs(extremes?.minimum.value ?? 1));
  return axisUnit(quantity, largest, data.system);
}
