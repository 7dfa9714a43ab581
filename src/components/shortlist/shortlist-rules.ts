import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import type { RuleShown, Wanted } from './data.ts';

/** The rules that rows are judged by, each to be read and changed; emptied, one is the usual again.
 *  @fires rules - `detail.rules` are the texts that were typed over the usual ones. */
@customElement('shortlist-rules')
export class ShortlistRules extends LitElement {
  static override styles = [
    formStyles,
    css`
      table {
        border-collapse: collapse;
      }
      th,
      td {
        padding: 2px 12px 2px 0;
        text-align: start;
        font-weight: 400;
      }
      thead th {
        color: var(--ink2);
        font-size: 12.5px;
      }
      input:not([type='checkbox']),
      select {
        width: 110px;
      }
      .own {
        border-color: var(--accent);
      }
      @media (max-width: 500px) {
        th,
        td {
          padding-inline-end: 6px;
        }
        input:not([type='checkbox']),
        select {
          width: 82px;
          padding-inline: 6px;
        }
      }
    `,
  ];

  @property({ attribute: false }) rules: readonly RuleShown[] = [];
  @property({ attribute: false }) typed: Wanted['rules'] = {};

  protected override render(): TemplateResult {
    return html`<table @change=${this.#changed}>
        <thead>
          <tr>
            <th scope="col">Rule</th>
            <th scope="col">by the rule</th>
            <th scope="col">stretched</th>
          </tr>
        </thead>
        <tbody>
          ${this.rules.map((rule) => this.#row(rule))}
        </tbody>
      </table>
      ${
        Object.keys(this.typed).length === 0
          ? nothing
          : html`<p>
              <button @click=${() => this.dispatchEvent(new CustomEvent('rules', { detail: { rules: {} } }))}>
                Back to the usual rules
              </button>
            </p>`
      }`;
  }

  #row(rule: RuleShown): TemplateResult {
    const { name, label, usual, choices, blank = '' } = rule;
    const typed = this.typed[name] ?? [];
    return html`<tr>
      <th scope="row">${label}</th>
      ${[0, 1].map((index) => {
        const own = typed[index] ?? '';
        const text = own === '' ? usual[index] : own;
        if (text === undefined) return html`<td></td>`;
        const said = index === 0 ? label : `${label}, stretched`;
        return html`<td>
          ${
            choices
              ? html`<select name="${name} ${index}" aria-label=${said}>
                  ${choices.map((each) => html`<option ?selected=${each === text}>${each}</option>`)}
                </select>`
              : html`<input
                  name="${name} ${index}"
                  class=${own === '' ? '' : 'own'}
                  autocomplete="off"
                  aria-label=${said}
                  placeholder=${blank}
                  .value=${text}
                />`
          }
        </td>`;
      })}
    </tr>`;
  }

  #changed = (): void => {
    const textIn = (name: string): string =>
      this.renderRoot.querySelector<HTMLInputElement | HTMLSelectElement>(`[name="${name}"]`)?.value.trim() ?? '';
    const typed = this.rules.flatMap(({ name, usual }) => {
      const own = usual.map((text, index) => {
        const now = textIn(`${name} ${index}`);
        return now === text ? '' : now;
      });
      return own.every((text) => text === '') ? [] : [[name, own] as const];
    });
    const rules = { ...this.typed };
    for (const { name } of this.rules) delete rules[name];
    this.dispatchEvent(new CustomEvent('rules', { detail: { rules: { ...rules, ...Object.fromEntries(typed) } } }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'shortlist-rules': ShortlistRules;
  }
}
