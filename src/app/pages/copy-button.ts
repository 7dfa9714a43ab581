import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { copyText } from '../hand-out.ts';

/** Copies a text when pressed, and says so. */
@customElement('copy-button')
export class CopyButton extends LitElement {
  static override styles = css`
    button {
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
    button:hover {
      background: color-mix(in srgb, var(--ink) 7%, var(--paper));
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
    }
    @media (pointer: coarse) {
      button {
        min-height: 44px;
      }
    }
  `;

  @property() words = 'Copy as text';
  @property({ attribute: false }) text: () => string = () => '';
  @state() private said = '';

  protected override render(): TemplateResult {
    return html`<button type="button" @click=${this.#copy}>
      <span role="status">${this.said || this.words}</span>
    </button>`;
  }

  #copy = async (): Promise<void> => {
    this.said = (await copyText(this.text())) ? 'Copied' : 'The browser refused to copy';
    setTimeout(() => (this.said = ''), 3000);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'copy-button': CopyButton;
  }
}
