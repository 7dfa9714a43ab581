import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Left, Taken } from '../../document/take-over/types.ts';
import { formStyles } from '../form-styles.ts';

/** What a new sheet took over from another, and what found no place in it.
 *  @fires go - A cell of the new sheet is wanted; `detail.cell`. */
@customElement('taken-list')
export class TakenList extends LitElement {
  static override styles = [
    formStyles,
    css`
      h3 {
        margin: 16px 0 4px;
      }
      h3:first-child {
        margin-top: 0;
      }
      p {
        margin: 4px 0;
      }
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) fit-content(140px) 56px;
        gap: 4px 12px;
        align-items: center;
        padding: 3px 0;
        border-bottom: 1px solid var(--line);
      }
      .left li {
        grid-template-columns: minmax(0, 1fr) fit-content(140px);
      }
      small {
        grid-column: 1 / -1;
      }
      .text {
        text-align: right;
        overflow-wrap: anywhere;
      }
      button {
        padding: 0;
        color: var(--accent);
        font: 12.5px/18px var(--mono);
      }
    `,
  ];

  @property({ attribute: false }) taken: readonly Taken[] = [];
  @property({ attribute: false }) left: readonly Left[] = [];
  /** How much more found no place that still stood as its starter sheet gave it. */
  @property({ type: Number }) asMade = 0;
  /** Sentences about the drivers. */
  @property({ attribute: false }) told: readonly string[] = [];

  protected override render(): TemplateResult {
    const { taken, left, asMade, told } = this;
    return html`${told.length === 0 ? nothing : html`<h3>To know</h3>`}
      ${told.map((sentence) => html`<p>${sentence}</p>`)}
      ${
        left.length === 0
          ? nothing
          : html`<h3>Found no place: ${left.length}</h3>
              <ul class="left">
                ${left.map(
                  ({ what, text, why }) =>
                    html`<li><span>${what}</span><span class="text">${text}</span><small>${why}</small></li>`,
                )}
              </ul>`
      }
      ${
        asMade === 0
          ? nothing
          : html`<p class="quiet">
              ${left.length === 0 ? 'Whatever you changed found its place.' : nothing} ${String(asMade)}
              ${left.length === 0 ? '' : 'more '}inputs of the old sheet, still as its starter sheet gave them, have no
              place here.
            </p>`
      }
      <h3>Taken over: ${taken.length}</h3>
      ${taken.length === 0 ? html`<p>Nothing in the new sheet is called as in the one before.</p>` : nothing}
      <ul>
        ${taken.map(
          ({ what, text, cell }) =>
            html`<li>
              <span>${what}</span><span class="text">${text}</span>
              <button aria-label="Go to ${cell}, ${what}" @click=${() => this.#go(cell)}>${cell}</button>
            </li>`,
        )}
      </ul>`;
  }

  #go(cell: string): void {
    this.dispatchEvent(new CustomEvent('go', { detail: { cell } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'taken-list': TakenList;
  }
}
