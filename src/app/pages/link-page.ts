import { LitElement, css, html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import { icon } from '../../components/icons.ts';
import type { Refusal } from '../../document/command.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { linkTo } from '../../exchange/link/link.ts';
import { formatNumber } from '../../units/show.ts';
import './copy-button.ts';

/** The document as a link, or why it makes none.
 *  @fires close - It was closed. */
@customElement('link-page')
export class LinkPage extends LitElement {
  static override styles = css`
    :host {
      font: 14px/20px var(--sans);
      color: var(--ink);
    }
    p {
      margin: 0 0 12px;
    }
    label {
      display: grid;
      gap: 4px;
      margin-bottom: 12px;
      color: var(--ink2);
      font-size: 12.5px;
    }
    textarea {
      box-sizing: border-box;
      width: 100%;
      height: 120px;
      resize: vertical;
      padding: 8px 10px;
      border: 1px solid var(--ink3);
      border-radius: 5px;
      background: var(--paper);
      color: var(--ink);
      font: 12.5px/18px var(--mono);
      word-break: break-all;
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
    }
    .refused {
      display: grid;
      grid-template-columns: 18px minmax(0, 1fr);
      gap: 8px;
      margin: 0;
    }
    .refused svg {
      width: 18px;
      height: 18px;
      margin-top: 1px;
      color: var(--caution);
    }
  `;

  @property({ attribute: false }) document!: OctavoDocument;
  @state() private made: string | Refusal | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('document')) return;
    const { document } = this;
    void linkTo(document, location.href).then((made) => {
      if (this.document === document) this.made = made;
    });
  }

  protected override render(): TemplateResult {
    return html`<page-dialog
      heading="Link to this document"
      @close=${() => this.dispatchEvent(new CustomEvent('close'))}
    >
      ${this.#body()}
    </page-dialog>`;
  }

  #body(): TemplateResult {
    const { made } = this;
    if (made === undefined) return html`<p role="status">Making the link…</p>`;
    if (typeof made !== 'string')
      return html`<p class="refused" role="alert">${icon('caution')}<span>${made.refused}</span></p>`;
    return html`
      <p>
        The link holds the whole document, with all its sheets. Nothing is sent anywhere: what stands behind the # never
        leaves the browser. Whoever has the link can read it, and opens a copy.
      </p>
      <label
        >${formatNumber(made.length, 6)} characters
        <textarea
          readonly
          .value=${made}
          @focus=${(event: Event) => (event.target as HTMLTextAreaElement).select()}
        ></textarea>
      </label>
      <copy-button words="Copy the link" .text=${() => made}></copy-button>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'link-page': LinkPage;
  }
}
