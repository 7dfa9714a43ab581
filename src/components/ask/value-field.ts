import {
  LitElement,
  css,
  html,
  nothing,
  svg,
  type PropertyValues,
  type SVGTemplateResult,
  type TemplateResult,
} from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { UnitSystem } from '../../document/types.ts';
import { Width } from '../plot/width.ts';
import { formStyles } from '../form-styles.ts';
import type { FieldData, Point } from './data.ts';
import { layAxis, nearestTo, type LaidAxis } from './field-axes.ts';

const HEIGHT = 320;
const LEFT = 52;
const RIGHT = 16;
const TOP = 10;
const BOTTOM = 26;

/** Lines over two inputs, or over one: contours with their levels, hatched where every verdict is good. The pointer or the arrow keys
 *  pick a point, Enter sets it.
 *  @fires set - `detail.sets` are to be typed. */
@customElement('value-field')
export class ValueField extends LitElement {
  static override styles = [
    formStyles,
    css`
      .stage {
        position: relative;
        background: var(--paper);
        cursor: crosshair;
      }
      svg {
        display: block;
      }
      text {
        fill: var(--ink3);
        font-size: 11px;
      }
      .grid,
      .frame {
        stroke: var(--blue2);
        fill: none;
      }
      .line {
        fill: none;
        stroke: var(--ink);
        stroke-width: 1.6;
        stroke-linejoin: round;
      }
      .edge {
        stroke: var(--good);
        stroke-width: 2;
      }
      .hatch {
        stroke: var(--good);
        opacity: 0.45;
      }
      .name {
        fill: var(--ink);
        font-size: 12px;
        font-weight: 600;
        stroke: var(--paper);
        stroke-width: 4px;
        paint-order: stroke;
      }
      .now {
        fill: none;
        stroke: var(--ghost);
        stroke-width: 2;
      }
      .hair {
        stroke: var(--accent);
      }
      .dot {
        fill: var(--accent);
      }
      .legend {
        max-width: none;
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        margin: 4px 0;
      }
    `,
  ];

