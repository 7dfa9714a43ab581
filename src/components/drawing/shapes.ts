import { nothing, svg, type SVGTemplateResult } from 'lit';
import { unitOf } from '../plot/unit.ts';
import type { Shape, ShapesData } from './data.ts';
import type { Laid, Place, Room } from './laid.ts';
import { evenPaper, planeOf, type Plane } from './plane.ts';
import { sameData } from '../plot/same-data.ts';
import { roundStep } from '../plot/ticks.ts';

const MARGIN = { left: 38, right: 26, top: 8, bottom: 24 };
const TALLEST = 300;
/** A hair of rounding is no overhang. */
const HAIR = 1e-6;

/** How far a shape reaches: left, right, lower and upper edge. */
export function reachOf({ outline, left, below, width, height }: Shape): [number, number, number, number] {
  return outline === 'circle'
    ? [left - width / 2, left + width / 2, below - height / 2, below + height / 2]
    : [left, left + width, below, below + height];
}

/** Whether a shape lies wholly on the ground. */
export function isOnGround(shape: Shape, { width, height }: Pick<ShapesData, 'width' | 'height'>): boolean {
  const [left, right, lower, upper] = reachOf(shape);
  return left >= -HAIR && right <= width + HAIR && lower >= -HAIR && upper <= height + HAIR;
}

/** Shapes to scale on their grounds, one ground below the other; circles with their centre lines, what overhangs in red. */
export function layShapes(data: ShapesData, room: Room): Laid {
  const { isSmall } = room;
  const unit = unitOf(data.axis.quantity, data.axis.symbol, data.system);
  const margin = isSmall ? { left: 4, right: 4, top: 4, bottom: 4 } : MARGIN;
  const count = Math.max(1, data.grounds.length);
  const tallest = isSmall ? (room.height ?? 0) / count - 8 : TALLEST;
  const widest = Math.max(20, room.width - margin.left - margin.right);
  const scale = Math.min(widest / data.width, tallest / data.height);
  const [width, height] = [data.width * scale, data.height * scale];
  const step = roundStep(unit.of(Math.max(data.width, data.height)) / 8);
  const places: Place[] = [];
  const drawn = data.grounds.map((shapes, index) => {
    const top = margin.top + index * (height + margin.top + margin.bottom);
    const left = isSmall ? (room.width - width) / 2 : margin.left;
    const plane = planeOf(
      { left, top, width, height },
      { from: 0, to: unit.of(data.width), step },
      { from: 0, to: unit.of(data.height), step },
    );
    for (const shape of shapes) {
      const [from, to, low, high] = reachOf(shape).map((edge) => edge * scale) as [number, number, number, number];
      places.push({
        x: left + (from + to) / 2,
        y: top + height - (low + high) / 2,
        halfWidth: (to - from) / 2,
        halfHeight: (high - low) / 2,
      });
    }
    return svg`<g transform="translate(${left} ${top})">
      ${evenPaper(plane, data.axis.symbol, room)}
      ${ghostsOf(shapes, data.ghost?.[index] ?? []).map((shape) => outlineOf(shape, 'ghost', plane, scale))}
      ${shapes.map((shape) => drawShape(shape, { data, plane, scale }))}
      ${room.isSmall ? nothing : namesOf(shapes, plane, scale, room)}
      ${count > 1 && !isSmall ? svg`<text x=${width} y=${height + 15} text-anchor="end">${index + 1} of ${count}</text>` : nothing}
    </g>`;
  });
  return { height: count * (height + margin.top + margin.bottom), picture: svg`${drawn}`, places };
}

interface Around {
  readonly data: ShapesData;
  readonly plane: Plane;
  readonly scale: number;
}

/** The shapes of the baseline that lie elsewhere now. */
const ghostsOf = (shapes: readonly Shape[], before: readonly Shape[]): readonly Shape[] =>
  before.filter((shape) => !shapes.some((now) => sameData({ ...now, name: '' }, { ...shape, name: '' })));

function outlineOf(shape: Shape, tone: string, plane: Plane, scale: number): SVGTemplateResult {
  const [left, right, lower, upper] = reachOf(shape).map((edge) => edge * scale) as [number, number, number, number];
  return shape.outline === 'circle'
    ? svg`<ellipse class=${tone} cx=${(left + right) / 2} cy=${plane.height - (lower + upper) / 2} rx=${(right - left) / 2} ry=${(upper - lower) / 2} />`
    : svg`<rect class=${tone} x=${left} y=${plane.height - upper} width=${right - left} height=${upper - lower} />`;
}

function drawShape(shape: Shape, { data, plane, scale }: Around): SVGTemplateResult {
  const [left, right, lower, upper] = reachOf(shape).map((edge) => edge * scale) as [number, number, number, number];
  const [x, y] = [(left + right) / 2, plane.height - (lower + upper) / 2];
  const centre = svg`<path class="centre" d="M${left - 5} ${y}H${right + 5}M${x} ${plane.height - upper - 5}V${plane.height - lower + 5}" />`;
  return svg`<g class=${shape.line}>
    ${outlineOf(shape, isOnGround(shape, data) ? 'shape' : 'shape over', plane, scale)}
    ${shape.outline === 'circle' ? centre : nothing}
  </g>`;
}

/** Names inside the shapes that have room for them, above the centre line of a circle; none over another. */
function namesOf(shapes: readonly Shape[], plane: Plane, scale: number, { measure }: Room): SVGTemplateResult[] {
  const taken: { readonly x: number; readonly y: number; readonly half: number }[] = [];
  return shapes.flatMap((shape) => {
    const [left, right, lower, upper] = reachOf(shape).map((edge) => edge * scale) as [number, number, number, number];
    const half = measure(shape.name) / 2;
    if (right - left < 2 * half + 6 || upper - lower < 14) return [];
    const x = (left + right) / 2;
    const y = plane.height - (lower + upper) / 2 + (shape.outline === 'circle' ? -6 : 4);
    if (taken.some((other) => Math.abs(other.y - y) < 13 && Math.abs(other.x - x) < other.half + half)) return [];
    taken.push({ x, y, half });
    return [svg`<text class="inside" x=${x} y=${y} text-anchor="middle">${shape.name}</text>`];
  });
}
