import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Status } from '../../../functions/values/verdict.ts';
import { icon } from '../icons.ts';

/** A verdict in short: outline, word and colour say the same. */
@customElement('verdict-chip')
export class VerdictChip extends LitElement {
  static override styles = css`
    :host {
      display: inline-flex;
      flex: none;
    }
    span {
      display: inline-flex;
      align-items: center;
      gap: 4px;
      border: 1px solid;
      border-radius: 10px;
      padding: 0 8px 0 5px;
      font: 600 12.5px/18px var(--sans);
      white-space: nowrap;
    }
    .good {
      color: var(--good);
      background: var(--good-bg);
      border-color: var(--good-line);
    }
    .caution {
      color: var(--caution);
      background: var(--caution-bg);
      border-color: var(--caution-line);
    }
    .fail {
      color: var(--fail);
      background: var(--fail-bg);
      border-color: var(--fail-line);
    }
    svg {
      width: 14px;
      height: 14px;
    }
  `;

  @property() status: Status = 'good';
  @property() word = '';

  protected override render(): TemplateResult {
    return html`<span class=${this.status}>${icon(this.status)}${this.word}</span>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'verdict-chip': VerdictChip;
  }
}
