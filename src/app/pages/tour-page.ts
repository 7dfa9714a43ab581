import { LitElement, html, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import '../../components/tour/tour-dialog.ts';
import { tourStops } from './tour-stops.ts';

/** The tour of the page in which it stands.
 *  @fires close - It is over. */
@customElement('tour-page')
export class TourPage extends LitElement {
  protected override render(): TemplateResult {
    const page = this.getRootNode();
    return html`<tour-dialog
      .stops=${tourStops(page instanceof ShadowRoot ? page : document)}
      @close=${() => this.dispatchEvent(new CustomEvent('close'))}
    ></tour-dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tour-page': TourPage;
  }
}
