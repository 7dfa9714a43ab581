import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controlStyles } from '../control-styles.ts';

/** What is asked: a text to type where `value` is given, otherwise only agreement. */
export interface Question {
  readonly title: string;
  readonly text?: string;
  readonly value?: string;
  readonly label?: string;
  /** Texts that may be meant, offered while one types. */
  readonly offers?: readonly string[];
  readonly confirm: string;
  readonly cancel?: string;
  /** Why a text cannot be taken: the question then stays open with what was typed. */
  readonly check?: (text: string) => string | undefined;
}

/** Asks one thing in a modal dialog; Escape and the second button answer "no". */
@customElement('ask-dialog')
export class AskDialog extends LitElement {
  static override styles = [
    controlStyles,
    css`
      dialog {
        border: 1px solid var(--line2);
        border-radius: 5px;
        background: var(--paper);
        color: var(--ink);
        font: 14px/20px var(--sans);
        padding: 20px;
        width: min(440px, calc(100vw - 64px));
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 35%);
      }
      h2 {
        font-size: 18px;
        line-height: 24px;
        font-weight: 500;
        margin: 0 0 8px;
      }
      p {
        margin: 0 0 16px;
        color: var(--ink2);
      }
      label {
        display: grid;
        gap: 4px;
        color: var(--ink2);
        font-size: 12.5px;
      }
      input {
        font: 14px/20px var(--sans);
        color: var(--ink);
        background: var(--paper);
        border: 1px solid var(--ink3);
        border-radius: 5px;
        padding: 6px 10px;
      }
      /* In the place of the border, not a second one round it. */
      input:focus-visible {
        outline-offset: -1px;
      }
      .refusal {
        color: var(--fail);
        margin: 6px 0 0;
      }
      .answers {
        display: flex;
        justify-content: flex-end;
        gap: 8px;
        margin-top: 20px;
      }
      .main {
        background: var(--accent);
        border-color: var(--accent);
        color: var(--on-accent);
      }
    `,
  ];

  @state() private question: Question | undefined;
  @state() private refusal = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('input') private input!: HTMLInputElement | null;
  #answer: ((answer: string | undefined) => void) | undefined;

  /** Resolves to the text typed (empty where none is asked for), or to `undefined` when declined. */
  async ask(question: Question): Promise<string | undefined> {
    this.#settle(undefined);
    this.question = question;
    this.refusal = '';
    await this.updateComplete;
    // What was typed when the same was last asked is gone, though the question is the same.
    if (this.input) this.input.value = question.value ?? '';
    this.dialog.showModal();
    this.input?.select();
    return new Promise((resolve) => {
      this.#answer = resolve;
    });
  }

  protected override render(): TemplateResult {
    const question = this.question;
    return html`<dialog aria-labelledby="title" @close=${this.#closed}>
      ${
        question
          ? html`<form method="dialog" @submit=${this.#submit}>
              <h2 id="title">${question.title}</h2>
              ${question.text ? html`<p>${question.text}</p>` : nothing}
              ${
                question.value === undefined
                  ? nothing
                  : html`<label
                        >${question.label ?? ''}<input
                          .value=${question.value}
                          autocomplete="off"
                          list=${question.offers ? 'offers' : nothing}
                      /></label>
                      <datalist id="offers">
                        ${question.offers?.map((text) => html`<option>${text}</option>`)}
                      </datalist>`
              }
              ${this.refusal ? html`<p class="refusal" role="alert">${this.refusal}</p>` : nothing}
              <div class="answers">
                <button class="framed" type="button" @click=${() => this.dialog.close()}>
                  ${question.cancel ?? 'Cancel'}
                </button>
                <button class="framed main" type="submit">${question.confirm}</button>
              </div>
            </form>`
          : nothing
      }
    </dialog>`;
  }

  /** The news of a closing comes late, perhaps when the next question is already open, which it must not answer. */
  readonly #closed = (): void => {
    if (!this.dialog.open) this.#settle(undefined);
  };

  readonly #submit = (event: Event): void => {
    event.preventDefault();
    const text = this.input?.value ?? '';
    this.refusal = this.question?.check?.(text) ?? '';
    if (this.refusal) return;
    const answer = this.#answer;
    this.#answer = undefined;
    this.dialog.close();
    answer?.(text);
  };

  #settle(answer: string | undefined): void {
    const waiting = this.#answer;
    this.#answer = undefined;
    waiting?.(answer);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ask-dialog': AskDialog;
  }
}
