import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { UnitSystem } from '../../document/types.ts';
import { listStyles } from '../shelf/list-styles.ts';
import { formStyles } from '../form-styles.ts';
import '../verdict-chip/verdict-chip.ts';
import type { ListedRow } from './data.ts';
import { namesOf, shownAs } from './figures.ts';

/** So many rows are drawn at first, and more each time they are asked for. */
const PAGE = 25;

/** Pairs or teams, best first. The arrows go from row to row, Enter opens one.
 *  @fires open-row - `detail.row` is to be opened as a sheet. */
@customElement('shortlist-table')
export class ShortlistTable extends LitElement {
  static override styles = [
    formStyles,
    listStyles,
    css`
      th,
      td {
        text-align: start;
        vertical-align: baseline;
      }
      thead th {
        white-space: nowrap;
      }
      .number {
        text-align: end;
        white-space: nowrap;
      }
      @media (pointer: fine) and (min-width: 1024px) {
        th button.link {
          min-height: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) rows: readonly ListedRow[] = [];
  @property() system: UnitSystem = 'metric';
  @state() private shown = PAGE;

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('tbody button')?.focus();
  }

  protected override render(): TemplateResult {
    const rest = this.rows.length - this.shown;
    return html`<table @keydown=${this.#step}>
        <thead>
          <tr>
            <th scope="col" class="number"><span class="quiet">Rank</span></th>
            <th scope="col">Drivers</th>
            <th scope="col">Verdict</th>
            <th scope="col" class="figure">Window</th>
            <th scope="col" class="figure rest">Bound by</th>
            <th scope="col" class="number figure">Reach</th>
            <th scope="col" class="number figure rest">Level</th>
            <th scope="col" class="number figure rest">Plays</th>
            <th scope="col" class="number figure rest">Pad</th>
            <th scope="col" class="number">Price</th>
          </tr>
        </thead>
        <tbody>
          ${this.rows.slice(0, this.shown).map((row) => this.#row(row))}
        </tbody>
      </table>
      ${
        rest > 0
          ? html`<p><button @click=${() => (this.shown += PAGE)}>Show ${Math.min(PAGE, rest)} more</button></p>`
          : nothing
      }`;
  }

  #row(row: ListedRow): TemplateResult {
    const { rank, status, word, windows, reach, box, level, plays, price, pads, isFront } = row;
    const each = (words: (window: ListedRow['windows'][number]) => string): TemplateResult[] =>
      windows.map((window) => html`<div>${words(window)}</div>`);
    const hertz = (value: number): string => shownAs(value, 'frequency', this.system);
    const width = (value: number): string => shownAs(value, 'octaves', this.system);
    return html`<tr>
      <td class="number">${rank}</td>
      <th scope="row">
        <button
          class="link"
          title="Open as a sheet of its own"
          @click=${() => this.dispatchEvent(new CustomEvent('open-row', { detail: { row } }))}
        >
          ${namesOf(row)}
        </button>
        ${isFront ? html`<span class="quiet">trade-off</span>` : nothing}
        <small class="brief"
          >${windows.map((window) => width(window.octaves)).join(', ')}; reaches ${hertz(reach)}; plays
          ${shownAs(plays, 'level', this.system)}</small
        >
      </th>
      <td>
        ${
          // What cannot be judged is never listed.
          status === 'problem' ? word : html`<verdict-chip .status=${status} word=${word}></verdict-chip>`
        }
      </td>
      <td class="figure">${each(({ low, high, octaves }) => `${hertz(low)} to ${hertz(high)}, ${width(octaves)}`)}</td>
      <td class="figure rest">${each(({ floor, ceiling }) => `${floor}, ${ceiling}`)}</td>
      <td class="number figure">
        ${hertz(reach)}
        ${box?.volume === undefined ? nothing : html`<small>in ${shownAs(box.volume, 'volume', this.system)}</small>`}
      </td>
      <td class="number figure rest">${shownAs(level, 'level', this.system)}</td>
      <td class="number figure rest">${shownAs(plays, 'level', this.system)}</td>
      <td class="number figure rest">${pads.map((pad) => html`<div>${shownAs(pad, 'level', this.system)}</div>`)}</td>
      <td class="number">${shownAs(price, 'price', this.system)}</td>
    </tr>`;
  }

  #step = (event: KeyboardEvent): void => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const buttons = [...this.renderRoot.querySelectorAll<HTMLElement>('tbody button')];
    buttons[buttons.indexOf(event.target as HTMLElement) + by]?.focus();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'shortlist-table': ShortlistTable;
  }
}
