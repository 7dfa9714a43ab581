import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import type { WishShown } from './data.ts';

const EXAMPLE = 'a two-way under 300 that reaches 45 Hz and plays 103 dB';

/** What is wanted in the reader's own words, and how they were taken: what was understood stands in the form below, where it can
 *  be changed.
 *  @fires wish - `detail.text` is to be read. */
@customElement('shortlist-wish')
export class ShortlistWish extends LitElement {
  static override styles = [
    formStyles,
    css`
      form {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
      }
      label {
        display: flex;
        flex: 1 1 320px;
        gap: 8px;
        align-items: center;
        white-space: nowrap;
      }
      p {
        margin: 6px 0 0;
        max-width: none;
      }
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        padding: 0;
        list-style: none;
      }
      q {
        color: var(--ink2);
      }
      @media (max-width: 500px) {
        label {
          flex-wrap: wrap;
        }
      }
    `,
  ];

  @property() text = '';
  @property({ attribute: false }) taken: WishShown | undefined;

  /** What stands there is written over by what is typed. */
  override focus(): void {
    this.renderRoot.querySelector('input')?.select();
  }

  protected override render(): TemplateResult {
    return html`<form @submit=${this.#read}>
        <label
          >In your words
          <input name="wish" autocomplete="off" placeholder=${EXAMPLE} .value=${this.text} aria-describedby="taken"
        /></label>
        <button class="main">Find</button>
      </form>
      <div id="taken" role="status">${this.taken ? this.#taken(this.taken) : nothing}</div>`;
  }

  #taken({ understood, left }: WishShown): TemplateResult {
    return html`${
      understood.length === 0
        ? html`<p>Nothing of this was understood. Write it as in “${EXAMPLE}”, or fill the gaps below.</p>`
        : html`<ul aria-label="Understood">
            ${understood.map(({ words, means }) => html`<li><q>${words}</q>: ${means}</li>`)}
          </ul>`
    }${
      left.length === 0 || understood.length === 0
        ? nothing
        : html`<p class="wrong">
            Left out, not understood: ${left.map((words, index) => html`${index > 0 ? ', ' : ''}<q>${words}</q>`)}.
          </p>`
    }`;
  }

  #read = (event: Event): void => {
    event.preventDefault();
    const text = this.renderRoot.querySelector('input')?.value.trim() ?? '';
    this.dispatchEvent(new CustomEvent('wish', { detail: { text: text === '' ? EXAMPLE : text } }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'shortlist-wish': ShortlistWish;
  }
}
