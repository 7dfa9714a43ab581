import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import { askStyles } from './styles.ts';

/** The answer in a sentence, or how far the search has come.
 *  @fires stop - It need not be looked for any longer. */
@customElement('ask-told')
export class AskTold extends LitElement {
  static override styles = [formStyles, askStyles];

  @property() said = '';
  @property({ type: Boolean }) wrong = false;
  /** From 0 to 1 while it is looked for. */
  @property({ attribute: false }) progress: number | undefined;

  protected override render(): TemplateResult {
    return html`<div class="bar said">
      <span role="status" class=${this.wrong ? 'wrong' : ''}>${this.said}</span>
      ${
        this.progress === undefined
          ? nothing
          : html`<progress max="1" .value=${this.progress} aria-label="Done"></progress>
              <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('stop'))}>Stop</button>`
      }
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ask-told': AskTold;
  }
}
