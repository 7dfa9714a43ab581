import { nothing, svg, type SVGTemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Drawing, DrawnSeries } from './drawing.ts';
import { flag } from './flag.ts';
import type { DrawnLimit } from './limits.ts';
import type { DrawnMark } from './marks.ts';
import type { DrawnRing } from './rings.ts';
import type { Frame } from './frame.ts';
import { decadeLines, frequencyTicks, type Tick } from './ticks.ts';

/** The drawn parts of a plot inside its `<svg>`: paper, limits, curves, needles, names. */
export function picture(drawing: Drawing, crosshair: number | undefined): SVGTemplateResult {
  const { frame } = drawing;
  return svg`
    ${hatch}
    <g transform="translate(${frame.left} ${frame.top})">
      ${paper(frame, drawing.values)}
      ${drawing.limits.map((limit) => limitLine(limit))}
      <svg width=${frame.width} height=${frame.height} overflow="hidden">
        ${drawing.series.map((series) => (series.ghost === '' ? nothing : svg`<path class="ghost" d=${series.ghost} />`))}
        ${repeat(
          drawing.series,
          (series) => series.label,
          (series) => svg`<path class="curve ${series.line}" d=${series.path} />`,
        )}
      </svg>
      ${edge(frame)}
      ${crosshair === undefined ? nothing : svg`<path class="hair" d="M${frame.x(crosshair)} 0V${frame.height}" />`}
      ${drawing.marks.map((mark) => needle(mark, frame))}
      ${drawing.rings.map(ring)}
      ${drawing.series.map(name)}
      ${drawing.limits.map(limitName)}
      ${drawing.marks.map((mark) => flag(mark.text, mark.flag))}
    </g>
  `;
}

/** The frame round the paper, over the curves. It also holds together what is drawn after them: the browser arranges the
 *  layers of the whole page anew wherever the bounds of such a group change. */
export const edge = ({ width, height }: Frame): SVGTemplateResult =>
  svg`<rect class="edge" x="0.5" y="0.5" width=${width - 1} height=${height} />`;

/** Ruled at 45 degrees: the forbidden side of a limit, also in print and without colour. */
export const hatch = svg`
  <defs>
    <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="hatch-line" d="M0 0V7" />
    </pattern>
  </defs>
`;

/** The millimetre paper with its numbers, drawn anew only where it is another. */
export function paper(frame: Frame, values: readonly Tick[], frequencies?: readonly Tick[]): unknown {
  const { width, height, horizontal, vertical } = frame;
  const known = [width, height, ...horizontal, vertical.from, vertical.to, vertical.step, frequencies?.length];
  return guard(known, () => ruled(frame, values, frequencies ?? frequencyTicks(...horizontal, width)));
}

function ruled(frame: Frame, values: readonly Tick[], frequencies: readonly Tick[]): SVGTemplateResult {
  const crisp = (pixels: number): number => Math.round(pixels) + 0.5;
  const upright = (hertz: number): string => `M${crisp(frame.x(hertz))} 0V${frame.height}`;
  const [low, high] = frame.horizontal;
  const lines = decadeLines(low, high).filter((hertz) => hertz > low && hertz < high);
  const isDecade = (hertz: number): boolean => Number.isInteger(Math.round(Math.log10(hertz) * 1e6) / 1e6);
  const across = values.map(({ value }) => `M0 ${crisp(frame.y(value))}H${frame.width}`).join('');
  return svg`
    <path class="minor" d=${lines
      .filter((hertz) => !isDecade(hertz))
      .map(upright)
      .join('')} />
    <path class="major" d=${lines.filter(isDecade).map(upright).join('') + across} />
    ${frequencies.map(({ value, text }) => svg`<text x=${frame.x(value)} y=${frame.height + 15} text-anchor="middle">${text}</text>`)}
    ${values.map(({ value, text }) => svg`<text x="-6" y=${frame.y(value) + 4} text-anchor="end">${text}</text>`)}
  `;
}

function limitLine({ hatched, y }: DrawnLimit): SVGTemplateResult {
  return svg`
    ${hatched ? svg`<rect x="0" y=${hatched.y} width=${hatched.width} height=${Math.max(0, hatched.height)} fill="url(#hatch)" />` : nothing}
    ${y === undefined || !hatched ? nothing : svg`<path class="limit" d="M0 ${y}H${hatched.width}" />`}
  `;
}

const limitName = ({ text, place }: DrawnLimit): SVGTemplateResult =>
  svg`<text class="limit-name" x=${place.x} y=${place.y + 12}>${text}</text>`;

const name = ({ label, line, place }: DrawnSeries): SVGTemplateResult | typeof nothing =>
  place ? svg`<text class="name ${line}" x=${place.x} y=${place.y + 12}>${label}</text>` : nothing;

const needle = ({ x, dots }: DrawnMark, frame: Frame): SVGTemplateResult => svg`
  <path class="needle" d="M${x} 0V${frame.height}" />
  ${dots.map(({ y, line }) => svg`<circle class="dot ${line}" cx=${x} cy=${y} r="3.5" />`)}
`;

function ring({ x, y, value, at, broken, place }: DrawnRing): SVGTemplateResult {
  const tone = broken ? 'broken' : '';
  const nearX =
    x < place.x ? place.x - 4 : x > place.x + place.width ? place.x + place.width + 4 : place.x + place.width / 2;
  const nearY = y > place.y + place.height ? place.y + 11 : y < place.y ? place.y + 11 : place.y + 11;
  const length = Math.hypot(nearX - x, nearY - y) || 1;
  const startX = x + (6 * (nearX - x)) / length;
  const startY = y + (6 * (nearY - y)) / length;
  return svg`
    <path class="leader ${tone}" d="M${startX} ${startY}L${nearX} ${nearY}" />
    <circle class="ring ${tone}" cx=${x} cy=${y} r="5.5" />
    <text class="reading ${tone}" x=${place.x} y=${place.y + 13}>${value}</text>
    <text class="reading small" x=${place.x} y=${place.y + 27}>${at}</text>
  `;
}
