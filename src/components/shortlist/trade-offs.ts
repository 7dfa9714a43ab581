import { LitElement, css, html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { UnitSystem } from '../../document/types.ts';
import { formStyles } from '../form-styles.ts';
import type { ListedRow } from './data.ts';
import { axes, namesOf, shownAs, type AxisName } from './figures.ts';

/** More points than this cannot be told apart. */
const MOST = 120;
/** More names than this would stand in each other's way. */
const MOST_NAMED = 8;

interface Point {
  readonly row: ListedRow;
  /** From 0 to 1, from the left and from below. */
  readonly x: number;
  readonly y: number;
}

/** The rows that no other beats in everything, as points over two of their figures. The arrows go from point to point, Enter opens
 *  the one that is described below.
 *  @fires open-row - `detail.row` is to be opened as a sheet. */
@customElement('trade-offs')
export class TradeOffs extends LitElement {
  static override styles = [
    formStyles,
    css`
      .field {
        position: relative;
        height: 220px;
        margin: 8px 0 4px 0;
        border: solid var(--line2);
        border-width: 0 0 1px 1px;
        background: var(--panel);
      }
      .field svg {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
      }
      line {
        stroke: var(--line);
      }
      .point {
        position: absolute;
        min-height: 0;
        width: 24px;
        height: 24px;
        margin: -12px;
        padding: 0;
        border: 0;
        border-radius: 12px;
        background: none;
      }
      .point::before {
        content: '';
        display: block;
        width: 10px;
        height: 10px;
        margin: auto;
        border-radius: 50%;
        background: var(--good);
      }
      .point.caution::before {
        background: var(--caution);
        border-radius: 0;
      }
      .point[aria-pressed='true']::before {
        outline: 2px solid var(--accent);
        outline-offset: 2px;
      }
      .point span {
        position: absolute;
        inset: 2px auto auto 26px;
        color: var(--ink2);
        font: 12.5px/18px var(--sans);
        white-space: nowrap;
        pointer-events: none;
      }
      .point .before {
        inset: 2px 26px auto auto;
      }
      @media (max-width: 700px) {
        .point span {
          display: none;
        }
      }
      .ends {
        display: flex;
        justify-content: space-between;
      }
      select {
        width: auto;
      }
    `,
  ];

  @property({ attribute: false }) rows: readonly ListedRow[] = [];
  @property() system: UnitSystem = 'metric';
  @state() private across: AxisName = 'price';
  @state() private up: AxisName = 'window';
  @state() private picked: ListedRow | undefined;

  protected override render(): TemplateResult {
    const points = this.#points;
    const chosen = points.find(({ row }) => row === this.picked)?.row ?? this.rows[0];
    return html`<div class="bar">
        ${this.#choice('Upwards', this.up, (name) => (this.up = name))}
        ${this.#choice('Across', this.across, (name) => (this.across = name))}
      </div>
      ${points.length === 0 ? html`<p class="quiet">Nothing to draw: no row has both figures.</p>` : this.#field(points, chosen)}
      ${chosen ? this.#described(chosen) : nothing}`;
  }

  #choice(label: string, present: AxisName, choose: (name: AxisName) => void): TemplateResult {
    return html`<label class="quiet"
      >${label}
      <select @change=${(event: Event) => choose((event.target as HTMLSelectElement).value as AxisName)}>
        ${Object.entries(axes).map(
          ([name, axis]) => html`<option value=${name} ?selected=${name === present}>${axis.label}</option>`,
        )}
      </select></label
    >`;
  }

  #field(points: readonly Point[], chosen: ListedRow | undefined): TemplateResult {
    return html`<div class="field" role="group" aria-label="Best trade-offs" @keydown=${this.#step}>
        <svg aria-hidden="true">
          ${[0.25, 0.5, 0.75].map(
            (at) =>
              svg`<line x1="0" x2="100%" y1="${at * 100}%" y2="${at * 100}%" /><line y1="0" y2="100%" x1="${at * 100}%" x2="${at * 100}%" />`,
          )}
        </svg>
        ${points.map(
          ({ row, x, y }) =>
            html`<button
              class="point ${row.status}"
              .style=${`left:${String(4 + x * 92)}%;top:${String(96 - y * 92)}%`}
              aria-label=${`${namesOf(row)}: ${this.#figure(row, this.across)}, ${this.#figure(row, this.up)}, ${row.word}`}
              aria-pressed=${row === chosen ? 'true' : 'false'}
              tabindex=${row === chosen ? 0 : -1}
              @focus=${() => (this.picked = row)}
              @click=${() => (this.picked = row)}
              @dblclick=${() => this.#open(row)}
            >
              ${points.length > MOST_NAMED ? nothing : html`<span class=${x > 0.6 ? 'before' : ''}>${namesOf(row)}</span>`}
            </button>`,
        )}
      </div>
      ${this.#ends(points)}`;
  }

  #ends(points: readonly Point[]): TemplateResult {
    const end = (name: AxisName, of: 'x' | 'y', at: 0 | 1): string => {
      const point = points.find((each) => each[of] === at) ?? points[0];
      return point ? shownAs(axes[name].of(point.row), axes[name].quantity, this.system) : '';
    };
    return html`<div class="ends quiet">
      <span>${axes[this.across].label}: ${end(this.across, 'x', 0)}</span>
      <span>${axes[this.up].label}: ${end(this.up, 'y', 0)} to ${end(this.up, 'y', 1)}</span>
      <span>${end(this.across, 'x', 1)}</span>
    </div>`;
  }

  #described(row: ListedRow): TemplateResult {
    return html`<div class="bar">
      <span role="status"
        ><b>${namesOf(row)}</b>:
        ${(['window', 'reach', 'level', 'price'] as const).map((name) => this.#figure(row, name)).join(', ')}</span
      >
      <button @click=${() => this.#open(row)}>Open as a sheet</button>
    </div>`;
  }

  #figure(row: ListedRow, name: AxisName): string {
    const { words, quantity, of } = axes[name];
    return `${words} ${shownAs(of(row), quantity, this.system)}`;
  }

  get #points(): Point[] {
    const [across, up] = [axes[this.across].of, axes[this.up].of];
    const rows = this.rows.filter((row) => Number.isFinite(across(row)) && Number.isFinite(up(row))).slice(0, MOST);
    const share = (values: readonly number[]): number[] => {
      const [low, high] = [Math.min(...values), Math.max(...values)];
      return values.map((value) => (high > low ? (value - low) / (high - low) : 0.5));
    };
    const [xs, ys] = [share(rows.map(across)), share(rows.map(up))];
    return rows
      .map((row, index) => ({ row, x: xs[index] ?? 0.5, y: ys[index] ?? 0.5 }))
      .toSorted((a, b) => a.x - b.x || a.y - b.y);
  }

  #open(row: ListedRow): void {
    this.dispatchEvent(new CustomEvent('open-row', { detail: { row } }));
  }

  #step = (event: KeyboardEvent): void => {
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    const points = [...this.renderRoot.querySelectorAll<HTMLElement>('.point')];
    const at = points.indexOf(event.target as HTMLElement);
    if (event.key === 'Enter' && at >= 0) {
      const row = this.#points[at]?.row;
      if (row) this.#open(row);
    } else if (by !== undefined) points[at + by]?.focus();
    else return;
    event.preventDefault();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'trade-offs': TradeOffs;
  }
}
