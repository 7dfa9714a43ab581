import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { ShownCell } from '../document/shown.ts';
import { unbroken } from '../units/show.ts';
import '../components/verdict-chip/verdict-chip.ts';
import '../components/spark-line/spark-line.ts';
import { icon } from '../components/icons.ts';

/** The readout of the selected cell: what it is called, what it holds, in full. Inputs on a ruler are shown by the ruler instead.
 *  @fires open-record - The whole record was asked for. */
@customElement('cell-head')
export class CellHead extends LitElement {
  static override styles = css`
    :host {
      display: block;
      box-sizing: border-box;
      height: 96px;
      padding: 10px 20px;
      border-top: 1px solid var(--line2);
      overflow: auto;
      font: 14px/20px var(--sans);
      color: var(--ink);
    }
    /* As high as the rule, so that the sheet stands still while one goes from cell to cell. */
    @media (max-width: 660px) {
      :host {
        padding: 6px 16px 4px;
      }
    }
    @media (min-width: 661px) and (min-height: 621px) {
      :host {
        height: 123px;
        padding-top: 22px;
      }
    }
    .what,
    .hint {
      color: var(--ink2);
    }
    .what {
      white-space: nowrap;
      overflow: clip;
      text-overflow: ellipsis;
    }
    .what b {
      color: var(--accent);
      font-weight: 600;
      margin-right: 8px;
    }
    .name {
      font-family: var(--mono);
      font-size: 12.5px;
      margin-left: 8px;
      color: var(--ink3);
    }
    .readout {
      font-size: 36px;
      line-height: 42px;
      letter-spacing: -0.02em;
      white-space: nowrap;
    }
    .readout small {
      font-size: 18px;
      letter-spacing: 0;
      color: var(--ink2);
      margin-left: 6px;
    }
    .words {
      display: flex;
      gap: 10px;
      align-items: start;
      margin-top: 6px;
    }
    .words p {
      margin: 2px 0 0;
      overflow-wrap: anywhere;
    }
    .problem svg {
      color: var(--fail);
      width: 20px;
      height: 20px;
      flex: none;
      margin-top: 2px;
    }
    spark-line {
      width: 220px;
      height: 44px;
    }
    button {
      font: inherit;
      color: var(--accent);
      background: none;
      border: 0;
      padding: 2px 0;
      cursor: pointer;
      text-decoration: underline;
      text-underline-offset: 3px;
      white-space: nowrap;
    }
    button:focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
    }
  `;

  @property() address = '';
  @property() label = '';
  @property() name = '';
  @property({ attribute: false }) shown: ShownCell = { kind: 'empty' };

  protected override render(): TemplateResult {
    return html`<div class="what">
        <b>${this.address}</b
        >${this.label === this.address ? '' : this.label}${this.name ? html`<span class="name">${this.name}</span>` : nothing}
      </div>
      ${this.#body()}`;
  }

  #body(): TemplateResult {
    const shown = this.shown;
    const open = html`<button @click=${() => this.dispatchEvent(new CustomEvent('open-record'))}>Open in full</button>`;
    switch (shown.kind) {
      case 'number':
        return html`<div class="readout">${shown.number}<small>${shown.unit}</small></div>`;
      case 'verdict':
        return html`<div class="words">
          <verdict-chip status=${shown.status} word=${shown.word}></verdict-chip>
          <p>${unbroken(`${shown.reason} ${shown.note}`)}</p>
        </div>`;
      case 'problem':
        return html`<div class="words problem">
          ${icon('fail')}
          <p>${shown.message}</p>
        </div>`;
      case 'curve':
        return html`<div class="words">
          <spark-line .curve=${shown.curve}></spark-line>
          <p>${shown.text} ${open}</p>
        </div>`;
      case 'record':
        return html`<div class="words">
          <p><strong>${shown.title}</strong> ${shown.text} ${open}</p>
        </div>`;
      case 'text':
      case 'waiting':
        return html`<div class="words"><p>${shown.text}</p></div>`;
      case 'empty':
        return html`<div class="words">
          <p class="hint">
            Empty. Type a number with its unit, such as 12 L, or = to begin a formula. Help lists all functions.
          </p>
        </div>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'cell-head': CellHead;
  }
}
