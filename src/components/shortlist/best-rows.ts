import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import '../verdict-chip/verdict-chip.ts';
import type { Finding, ListedRow } from './data.ts';
import { namesOf } from './figures.ts';

const PLACES = ['First', 'Second', 'Third'];

/** The first few rows, each with the reasons why it stands there.
 *  @fires open-rows - `detail.rows` are to be opened, each as a sheet. */
@customElement('best-rows')
export class BestRows extends LitElement {
  static override styles = [
    formStyles,
    css`
      ol {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(220px, 100%), 1fr));
        gap: 12px;
        margin: 8px 0;
        padding: 0;
        list-style: none;
      }
      li.row {
        display: flex;
        flex-direction: column;
        gap: 6px;
        padding: 10px 12px;
        background: var(--panel);
        border: 1px solid var(--line);
        border-radius: 5px;
      }
      h3 {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 10px;
        align-items: center;
        margin: 0;
        font: 600 15px/20px var(--sans);
      }
      ul {
        flex: 1;
        margin: 0;
        list-style: disc;
      }
      li {
        margin: 2px 0;
      }
    `,
  ];

  @property({ attribute: false }) best: Finding['best'] = [];

  protected override render(): TemplateResult {
    const rows = this.best.map(({ row }) => row);
    return html`<ol aria-label="The best, and why">
        ${this.best.map(
          ({ row, why }, index) =>
            html`<li class="row">
              <small>${PLACES[index] ?? index + 1}</small>
              <h3>
                ${namesOf(row)}
                ${row.status === 'problem' ? nothing : html`<verdict-chip .status=${row.status} word=${row.word}></verdict-chip>`}
              </h3>
              <ul>
                ${why.map((sentence) => html`<li>${sentence}</li>`)}
              </ul>
              <div>
                <button aria-label="Open as a sheet: ${namesOf(row)}" @click=${() => this.#open([row])}>
                  Open as a sheet
                </button>
              </div>
            </li>`,
        )}
      </ol>
      ${
        rows.length < 2
          ? nothing
          : html`<button class="main" @click=${() => this.#open(rows)}>Open all ${rows.length} as sheets</button>`
      }`;
  }

  #open(rows: readonly ListedRow[]): void {
    this.dispatchEvent(new CustomEvent('open-rows', { detail: { rows } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'best-rows': BestRows;
  }
}
