import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { DrawingData } from '../drawing/data.ts';
import { lay } from '../drawing/lay.ts';
import type { PlotData } from '../plot/data.ts';
import { draw } from '../plot/drawing.ts';
import { frameOf } from '../plot/frame.ts';
import { newMemory } from '../plot/layout.ts';
import { edge, hatch, paper } from '../plot/picture.ts';
import { rowsOf, type WindowPlotData } from '../plot/window-data.ts';

/** Room for the numbers of the axes, which a small picture leaves out. */
const MARGINS = { width: 48, height: 28 };
const LONGEST_ROW = 16;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A plot of curves without words: paper, limits, curves and needles. */
export function curvesSmall(data: PlotData, { width, height }: Size): SVGTemplateResult {
  const noWords = (): number => 0;
  const outer = { width: width + MARGINS.width, height: height + MARGINS.height, label: noWords, small: noWords };
  const { frame, values, series, limits, marks } = draw(data, outer, newMemory());
  return svg`
    ${hatch}
    ${paper(frame, values, [])}${edge(frame)}
    ${limits.map(
      ({ hatched, y }) => svg`
      ${hatched ? svg`<rect x=${hatched.x} y=${hatched.y} width=${hatched.width} height=${Math.max(0, hatched.height)} fill="url(#hatch)" />` : nothing}
      ${y === undefined ? nothing : svg`<path class="limit" d="M0 ${y}H${frame.width}" />`}
    `,
    )}
    ${series.map(({ line, path }) => svg`<path class="curve ${line}" d=${path} />`)}
    ${marks.map(({ x }) => svg`<path class="needle" d="M${x} 0V${frame.height}" />`)}
  `;
}

/** What cells hold, without words. */
export const drawingSmall = (data: DrawingData, size: Size): SVGTemplateResult =>
  svg`${hatch}${lay(data, { ...size, measure: () => 0, isSmall: true }).picture}`;

/** A shared window without words: a bar a rule, and the band, or the gap, behind them. */
export function windowSmall(data: WindowPlotData, { width, height }: Size): SVGTemplateResult {
  const outer = { width: width + MARGINS.width, height: height + MARGINS.height };
  const frame = frameOf(outer, data.horizontal, { from: 0, to: 1, step: 1 });
  const rows = rowsOf(data);
  const step = Math.min(LONGEST_ROW, (height - 12) / Math.max(1, rows.length));
  const top = (height - step * rows.length) / 2;
  const { low, high, octaves } = data.window;
  const [from, to] = octaves >= 0 ? [low.at, high.at] : [high.at, low.at];
  const inside = (hertz: number): number => Math.min(Math.max(frame.x(hertz), 0), frame.width);
  return svg`
    ${paper(frame, [], [])}${edge(frame)}
    <rect class="band ${octaves >= 0 ? 'shared' : 'gap'}" x=${inside(from)} y="1"
      width=${Math.max(1, inside(to) - inside(from))} height=${frame.height - 2} />
    ${rows.map(({ side, limit }, index) => {
      const x = inside(limit.at);
      const isFloor = side === 'floor';
      return svg`<g class=${isFloor ? 'tweeter' : 'woofer'}>
        <rect class="bar" x=${isFloor ? x : 0} y=${top + index * step + 2}
          width=${isFloor ? frame.width - x : x} height=${step - 4} />
        <path class="end-line" d="M${x} ${top + index * step + 1}v${step - 2}" />
      </g>`;
    })}
    ${data.marks.map(({ frequency }) => svg`<path class="needle" d="M${frame.x(frequency)} 0V${frame.height}" />`)}
  `;
}
