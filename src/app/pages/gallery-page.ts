import { LitElement, html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import type { GalleryEntry, SheetImage } from '../../components/gallery/data.ts';
import '../../components/gallery/template-gallery.ts';
import { galleryEntries } from './gallery-entries.ts';
import { templateDocuments } from '../template-list.ts';
import { drawTemplates } from './template-images.ts';

/** The gallery of starter sheets in a dialog, with the pictures as they come.
 *  @slot - What else there is to choose, above them.
 *  @fires choose - `detail.id` was chosen.
 *  @fires empty - An empty document is wanted.
 *  @fires close - It was closed. */
@customElement('gallery-page')
export class GalleryPage extends LitElement {
  @property() heading = '';
  /** Offers an empty document, too. */
  @property({ type: Boolean }) empty = false;
  @state() private images: ReadonlyMap<string, SheetImage> = new Map();
  @state() private entries: readonly GalleryEntry[] | undefined;
  @state() private problem = '';
  #stop = new AbortController();

  override connectedCallback(): void {
    super.connectedCallback();
    this.#stop = new AbortController();
    this.#fill(this.#stop.signal).catch(
      (error: unknown) => (this.problem = error instanceof Error ? error.message : String(error)),
    );
  }

  async #fill(stopped: AbortSignal): Promise<void> {
    const documents = await templateDocuments();
    this.entries = galleryEntries(documents);
    await drawTemplates(documents, (images) => (this.images = images), stopped);
  }

  protected override updated(changed: PropertyValues): void {
    // After the dialog has opened, which gives the focus to its cross.
    if (changed.has('entries'))
      void this.updateComplete.then(() => this.renderRoot.querySelector('template-gallery')?.focus());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop.abort();
  }

  protected override render(): TemplateResult {
    return html`<page-dialog wide heading=${this.heading} @close=${() => this.#fire('close', {})}>
      <slot></slot>
      ${this.entries ? this.#gallery(this.entries) : html`<p role="status">${this.problem || 'Fetching the starter sheets…'}</p>`}
    </page-dialog>`;
  }

  #gallery(entries: readonly GalleryEntry[]): TemplateResult {
    return html`<template-gallery
      .entries=${entries}
      .images=${this.images}
      ?empty=${this.empty}
      @choose=${(event: CustomEvent<{ id: string }>) => this.#fire('choose', event.detail)}
      @empty=${() => this.#fire('empty', {})}
    ></template-gallery>`;
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
