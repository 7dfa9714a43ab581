import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Left, Taken } from '../../document/take-over/types.ts';

/** What a new sheet took over from another, and what found no place in it.
 *  @fires go - A cell of the new sheet is wanted; `detail.cell`. */
@customElement('taken-list')
export class TakenList extends LitElement {
  static override styles = css`
    :host {
      display: block;
      font: 14px/20px var(--sans);
      color: var(--ink);
    }
    h3 {
      margin: 16px 0 4px;
      font-size: 15px;
      line-height: 20px;
      font-weight: 600;
    }
    h3:first-child {
      margin-top: 0;
    }
    p {
      margin: 4px 0;
      max-width: 68ch;
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
      color: var(--ink2);
      font-size: 12.5px;
      line-height: 18px;
    }
    .quiet {
      color: var(--ink2);
      font-size: 12.5px;
      line-height: 18px;
    }
    .text {
      text-align: right;
      overflow-wrap: anywhere;
    }
    button {
      font: 12.5px/18px var(--mono);
      min-height: 28px;
      color: var(--accent);
      background: none;
      border: 1px solid var(--line2);
      border-radius: 5px;
      cursor: pointer;
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 1px;
    }
    @media (pointer: coarse) {
      button {
        min-height: 44px;
      }
    }
  `;

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