  @property({ attribute: false }) data!: FieldData;
  @property() system: UnitSystem = 'metric';
  /** The picked point of the grid. */
  @state() private picked: readonly [column: number, row: number] = [0, 0];
  readonly #width = new Width(this);
  #axes: { readonly x: LaidAxis; readonly y: LaidAxis } | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('data')) return;
    const { columns, rows, present } = this.data;
    this.picked = [nearestTo(columns, present[0]), rows.length > 0 ? nearestTo(rows, present[1]) : 0];
  }

  protected override render(): TemplateResult {
    const { data } = this;
    const [column, row] = this.picked;
    const reading = data.reading(column, row);
    return html`<h3>${data.title}</h3>
      <div
        class="stage"
        role="slider"
        tabindex="0"
        aria-label=${`Pick a point of ${data.title}`}
        aria-valuemin="0"
        aria-valuemax=${Math.max(data.columns.length * Math.max(data.rows.length, 1) - 1, 0)}
        aria-valuenow=${row * data.columns.length + column}
        aria-valuetext=${reading}
        @keydown=${this.#key}
        @pointerdown=${this.#point}
        @pointermove=${(event: PointerEvent) => event.buttons > 0 && this.#point(event)}
      >
        ${this.#width.pixels > 0 ? this.#picture(this.#width.pixels) : nothing}
      </div>
      <p class="legend quiet">
        <span>${data.across.label} across, ${data.up.label} upwards</span>
        ${
          data.good.length > 0
            ? html`<span>hatched: every verdict is good</span>`
            : html`<span>no point where every verdict is good</span>`
        }
        <span>${data.rows.length > 0 ? 'ring' : 'dashes'}: as the sheet stands</span>
      </p>
      <div class="bar">
        <span role="status">${reading}</span>
        <button type="button" @click=${this.#set}>Set it</button>
      </div>
      <p class="quiet">Click, or the arrow keys, pick a point (Shift: ten); Enter sets it.</p>`;
  }

  #picture(width: number): SVGTemplateResult | TemplateResult {
    const { data, system } = this;
    const x = layAxis(data.across, system, [LEFT, width - RIGHT], 56);
    const y = layAxis(data.up, system, [HEIGHT - BOTTOM, TOP], 36);
    this.#axes = { x, y };
    const pathOf = (points: readonly Point[]): string =>
      points.map(([a, b], index) => `${index === 0 ? 'M' : 'L'}${x.at(a).toFixed(1)} ${y.at(b).toFixed(1)}`).join('');
    const goodPath = data.good
      .map(([[x0, y0], [x1, y1]]) => `M${x.at(x0)} ${y.at(y0)}H${x.at(x1)}V${y.at(y1)}H${x.at(x0)}Z`)
      .join('');
    const [column, row] = this.picked;
    const [px, py] = [x.at(data.columns[column] ?? 0), y.at(data.rows[row] ?? 0)];
    const isOver = data.rows.length === 0;
    return html`<svg width=${width} height=${HEIGHT} role="img" aria-label=${data.title}>
      <defs>
        <pattern id="good" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path class="hatch" d="M0 0V7" />
        </pattern>
        <clipPath id="inside">
          <rect x=${LEFT} y=${TOP} width=${Math.max(width - LEFT - RIGHT, 0)} height=${HEIGHT - TOP - BOTTOM} />
        </clipPath>
      </defs>
      ${x.ticks.map(
        ({ pixel, text }, index) =>
          svg`<path class="grid" d="M${pixel} ${TOP}V${HEIGHT - BOTTOM}" /><text x=${pixel} y=${HEIGHT - 8} text-anchor=${pixel > width - 40 ? 'end' : 'middle'}>${text}${index === x.ticks.length - 1 ? ` ${x.unit}` : ''}</text>`,
      )}
      ${y.ticks.map(
        ({ pixel, text }, index) =>
          svg`<path class="grid" d="M${LEFT} ${pixel}H${width - RIGHT}" /><text x=${LEFT - 6} y=${pixel + 4} text-anchor="end">${text}${index === y.ticks.length - 1 ? ` ${y.unit}` : ''}</text>`,
      )}
      <g clip-path="url(#inside)">
        <path d=${goodPath} fill="url(#good)" />
        ${data.lines.map(({ points, isEdge }) => svg`<path class="line ${isEdge ? 'edge' : ''}" d=${pathOf(points)} />`)}
        ${this.#names(x, y)}
        ${
          isOver
            ? svg`<path class="now" stroke-dasharray="3 3" d="M${x.at(data.present[0])} ${TOP}V${HEIGHT - BOTTOM}" />`
            : svg`<circle class="now" r="6" cx=${x.at(data.present[0])} cy=${y.at(data.present[1])} /><path class="hair" d="M${LEFT} ${py}H${width - RIGHT}" /><circle class="dot" r="4" cx=${px} cy=${py} />`
        }
        <path class="hair" d="M${px} ${TOP}V${HEIGHT - BOTTOM}" />
      </g>
      <path class="frame" d="M${LEFT} ${TOP}V${HEIGHT - BOTTOM}H${width - RIGHT}" />
    </svg>`;
  }

  /** The longest line of each level carries its name. */
  #names(x: LaidAxis, y: LaidAxis): SVGTemplateResult[] {
    const longest = new Map<string, readonly Point[]>();
    for (const { label, points } of this.data.lines)
      if (label !== '' && points.length > (longest.get(label)?.length ?? 1)) longest.set(label, points);
    return [...longest].map(([label, points], index) => {
      const [a, b] = points[Math.floor(points.length * (0.35 + 0.1 * (index % 4)))] ?? [0, 0];
      return svg`<text class="name" text-anchor="middle" x=${x.at(a)} y=${y.at(b) + 4}>${label}</text>`;
    });
  }

  #point = (event: PointerEvent): void => {
    const axes = this.#axes;
    if (!axes) return;
    const { left, top } = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const { columns, rows } = this.data;
    this.picked = [
      nearestTo(columns.map(axes.x.at), event.clientX - left),
      rows.length > 0 ? nearestTo(rows.map(axes.y.at), event.clientY - top) : 0,
    ];
  };

  #key = (event: KeyboardEvent): void => {
    const by = event.shiftKey ? 10 : 1;
    const [dx, dy] = (
      { ArrowRight: [by, 0], ArrowLeft: [-by, 0], ArrowUp: [0, by], ArrowDown: [0, -by] } as Record<string, Point>
    )[event.key] ?? [0, 0];
    const { columns, rows } = this.data;
    const inside = (value: number, count: number): number => Math.min(Math.max(value, 0), Math.max(count - 1, 0));
    if (event.key === 'Enter') this.#set();
    else if (dx !== 0 || dy !== 0)
      // Over one input alone, up and down go along it too.
      this.picked = [
        inside(this.picked[0] + dx + (rows.length === 0 ? dy : 0), columns.length),
        inside(this.picked[1] + dy, rows.length),
      ];
    else return;
    event.preventDefault();
  };

  #set = (): void => {
    const sets = this.data.settings(...this.picked);
    this.dispatchEvent(new CustomEvent('set', { detail: { sets } }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'value-field': ValueField;
  }
}
