import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Stage } from '../../document/take-over/whole-way.ts';
import { formStyles } from '../form-styles.ts';
import './taken-list.ts';

/** The sheets of a way, one below the other, each with what it took over.
 *  @fires go - A cell of one of them is wanted; `detail.sheet`, `detail.cell`. */
@customElement('taken-stages')
export class TakenStages extends LitElement {
  static override styles = [
    formStyles,
    css`
      p {
        margin: 0 0 12px;
      }
      details {
        border-top: 1px solid var(--line);
      }
      summary {
        padding: 8px 0;
        cursor: pointer;
      }
      summary small {
        display: inline;
      }
      taken-list {
        padding: 0 0 12px 16px;
      }
    `,
  ];

  @property({ attribute: false }) stages: readonly Stage[] = [];

  protected override render(): TemplateResult {
    return html`<p>
        Change what you like, then go the same way again: what was changed is taken on as far as the basket.
      </p>
      ${this.stages.map((stage) => this.#stage(stage))}`;
  }

  #stage({ sheet, name, stood, taken, told }: Stage): TemplateResult {
    const count = taken.length === 0 ? 'nothing has changed' : `${String(taken.length)} taken over`;
    return html`<details ?open=${told.length > 0}>
      <summary>${name} <small>${stood ? 'filled anew' : 'new'}, ${count}</small></summary>
      ${
        taken.length + told.length === 0
          ? nothing
          : html`<taken-list
              .taken=${taken}
              .told=${told}
              @go=${(event: CustomEvent<{ cell: string }>) => this.#go(sheet, event.detail.cell)}
            ></taken-list>`
      }
    </details>`;
  }

  #go(sheet: string, cell: string): void {
    this.dispatchEvent(new CustomEvent('go', { detail: { sheet, cell } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'taken-stages': TakenStages;
  }
}
