import { nothing, svg, type SVGTemplateResult } from 'lit';
import { unitOf } from '../plot/unit.ts';
import type { Bar, BarsData } from './data.ts';
import type { Laid, Place, Room } from './laid.ts';
import { evenPaper, givenRange, planeOf, rangeOf, type Plane } from './plane.ts';
import { shortened } from './words.ts';

const ROW = 26;
const FOOT = 20;
/** The names take no more than this share of the width. */
const NAMES = 0.44;

/** Bars from zero, a row each; the parts of a row end to end, what it comes to at its end, limits as upright lines. */
export function layBars(data: BarsData, room: Room): Laid {
  const { isSmall, measure } = room;
  const unit = unitOf(data.axis.quantity, data.axis.symbol, data.system);
  const totals = data.bars.map(totalOf);
  const before = (data.ghost ?? []).map(totalOf);
  const texts = totals.map((total) => unit.exactly(total));
  const names = isSmall
    ? 4
    : Math.min(Math.max(...data.bars.map(({ name }) => measure(name)), 20) + 10, room.width * NAMES);
  const legend = isSmall ? [] : legendOf(data, room);
  const top = 4 + (legend.at(-1)?.row ?? -1) * 18 + 18 + (data.limits.length > 0 && !isSmall ? 16 : 0);
  const row = isSmall ? Math.min(18, ((room.height ?? 0) - 8) / Math.max(1, data.bars.length)) : ROW;
  // What a bar comes to stands behind its end, so the longest leaves room for that.
  const right = isSmall ? 4 : Math.max(14, ...texts.map((text) => measure(text) + 10));
  const values = [...totals, ...before, ...data.limits.map(({ value }) => value)].map((value) => unit.of(value));
  const plane = planeOf(
    {
      left: names,
      top: isSmall ? 4 : top,
      width: room.width - names - right,
      height: row * data.bars.length,
    },
    data.horizontal
      ? givenRange(unit.of(data.horizontal[0]), unit.of(data.horizontal[1]))
      : rangeOf(values, { fromZero: true }),
    { from: 0, to: 1, step: 1 },
  );
  // An axis that does not begin at zero cuts the bars off at its ends.
  const x = (value: number): number => Math.min(Math.max(plane.x(unit.of(value)), 0), plane.width);
  const places: Place[] = [];
  const drawn = data.bars.map(({ name, parts }, index) => {
    const y = index * row;
    let [from, below] = [0, 0];
    const rects = parts.map(({ value, line, label }, place) => {
      const start = value < 0 ? below : from;
      if (value < 0) below += value;
      else from += value;
      const [left, right] = [x(Math.min(start, start + value)), x(Math.max(start, start + value))];
      const isNamed = !isSmall && parts.length > 1 && measure(label) + 8 < right - left;
      return svg`<g class=${line}>
        <rect class="part n${place % 5}" x=${left} y=${y + 4} width=${Math.max(0.5, right - left)} height=${row - 8} />
        ${isNamed ? svg`<text class="inside" x=${left + 5} y=${y + row / 2 + 4}>${label}</text>` : nothing}
      </g>`;
    });
    places.push({ x: names + plane.width / 2, y: plane.top + y + row / 2, halfWidth: room.width, halfHeight: row / 2 });
    const was = before[index];
    return svg`${rects}${was === undefined || was === totals[index] ? nothing : svg`<path class="ghost" d="M${x(0)} ${y + 2}H${x(was)}V${y + row - 2}H${x(0)}" />`}
      ${isSmall ? nothing : ends(name, texts[index] ?? '', { x: x(from), y, plane, room })}`;
  });
  const picture = svg`
    ${legend.map(
      ({ x: left, row: line, label, kind }) => svg`<g class=${kind.line}>
        <rect class="part n${kind.place}" x=${left} y=${line * 18 + 3} width="12" height="10" />
        <text class="key" x=${left + 17} y=${line * 18 + 12}>${label}</text>
      </g>`,
    )}
    <g transform="translate(${plane.left} ${plane.top})">
      ${evenPaper(plane, data.axis.symbol, room, false)}
      ${data.limits.map((limit) => limitLine({ ...limit, label: `${limit.label} ${unit.exactly(limit.value)}` }, x(limit.value), plane, room))}
      ${drawn}
    </g>`;
  return { height: plane.top + plane.height + FOOT, picture, places };
}

const totalOf = ({ parts }: Bar): number => parts.reduce((sum, { value }) => sum + value, 0);

/** The name left of a bar, and what it comes to right of its end. */
const ends = (
  name: string,
  total: string,
  { x, y, plane, room }: { readonly x: number; readonly y: number; readonly plane: Plane; readonly room: Room },
): SVGTemplateResult => svg`
  <text class="row-name" x="-6" y=${y + ROW / 2 + 4} text-anchor="end">${shortened(name, plane.left - 8, room.measure)}</text>
  <text class="total" x=${x + 5} y=${y + ROW / 2 + 4}>${total}</text>
`;

function limitLine(
  { label, forbidden }: BarsData['limits'][number],
  x: number,
  plane: Plane,
  { isSmall, measure }: Room,
): SVGTemplateResult {
  const [from, to] = forbidden === 'above' ? [x, plane.width] : [0, x];
  const isRight = x + measure(label) > plane.width;
  return svg`
    <rect x=${Math.max(0, from)} y="0" width=${Math.max(0, to - from)} height=${plane.height} fill="url(#hatch)" />
    <path class="limit" d="M${x} 0V${plane.height}" />
    ${isSmall ? nothing : svg`<text class="limit-name" x=${x} y="-5" text-anchor=${isRight ? 'end' : 'start'}>${label}</text>`}
  `;
}

/** The parts by name, where a row has more than one: as many in a line as there is room for. */
function legendOf(data: BarsData, { width, measure }: Room) {
  const parts = data.bars[0]?.parts ?? [];
  if (parts.length < 2) return [];
  let [x, row] = [0, 0];
  return parts.map(({ label, line }, place) => {
    const needed = measure(label) + 32;
    if (x + needed > width && x > 0) [x, row] = [0, row + 1];
    const at = x;
    x += needed;
    return { x: at, row, label, kind: { line, place: place % 5 } };
  });
}
