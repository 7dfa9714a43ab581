import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../components/dialog/page-dialog.ts';
import type { SheetImage } from '../components/gallery/data.ts';
import '../components/gallery/template-gallery.ts';
import { galleryEntries, templateDocuments } from './template-list.ts';
import { drawTemplates } from './template-images.ts';

/** The gallery of starter sheets in a dialog, with the pictures as they come.
 *  @fires choose - `detail.id` was chosen.
 *  @fires empty - An empty document is wanted.
 *  @fires close - It was closed. */
@customElement('gallery-page')
export class GalleryPage extends LitElement {
  @property() heading = '';
  /** Offers an empty document, too. */
  @property({ type: Boolean }) empty = false;
  @state() private images: ReadonlyMap<string, SheetImage> = new Map();
  readonly #entries = galleryEntries();
  #stop = new AbortController();

  override connectedCallback(): void {
    super.connectedCallback();
    this.#stop = new AbortController();
    void drawTemplates(templateDocuments(), (images) => (this.images = images), this.#stop.signal);
  }

  protected override firstUpdated(): void {
    // After the dialog has opened, which gives the focus to its cross.
    void this.updateComplete.then(() => this.renderRoot.querySelector('template-gallery')?.focus());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop.abort();
  }

  protected override render(): TemplateResult {
    return html`<page-dialog wide heading=${this.heading} @close=${() => this.#fire('close', {})}>
      <template-gallery
        .entries=${this.#entries}
        .images=${this.images}
        ?empty=${this.empty}
        @choose=${(event: CustomEvent<{ id: string }>) => this.#fire('choose', event.detail)}
        @empty=${() => this.#fire('empty', {})}
      ></template-gallery>
    </page-dialog>`;
  }

  #fire(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gallery-page': GalleryPage;
  }
}
