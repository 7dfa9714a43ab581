import { nothing, svg, type SVGTemplateResult } from 'lit';
import { flag, FLAG_HEIGHT } from '../plot/flag.ts';
import { unitOf } from '../plot/unit.ts';
import type { Point, PointsData } from './data.ts';
import { frontOf } from './front.ts';
import type { Laid, Room } from './laid.ts';
import { evenPaper, givenRange, planeOf, rangeOf, type Plane } from './plane.ts';
import { along, overlap, quietest, type Box } from './spots.ts';

const MARGIN = { left: 38, right: 14, top: 8, bottom: 20 };
const HEIGHT = 200;

/** Points with their names, as far as there is room, and the front of those that no other beats; or lines through them. */
export function layPoints(data: PointsData, room: Room): Laid {
  const { isSmall } = room;
  const [across, up] = [data.across, data.up].map(({ quantity, symbol }) => unitOf(quantity, symbol, data.system));
  const [ofX, ofY] = [across?.of ?? Number, up?.of ?? Number];
  const all = data.groups.flatMap(({ points }) => points);
  const before = (data.ghost ?? []).flatMap(({ points }) => points);
  const [xs, ys] = [[...all, ...before].map((point) => ofX(point.x)), [...all, ...before].map((point) => ofY(point.y))];
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
  const at: Spot = ({ x, y }) => ({ x: plane.x(ofX(x)), y: plane.y(ofY(y)) });
  const front = data.best ? frontOf(all, data.best) : [];
  const flags = data.marks.map(({ label, value }) =>
    flagOf(`${label} ${across?.exactly(value) ?? ''}`, plane.x(ofX(value)), plane, room),
  );
  const taken: Box[] = [
    ...flags.map(({ box }) => box),
    ...all.map(at).map(({ x, y }) => ({ x: x - 6, y: y - 6, width: 12, height: 12 })),
  ];
  const lines = data.form === 'lines' ? data.groups.map(({ points }) => along(points.map(at))) : [];
  const limits = data.limits.map((limit) =>
    limitLine(limit, up?.exactly(limit.value) ?? '', plane.y(ofY(limit.value)), {
      plane,
      room,
      taken,
      lines: lines.flat(),
    }),
  );
  const picture = svg`
    <g transform="translate(${plane.left} ${plane.top})">
      ${evenPaper(plane, data.across.symbol, room)}
      ${limits.map(({ line }) => line)}
      ${front.length > 1 ? svg`<path class="front" d=${pathOf(front.map(at))} />` : nothing}
      ${ghostsOf(data, at)}
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
      ${limits.map(({ name }) => name)}
      ${flags.map((flag) => needle(flag, plane, room))}
      ${isSmall ? nothing : data.form === 'lines' ? lineNames(data, at, plane, room, { taken, lines }) : pointNames(data, front, at, plane, room, taken)}
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

type Spot = (point: Point) => { x: number; y: number };

/** What stood elsewhere at the baseline: the lines as they were, or each point with the way that it went. */
function ghostsOf(data: PointsData, at: Spot): SVGTemplateResult[] {
  return (data.ghost ?? []).flatMap(({ points }, index) => {
    const places = points.map(at);
    const now = data.groups[index]?.points.map(at) ?? [];
    if (data.form === 'lines')
      return pathOf(places) === pathOf(now) ? [] : [svg`<path class="ghost" d=${pathOf(places)} />`];
    return places.flatMap(({ x, y }, row) => {
      const to = now[row];
      const isMoved = to && Math.hypot(to.x - x, to.y - y) > 0.5;
      return isMoved
        ? [svg`<circle class="ghost" cx=${x} cy=${y} r="4" /><path class="ghost" d="M${x} ${y}L${to.x} ${to.y}" />`]
        : [];
    });
  });
}

interface Around {
  readonly plane: Plane;
  readonly room: Room;
  readonly taken: Box[];
  readonly lines: readonly Box[];
}

/** A limit with its forbidden side, and its name where the least is in its way, off the hatch before in it. */
function limitLine(
  { label, forbidden }: PointsData['limits'][number],
  text: string,
  level: number,
  { plane, room: { isSmall, measure }, taken, lines }: Around,
): { readonly line: SVGTemplateResult; readonly name: SVGTemplateResult | typeof nothing } {
  const y = Math.min(Math.max(level, 0), plane.height);
  const [from, to] = forbidden === 'above' ? [0, y] : [y, plane.height];
  const line = svg`
    <rect x="0" y=${from} width=${plane.width} height=${Math.max(0, to - from)} fill="url(#hatch)" />
    <path class="limit" d="M0 ${y}H${plane.width}" />
  `;
  if (isSmall) return { line, name: nothing };
  const words = `${label} ${text}`;
  const size = { width: measure(words), height: 15 };
  const columns = Array.from({ length: 7 }, (_, index) => 6 + ((plane.width - 12 - size.width) * index) / 6);
  const rows = [y - 18, y + 3].toSorted((a, b) => (forbidden === 'above' ? b - a : a - b));
  const boxes = rows
    .filter((top) => top >= 0 && top + size.height <= plane.height)
    .flatMap((top) => columns.map((x): Box => ({ x, y: top, ...size })));
  const box = quietest(boxes, [...taken, ...lines]) ?? {
    x: 6,
    y: Math.min(Math.max(y - 18, 0), plane.height - 15),
    ...size,
  };
  taken.push(box);
  return { line, name: svg`<text class="limit-name" x=${box.x} y=${box.y + 12}>${words}</text>` };
}

interface Flag {
  readonly text: string;
  /** Where its needle stands. */
  readonly x: number;
  readonly box: Box;
}

function flagOf(text: string, x: number, plane: Plane, { measure }: Room): Flag {
  const width = measure(text) + 12;
  return { text, x, box: { x: x + width > plane.width ? x - width : x, y: 0, width, height: FLAG_HEIGHT } };
}

const needle = ({ text, x, box }: Flag, plane: Plane, { isSmall }: Room): SVGTemplateResult => svg`
  <path class="needle" d="M${x} 0V${plane.height}" />
  ${isSmall ? nothing : flag(text, box)}
`;

/** The name of a line above or below one of its points, as near its end as no other line is in the way. */
function lineNames(
  { groups }: PointsData,
  at: Spot,
  plane: Plane,
  { measure }: Room,
  { taken, lines }: { readonly taken: Box[]; readonly lines: readonly (readonly Box[])[] },
): SVGTemplateResult[] {
  return groups.flatMap(({ label, line, points }, own) => {
    const size = { width: measure(label), height: 15 };
    const boxes = points
      .map(at)
      .toReversed()
      .flatMap(({ x, y }) => {
        const left = Math.min(Math.max(x - size.width / 2, 4), plane.width - size.width - 4);
        return [y - 22, y + 7].map((top): Box => ({ x: left, y: top, ...size }));
      })
      .filter(({ y, height }) => y >= 1 && y + height <= plane.height - 1);
    const others = lines.filter((_, index) => index !== own).flat();
    const box = quietest(boxes, [...taken, ...others]);
    if (!box) return [];
    taken.push(box);
    return [svg`<text class="name ${line}" x=${box.x} y=${box.y + 12}>${label}</text>`];
  });
}

/** Names beside their points, those of the front first; one that would run into another or over the edge is left to the reading. */
function pointNames(
  { groups }: PointsData,
  front: readonly Point[],
  at: Spot,
  plane: Plane,
  { measure }: Room,
  taken: Box[],
): SVGTemplateResult[] {
  const points = groups.flatMap((group) => group.points.map((point) => ({ point, line: group.line, ...at(point) })));
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
        !taken.some((other) => overlap(box, other)),
    );
    if (!spot) return [];
    taken.push(spot);
    return [svg`<text class="name ${line}" x=${spot.x} y=${spot.y + 12}>${point.name}</text>`];
  });
}
