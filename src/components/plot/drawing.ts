import type { Line } from '../../document/types.ts';
import type { PlotData } from './data.ts';
import { comparison, extremesOf, isSame } from './finding.ts';
import { frameOf, type Frame } from './frame.ts';
import { type Box, costOf, type Obstacles, placeLabel } from './labels.ts';
import { heightsOf, pathOf, valueAt } from './path.ts';
import { evenTicks, frequencyTicks, type Tick } from './ticks.ts';
import { type AxisUnit, axisUnit, spellFrequency, spellRoughly } from './unit.ts';
import { steadyRange, type VerticalRange } from './vertical.ts';

export interface DrawnSeries {
  readonly label: string;
  readonly line: Line;
  readonly path: string;
  readonly ghost: string;
  readonly place: Box | undefined;
}

export interface DrawnLimit {
  readonly text: string;
  /** Height of the line; undefined when it lies off the axis. */
  readonly y: number | undefined;
  readonly hatched: Box | undefined;
  readonly place: Box;
}

export interface DrawnMark {
  readonly x: number;
  readonly text: string;
  readonly flag: Box;
  /** Heights at which the needle meets the curves. */
  readonly dots: readonly { readonly y: number; readonly line: Line }[];
}

export interface DrawnRing {
  readonly x: number;
  readonly y: number;
  readonly value: string;
  readonly at: string;
  readonly broken: boolean;
  readonly place: Box;
}

/** Everything that a plot of curves draws, in pixels. */
export interface Drawing {
  readonly frame: Frame;
  readonly unit: AxisUnit;
  readonly frequencies: readonly Tick[];
  readonly values: readonly Tick[];
  readonly series: readonly DrawnSeries[];
  readonly limits: readonly DrawnLimit[];
  readonly marks: readonly DrawnMark[];
  readonly rings: readonly DrawnRing[];
}

/** What a drawing takes over from the one before, so that axes and labels stay put while a number is dragged. */
export interface Memory {
  range: VerticalRange | undefined;
  readonly labels: Map<string, Box>;
}

export interface Measures {
  readonly width: number;
  readonly height: number;
  /** Width of a text as a label, in pixels. */
  label(text: string): number;
  /** Width of a text as small print. */
  small(text: string): number;
}

const STRIDE = 4;
const LABEL_HEIGHT = 16;
const FLAG_HEIGHT = 17;
const RING_HEIGHT = 31;

