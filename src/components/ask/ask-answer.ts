import { LitElement, html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { UnitSystem } from '../../document/types.ts';
import { alignedStyles } from '../aligned.ts';
import '../plot/curve-plot.ts';
import { tableView } from '../record-card/table-view.ts';
import { formStyles } from '../form-styles.ts';
import type { Answer, Bar, Branch, Place, Setting } from './data.ts';
import { askStyles } from './styles.ts';
import './value-field.ts';

/** What was found, as words, pictures and tables.
 *  @fires set - `detail.sets` are to be typed into their cells.
 *  @fires go - `detail` is the cell to show. */
@customElement('ask-answer')
export class AskAnswer extends LitElement {
  static override styles = [formStyles, askStyles, alignedStyles];

  @property({ attribute: false }) answer!: Answer;
  @property() system: UnitSystem = 'metric';

  protected override render(): TemplateResult {
    const { found, field, curves, bars, tree, steps, tables } = this.answer;
    return html`${
      found.length === 0
        ? nothing
        : html`<ul class="found">
            ${found.map(
              ({ words, consequence, sets }) =>
                html`<li><b>${words}</b><span>${consequence}</span> ${this.#setter(sets, words)}</li>`,
            )}
          </ul>`
    }
    ${
      steps
        ? html`<h3>Step by step</h3>
            <ol>
              ${steps.map(
                ({ words, turns }) =>
                  html`<li>
                    <b>${words}</b>
                    <ul class="found">
                      ${turns.map(
                        ({ label, text, reason, ...place }) =>
                          html`<li>${this.#link(label, place)} <b>${text}</b> <span>${reason}</span></li>`,
                      )}
                    </ul>
                    ${turns.length === 0 ? html`<p class="quiet">Turns no verdict alone: another step needs it.</p>` : nothing}
                  </li>`,
              )}
            </ol>`
        : nothing
    }
    ${
      field
        ? html`<value-field
            .data=${field}
            system=${this.system}
            @set=${(event: CustomEvent<{ sets: readonly Setting[] }>) => this.#set(event.detail.sets)}
          ></value-field>`
        : nothing
    }
    ${curves ? html`<curve-plot .data=${curves} height="260"></curve-plot>` : nothing}
    ${bars.map(
      ({ title, rows }) =>
        html`<h3>${title}</h3>
          <div class="bars">${rows.map((bar) => this.#bar(bar))}</div>`,
    )}
    ${
      tree
        ? html`<details>
            <summary>From cell to cell</summary>
            <ul class="tree">
              ${this.#branch(tree)}
            </ul>
          </details>`
        : nothing
    }
    ${tables
      .filter(({ isForSheet }) => !isForSheet)
      .map(
        ({ table, sets }) =>
          html`<h3>${table.title}</h3>
            ${tableView(table, this.system, sets && ((row) => this.#setter(sets[row] ?? [])))}`,
      )}`;
  }

  #bar({ label, share, text, place, status }: Bar): TemplateResult {
    return html`${place ? this.#link(label, place) : html`<span>${label}</span>`}
      <svg aria-hidden="true">
        ${svg`<rect class=${status ?? ''} height="10" width="${Math.min(Math.max(share, 0), 1) * 100}%" />`}
      </svg>
      <span>${text}</span>`;
  }

  #branch({ label, text, branches, ...place }: Branch): TemplateResult {
    return html`<li>
      ${this.#link(label, place)} <span class="quiet">${text}</span>
      ${
        branches.length > 0
          ? html`<ul>
              ${branches.map((each) => this.#branch(each))}
            </ul>`
          : nothing
      }
    </li>`;
  }

  #link(label: string, { sheet, cell }: Place): TemplateResult {
    return html`<button
      type="button"
      class="link"
      @click=${() => this.dispatchEvent(new CustomEvent('go', { detail: { sheet, cell } }))}
    >
      ${label}
    </button>`;
  }

  #setter(
    sets: readonly Setting[],
    words = sets.map(({ label, text }) => `${label} ${text}`).join(', '),
  ): TemplateResult {
    return html`<button type="button" aria-label=${`Set it: ${words}`} @click=${() => this.#set(sets)}>Set it</button>`;
  }

  #set(sets: readonly Setting[]): void {
    this.dispatchEvent(new CustomEvent('set', { detail: { sets } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ask-answer': AskAnswer;
  }
}
