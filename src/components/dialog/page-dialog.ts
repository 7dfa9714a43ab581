import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { icon } from '../icons.ts';

/** A modal page over the sheet, with a heading and a cross; open for as long as it stands in the document. The element
 *  that had the focus before has it again afterwards.
 *  @slot - The page.
 *  @slot tools - Buttons beside the cross.
 *  @fires close - It was closed, by the cross or by Escape. */
@customElement('page-dialog')
export class PageDialog extends LitElement {
  static override styles = css`
    dialog {
      box-sizing: border-box;
      width: min(720px, calc(100vw - 32px));
      max-height: calc(100dvh - 48px);
      padding: 0;
      border: 1px solid var(--line2);
      border-radius: 5px;
      background: var(--paper);
      color: var(--ink);
      font: 14px/20px var(--sans);
      overflow: clip;
    }
    :host([wide]) dialog {
      width: min(1160px, calc(100vw - 32px));
    }
    :host([filled]) dialog {
      height: 760px;
    }
    /* What stands below would give answers away. */
    :host([covering]) dialog::backdrop {
      background: var(--ground);
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
    @media (pointer: coarse) {
      button {
        min-width: 44px;
        min-height: 44px;
      }
    }
    :focus-visible,
    ::slotted(button:focus-visible) {
      outline: 2px solid var(--accent);
      outline-offset: -2px;
    }
    svg {
      width: 18px;
      height: 18px;
    }
    .tools {
      display: flex;
      align-items: center;
      gap: 8px;
    }
    ::slotted(button[slot='tools']) {
      font: inherit;
      min-height: 32px;
      padding: 0 12px;
      border: 1px solid var(--line2);
      border-radius: 5px;
      background: var(--paper);
      color: var(--ink);
      cursor: pointer;
      white-space: nowrap;
    }
    .page {
      flex: auto;
      min-height: 0;
      overflow-y: auto;
      padding: 16px 20px 20px;
    }
    :host([filled]) .page {
      display: grid;
      padding: 0;
      overflow: clip;
    }
  `;

  @property() heading = '';
  /** The page is as large as it can be and scrolls its own parts. */
  @property({ type: Boolean, reflect: true }) filled = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  protected override firstUpdated(): void {
    this.dialog.showModal();
  }

  /** As the cross does. */
  close(): void {
    this.dialog.close();
  }

  protected override render(): TemplateResult {
    return html`<dialog aria-labelledby="title" @close=${() => this.dispatchEvent(new CustomEvent('close'))}>
      <div class="head">
        <h2 id="title">${this.heading}</h2>
        <div class="tools">
          <slot name="tools"></slot>
          <button aria-label="Close" @click=${() => this.close()}>${icon('close')}</button>
        </div>
      </div>
      <div class="page" tabindex=${this.filled ? nothing : 0} role="region" aria-label=${this.heading}>
        <slot></slot>
      </div>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'page-dialog': PageDialog;
  }
}
