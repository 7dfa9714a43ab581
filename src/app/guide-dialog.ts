import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import '../components/function-guide/function-guide.ts';
import type { Functions } from '../formula/types.ts';
import { icon } from '../components/icons.ts';

/** The function guide in a dialog.
 *  @fires close - It was closed.
 *  @fires use-example - A worked example is wanted in the selected cell; `detail.formula`. */
@customElement('guide-dialog')
export class GuideDialog extends LitElement {
  static override styles = css`
    dialog {
      width: min(1080px, calc(100vw - 48px));
      height: min(760px, calc(100dvh - 48px));
      padding: 0;
      border: 1px solid var(--line2);
      border-radius: 5px;
      background: var(--paper);
      color: var(--ink);
      font: 14px/20px var(--sans);
      overflow: clip;
    }
    dialog[open] {
      display: flex;
      flex-direction: column;
    }
    dialog::backdrop {
      background: rgb(0 0 0 / 35%);
    }
    .head {
      display: flex;
      justify-content: space-between;
      align-items: center;
      padding: 10px 12px 10px 20px;
      border-bottom: 1px solid var(--line2);
    }
    h2 {
      margin: 0;
      font-size: 18px;
      line-height: 24px;
      font-weight: 500;
    }
    button {
      all: unset;
      cursor: pointer;
      min-width: 32px;
      min-height: 32px;
      display: grid;
      place-items: center;
      border-radius: 5px;
    }
    button:focus-visible {
      outline: 2px solid var(--accent);
    }
    svg {
      width: 18px;
      height: 18px;
    }
    function-guide {
      flex: 1;
      min-height: 0;
    }
  `;

  @property() at = '';
  @property({ attribute: false }) functions: Functions = new Map();
  @query('dialog') private dialog!: HTMLDialogElement;

  protected override firstUpdated(): void {
    this.dialog.showModal();
  }

  protected override render(): TemplateResult {
    return html`<dialog aria-labelledby="title" @close=${() => this.dispatchEvent(new CustomEvent('close'))}>
      <div class="head">
        <h2 id="title">Function guide</h2>
        <button aria-label="Close" @click=${() => this.dialog.close()}>${icon('close')}</button>
      </div>
      <function-guide
        function=${this.at}
        .functions=${this.functions}
        @use-example=${(event: CustomEvent<{ formula: string }>) =>
          this.dispatchEvent(new CustomEvent('use-example', { detail: event.detail }))}
      ></function-guide>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'guide-dialog': GuideDialog;
  }
}