/** Lays a plot out. Changes the memory it is given. */
export function draw(data: PlotData, measures: Measures, memory: Memory): Drawing {
  const unit = unitOf(data);
  memory.range = steadyRange(data, unit.of, memory.range);
  const frame = frameOf(measures, data.horizontal, memory.range);
  const marks = drawMarks(data, frame, unit, measures);
  const ghosts =
    comparison(data) === 'changed' ? data.series.filter((one) => one.ghost && !isSame(one.curve, one.ghost)) : [];
  const heights = data.series.map(({ curve }) => heightsOf(curve, frame, unit.of, STRIDE));
  const boxes: Box[] = marks.map((mark) => mark.flag);
  const around: Obstacles = {
    stride: STRIDE,
    curves: heights,
    ghosts: ghosts.flatMap(({ ghost }) => (ghost ? [heightsOf(ghost, frame, unit.of, STRIDE)] : [])),
    boxes,
    uprights: marks.map((mark) => mark.x),
    levels: data.limits.map((limit) => frame.y(unit.of(limit.value))),
    width: frame.width,
    height: frame.height,
  };
  const limits = data.limits.map((limit) => {
    const drawn = drawLimit(
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
  const rings = drawRings(data, frame, unit, around, measures, memory).map((ring) => {
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
    const ghostPath = ghost && ghosts.some((one) => one.ghost === ghost) ? pathOf(ghost, frame, unit.of) : '';
    return { label, line, path: pathOf(curve, frame, unit.of), ghost: ghostPath, place };
  });
  return {
    frame,
    unit,
    frequencies: frequencyTicks(...data.horizontal, frame.width),
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

function drawMarks(data: PlotData, frame: Frame, unit: AxisUnit, measures: Measures): DrawnMark[] {
  const flags: Box[] = [];
  return data.marks
    .filter(({ frequency }) => frequency >= data.horizontal[0] && frequency <= data.horizontal[1])
    .map(({ label, frequency }) => {
      const x = frame.x(frequency);
      const short = spellFrequency(frequency, data.system);
      const long = `${label} ${short}`;
      const fits = (words: string): boolean => x + measures.small(words) + 12 <= frame.width;
      // One needle needs no name when there is no room for it; several would be mistaken for each other.
      const text = fits(long) || data.marks.length > 1 ? long : short;
      const width = measures.small(text) + 12;
      const left = fits(text) ? x : Math.max(0, x - width);
      let flag: Box = { x: left, y: 0, width, height: FLAG_HEIGHT };
      while (flags.some((other) => other.y === flag.y && other.x < flag.x + width && flag.x < other.x + other.width))
        flag = { ...flag, y: flag.y + FLAG_HEIGHT + 2 };
      flags.push(flag);
      const dots = data.series
        .map(({ curve, line }) => {
          const holds = frequency >= curve.from && frequency <= curve.to;
          return { y: holds ? frame.y(unit.of(valueAt(curve, frequency))) : Number.NaN, line };
        })
        .filter(({ y }) => y >= 0 && y <= frame.height);
      return { x, text, flag, dots };
    });
}

function drawLimit(
  text: string,
  y: number,
  forbidden: 'above' | 'below',
  around: Obstacles,
  measures: Measures,
  memory: Memory,
): DrawnLimit {
  const width = measures.label(text);
  const left = 7;
  const right = around.width - width - 7;
  if (y < 0 || y > around.height) {
    const arrow = y < 0 ? '↑' : '↓';
    const place = {
      x: right - 14,
      y: y < 0 ? 4 : around.height - LABEL_HEIGHT - 4,
      width: width + 14,
      height: LABEL_HEIGHT,
    };
    const everywhere = y < 0 !== (forbidden === 'above');
    const hatched = everywhere ? { x: 0, y: 0, width: around.width, height: around.height } : undefined;
    return { text: `${text} ${arrow}`, y: undefined, hatched, place };
  }
  const hatched: Box =
    forbidden === 'above'
      ? { x: 0, y: 0, width: around.width, height: y }
      : { x: 0, y, width: around.width, height: around.height - y };
  const over = y - LABEL_HEIGHT - 1;
  const under = y + 2;
  // Words read best off the hatch, unless a curve keeps that side busy.
  const choices = (forbidden === 'above' ? [under, over] : [over, under]).flatMap((top, side) => [
    { box: { x: right, y: top, width, height: LABEL_HEIGHT }, extra: side * 4 },
    { box: { x: left, y: top, width, height: LABEL_HEIGHT }, extra: side * 4 + 0.5 },
  ]);
  // A limit is named inside its hatch even where that is hardly higher than the text.
  const others = { ...around, height: around.height + 3, levels: around.levels.filter((level) => level !== y) };
  const key = `limit ${text.replace(/[\d.,\u2009]+/g, '')}`;
  const before = memory.labels.get(key);
  const cost = ({ box, extra }: { box: Box; extra: number }): number => {
    const stays = before && before.x < around.width / 2 === box.x < around.width / 2 && before.y < y === box.y < y;
    return costOf(box, undefined, others) + extra - (stays ? 6 : 0);
  };
  const place = (
    choices.toSorted((a, b) => cost(a) - cost(b))[0] ?? { box: { x: left, y: under, width, height: LABEL_HEIGHT } }
  ).box;
  memory.labels.set(key, { ...place, y: place.y - y < 0 ? y - 1 : y + 1 });
  return { text, y, hatched, place };
}

function drawRings(
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
    const cost = costOf(box, undefined, around) + length - (before && index === 0 ? 12 : 0);
    if (cost < bestCost) [best, bestCost] = [box, cost];
  }
  return best;
}
