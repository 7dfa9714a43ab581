import { nothing, svg, type SVGTemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { marksOf } from './marks.ts';
import { placePasses } from './pass-labels.ts';
import type { Scale } from './scale.ts';

/** Pixels between the ends of the rule and the ends of its element: room for the numbers there. */
export const MARGIN = 26;

const HEIGHT = 82;
const LINE = 58;
const RISE = { long: 15, middle: 10, short: 6 } as const;

/** What a rule shows, in the unit shown. */
export interface RuleParts {
  readonly scale: Scale;
  readonly now: number;
  /** The baseline, where it differs. */
  readonly before: number | undefined;
  readonly passes: readonly { readonly low: number; readonly high: number; readonly label: string }[];
  readonly symbol: string;
  /** Between two whole numbers there is nothing. */
  readonly whole: boolean;
  readonly width: number;
  number(value: number): string;
  /** An end of a window, rounded to a step that still passes. */
  inward(value: number, side: 'low' | 'high'): string;
  /** Width of a label in pixels. */
  measure(text: string): number;
}

/** The rule: lines and numbers, green windows, the dashed baseline, and the needle over all. */
export function rulePicture(parts: RuleParts): SVGTemplateResult | typeof nothing {
  const { scale, now, before, width, symbol } = parts;
  const pixels = width - 2 * MARGIN;
  if (pixels < 40) return nothing;
  const at = (value: number): number => Math.min(Math.max(scale.place(value), 0), 1) * pixels;
  return svg`
    <svg width=${width} height=${HEIGHT} aria-hidden="true">
      <g transform="translate(${MARGIN} 0)">
        ${windows(parts, at, pixels)}
        ${guard([scale.from, scale.to, pixels, symbol], () => ruled(parts, at, pixels))}
        ${before === undefined ? nothing : svg`<path class="before" d="M${at(before)} ${LINE}v-19" />`}
        <path class="stem" d="M${at(now)} 20V${LINE + 1}" />
        <path
          class="needle"
          d="M${at(now) - 6.5} 16.5a1.5 1.5 0 0 1 1.5-1.5h10a1.5 1.5 0 0 1 1.5 1.5v6l-6.5 6.5l-6.5 -6.5z"
        />
      </g>
    </svg>
  `;
}

/** Lines and numbers, drawn anew only for another scale. */
function ruled(parts: RuleParts, at: (value: number) => number, pixels: number): SVGTemplateResult {
  const marks = marksOf(parts.scale, pixels).filter(({ value }) => !parts.whole || Number.isInteger(value));
  const lines = marks.map(({ value, rank }) => `M${at(value).toFixed(1)} ${LINE}v-${RISE[rank]}`).join('');
  return svg`
    <path class="line" d=${`M0 ${LINE}H${pixels}${lines}`} />
    ${marks.filter(({ labelled }) => labelled).map(({ value }) => numberAt(value, at(value), parts))}
  `;
}

/** The ends carry the unit. */
function numberAt(value: number, x: number, { scale, symbol, number }: RuleParts): SVGTemplateResult {
  const isEnd = value === scale.from || value === scale.to;
  const text = isEnd ? `${number(value)} ${symbol}`.trim() : number(value);
  return svg`<text class="halo" x=${x} y=${LINE + 18} text-anchor="middle">${text}</text>`;
}

function windows(
  { scale, now, passes, inward, measure }: RuleParts,
  at: (value: number) => number,
  pixels: number,
): SVGTemplateResult[] {
  const inside = passes
    .filter(({ low, high }) => high >= scale.from && low <= scale.to)
    .map(({ low, high, label }) => {
      const text = `${label} ${inward(low, 'low')}–${inward(high, 'high')}`;
      return { label: text, from: at(low), to: at(high), width: measure(text) };
    });
  const labels = placePasses(inside, at(now), pixels);
  return inside.map(({ label, from, to }, index) => {
    const { x = 0, row = 0, leader = [0, 0] } = labels[index] ?? {};
    const top = LINE - 20;
    const y = 30 - row * 18;
    const end = leader[0] === leader[1] ? y + 4 : y - 4;
    return svg`
      <rect class="pass" x=${from} y=${top} width=${Math.max(2, to - from)} height="20" />
      <path class="pass-edge" d="M${from} ${top}V${LINE}M${to} ${top}V${LINE}M${leader[0]} ${top}V${end}H${leader[1]}" />
      <text class="pass-name halo" x=${x} y=${y}>${label}</text>
    `;
  });
}
