import { svg, type SVGTemplateResult } from 'lit';
import { evenTicks, roundStep, thinned, type Tick } from '../plot/ticks.ts';
import type { Room } from './laid.ts';

/** Ends of an even axis and the distance of its lines, in the unit of the axis. */
export interface Range {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** Below this a step would lose its digits. */
const TINY = 1e-290;

/** The range that holds all values, to whole steps; from 0 on where bars begin. */
export function rangeOf(values: readonly number[], { lines = 4, fromZero = false } = {}): Range {
  const numbers = fromZero ? [0, ...values] : values;
  const [lowest, highest] = [Math.min(...numbers), Math.max(...numbers)];
  if (!Number.isFinite(lowest)) return { from: 0, to: 1, step: 0.25 };
  const size = Math.max(Math.abs(lowest), Math.abs(highest));
  // Numbers too much alike or too small to have steps between them stand in the middle of a field.
  const span = highest - lowest > size * 1e-9 && size > TINY ? highest - lowest : size > TINY ? size : 1;
  const step = roundStep((span * 1.08) / lines);
  const room = span * 0.04;
  const from = fromZero && lowest === 0 ? 0 : Math.floor((lowest - room) / step) * step;
  return { from, to: Math.ceil((highest + room) / step) * step, step };
}

/** A range whose ends are given. */
export const givenRange = (from: number, to: number): Range => ({
  from: Math.min(from, to),
  to: Math.max(from, to),
  step: roundStep(Math.abs(to - from) / 4 || 1),
});

/** The field in which a drawing stands; pixels count from its upper left corner. */
export interface Plane {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly across: Range;
  readonly up: Range;
  x(value: number): number;
  y(value: number): number;
}

export function planeOf(field: Pick<Plane, 'left' | 'top' | 'width' | 'height'>, across: Range, up: Range): Plane {
  const [width, height] = [Math.max(20, field.width), Math.max(20, field.height)];
  return {
    ...field,
    width,
    height,
    across,
    up,
    x: (value) => ((value - across.from) / (across.to - across.from)) * width,
    y: (value) => height - ((value - up.from) / (up.to - up.from)) * height,
  };
}

const crisp = (pixels: number): number => Math.round(pixels) + 0.5;

/** Even paper; the last number along the bottom carries the unit. Lines across only where that axis has numbers. */
export function evenPaper(plane: Plane, unit: string, room: Room, isNumberedUp = true): SVGTemplateResult {
  const { width, height, across, up } = plane;
  const upright = apart(evenTicks(across.from, across.to, across.step), plane, unit, room);
  const level = isNumberedUp ? evenTicks(up.from, up.to, up.step) : [];
  const lines = [
    ...upright.map(({ value }) => `M${crisp(plane.x(value))} 0V${height}`),
    ...level.map(({ value }) => `M0 ${crisp(plane.y(value))}H${width}`),
  ];
  return svg`
    <path class="major" d=${lines.join('')} />
    <rect class="edge" x="0.5" y="0.5" width=${width - 1} height=${Math.max(0, height - 1)} />
    ${room.isSmall ? undefined : numbers(plane, upright, level)}
  `;
}

const numbers = (plane: Plane, across: readonly Tick[], up: readonly Tick[]): SVGTemplateResult => svg`
  ${across.map(({ value, text }) => svg`<text x=${plane.x(value)} y=${plane.height + 15} text-anchor="middle">${text}</text>`)}
  ${up.map(({ value, text }) => svg`<text x="-6" y=${plane.y(value) + 4} text-anchor="end">${text}</text>`)}
`;

/** Every second number, or fifth, where they would run into one another; the unit stands with the last. */
function apart(ticks: readonly Tick[], plane: Plane, unit: string, { measure }: Room): readonly Tick[] {
  const widest = Math.max(0, ...ticks.map(({ text }) => measure(text)));
  // Numbers stand in the middle under their lines, the last one with its unit.
  const needed = widest + 10 + (unit === '' ? 0 : measure(` ${unit}`) / 2);
  const between = plane.width / Math.max(1, ticks.length - 1);
  const every = [1, 2, 4, 5, 10].find((count) => count * between >= needed) ?? 20;
  const kept = thinned(ticks, every);
  return kept.map((tick, index) =>
    index === kept.length - 1 && unit !== '' ? { ...tick, text: `${tick.text} ${unit}` } : tick,
  );
}
