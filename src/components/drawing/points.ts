import { nothing, svg, type SVGTemplateResult } from 'lit';
import { unitOf } from '../plot/unit.ts';
import type { Point, PointsData } from './data.ts';
import { frontOf } from './front.ts';
import type { Laid, Room } from './laid.ts';
import { evenPaper, givenRange, planeOf, rangeOf, type Plane } from './plane.ts';

const MARGIN = { left: 38, right: 14, top: 8, bottom: 20 };
const HEIGHT = 200;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Points with their names, as far as there is room, and the front of those that no other beats; or lines through them. */
export function layPoints(data: PointsData, room: Room): Laid {
  const { isSmall } = room;
  const [across, up] = [data.across, data.up].map(({ quantity, symbol }) => unitOf(quantity, symbol, data.system));
  const [ofX, ofY] = [across?.of ?? Number, up?.of ?? Number];
  const all = data.groups.flatMap(({ points }) => points);
  const [xs, ys] = [all.map((point) => ofX(point.x)), all.map((point) => ofY(point.y))];
  const height = room.height ?? HEIGHT;
  const margin = isSmall ? { left: 4, right: 4, top: 4, bottom: 4 } : MARGIN;
  const plane = planeOf(
    {
      left: margin.left,
      top: margin.top,
      width: room.width - margin.left - margin.right,
      height: height - margin.top - margin.bottom,
    },
    data.horizontal
      ? givenRange(ofX(data.horizontal[0]), ofX(data.horizontal[1]))
      : rangeOf([...xs, ...data.marks.map(({ value }) => ofX(value))], { lines: 5 }),
    data.vertical
      ? givenRange(ofY(data.vertical[0]), ofY(data.vertical[1]))
      : rangeOf([...ys, ...data.limits.map(({ value }) => ofY(value))]),
  );
  const at = ({ x, y }: Point): { x: number; y: number } => ({ x: plane.x(ofX(x)), y: plane.y(ofY(y)) });
  const front = data.best ? frontOf(all, data.best) : [];
  const picture = svg`
    <g transform="translate(${plane.left} ${plane.top})">
      ${evenPaper(plane, data.across.symbol, room)}
      ${data.limits.map((limit) => limitLine(limit, up?.text(limit.value) ?? '', plane.y(ofY(limit.value)), { plane, room }))}
      ${front.length > 1 ? svg`<path class="front" d=${pathOf(front.map(at))} />` : nothing}
      ${data.groups.map(({ line, points }) => {
        const places = points.map(at);
        return svg`<g class=${line}>
          ${data.form === 'lines' ? svg`<path class="curve ${line}" d=${pathOf(places)} />` : nothing}
          ${places.map(({ x, y }, index) => {
            const isBest = front.includes(points[index] ?? { name: '', x: 0, y: 0 });
            const radius = data.form === 'lines' ? 2.5 : isBest ? 5 : 4;
            return svg`<circle class=${data.best && !isBest ? 'beaten' : 'dot'} cx=${x} cy=${y} r=${radius} />`;
          })}
        </g>`;
      })}
      ${data.marks.map(({ label, value }) => needle(`${label} ${across?.text(value) ?? ''}`, plane.x(ofX(value)), plane, room))}
      ${isSmall ? nothing : data.form === 'lines' ? lineNames(data, at, plane, room) : pointNames(data, front, at, plane, room)}
    </g>`;
  return {
    height,
    picture,
    places: all.map((point) => {
      const { x, y } = at(point);
      return { x: plane.left + x, y: plane.top + y, halfWidth: 5, halfHeight: 5 };
    }),
  };
}

const pathOf = (places: readonly { readonly x: number; readonly y: number }[]): string =>
  places.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');

function limitLine(
  { label, forbidden }: PointsData['limits'][number],
  text: string,
  level: number,
  { plane, room: { isSmall } }: { readonly plane: Plane; readonly room: Room },
): SVGTemplateResult {
  const y = Math.min(Math.max(level, 0), plane.height);
  const [from, to] = forbidden === 'above' ? [0, y] : [y, plane.height];
  const name = forbidden === 'above' ? y - 5 : y + 13;
  return svg`
    <rect x="0" y=${from} width=${plane.width} height=${Math.max(0, to - from)} fill="url(#hatch)" />
    <path class="limit" d="M0 ${y}H${plane.width}" />
    ${isSmall ? nothing : svg`<text class="limit-name" x="6" y=${Math.min(Math.max(name, 12), plane.height - 4)}>${label} ${text}</text>`}
  `;
}

function needle(text: string, x: number, plane: Plane, { isSmall, measure }: Room): SVGTemplateResult {
  const width = measure(text) + 12;
  const left = x + width > plane.width ? x - width : x;
  return svg`
    <path class="needle" d="M${x} 0V${plane.height}" />
    ${isSmall ? nothing : svg`<rect class="flag" x=${left} y="0" width=${width} height="17" /><text class="flag-text" x=${left + 6} y="12.5">${text}</text>`}
  `;
}

/** The name of a line above or below its last point, on the side where no other line ends. */
function lineNames(
  { groups }: PointsData,
  at: (point: Point) => { x: number; y: number },
  plane: Plane,
  { measure }: Room,
): SVGTemplateResult[] {
  const ends = groups.flatMap(({ label, line, points }) => {
    const last = points.at(-1);
    return last ? [{ label, line, ...at(last) }] : [];
  });
  return ends.map(({ label, line, x, y }) => {
    const isLowest = ends.length > 1 && ends.every((other) => other.y <= y);
    const right = Math.min(x, plane.width - 6);
    const height = isLowest ? Math.min(y + 16, plane.height - 4) : Math.max(y - 8, 12);
    return svg`<text class="name ${line}" x=${Math.max(right, measure(label))} y=${height} text-anchor="end">${label}</text>`;
  });
}

/** Names beside their points, those of the front first; one that would run into another or over the edge is left to the reading. */
function pointNames(
  { groups }: PointsData,
  front: readonly Point[],
  at: (point: Point) => { x: number; y: number },
  plane: Plane,
  { measure }: Room,
): SVGTemplateResult[] {
  const points = groups.flatMap((group) => group.points.map((point) => ({ point, line: group.line, ...at(point) })));
  const taken: Box[] = points.map(({ x, y }) => ({ x: x - 6, y: y - 6, width: 12, height: 12 }));
  const overlaps = (a: Box, b: Box): boolean =>
    a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
  const first = points.toSorted((a, b) => Number(front.includes(b.point)) - Number(front.includes(a.point)));
  return first.flatMap(({ point, line, x, y }) => {
    const width = measure(point.name);
    const spots = [
      { x: x + 8, y: y - 8 },
      { x: x - 8 - width, y: y - 8 },
      { x: x - width / 2, y: y - 24 },
      { x: x - width / 2, y: y + 8 },
    ].map((corner): Box => ({ ...corner, width, height: 15 }));
    const spot = spots.find(
      (box) =>
        box.x >= 2 &&
        box.x + box.width <= plane.width - 2 &&
        box.y >= 1 &&
        box.y + box.height <= plane.height - 1 &&
        !taken.some((other) => overlaps(box, other)),
    );
    if (!spot) return [];
    taken.push(spot);
    return [svg`<text class="name ${line}" x=${spot.x} y=${spot.y + 12}>${point.name}</text>`];
  });
}
