import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import type { GalleryEntry, SheetImage } from './data.ts';
import { foundEntries, groupedEntries } from './find.ts';
import { neighbour } from './neighbour.ts';
import './sheet-image.ts';
import { galleryStyles } from './styles.ts';

/** The starter sheets as cards with a picture of each, grouped by what one wants to know, found by words. The arrows go from
 *  card to card, Enter takes one.
 *  @fires choose - `detail.id` was chosen.
 *  @fires empty - A document without anything in it is wanted. */
@customElement('template-gallery')
export class TemplateGallery extends LitElement {
  static override styles = [formStyles, galleryStyles];
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };

  @property({ attribute: false }) entries: readonly GalleryEntry[] = [];
  /** By id; what is not there yet is drawn when it comes. */
  @property({ attribute: false }) images: ReadonlyMap<string, SheetImage> = new Map();
  /** Offers a document without anything in it, too. */
  @property({ type: Boolean }) empty = false;
  @state() private search = '';

  protected override render(): TemplateResult {
    const found = foundEntries(this.entries, this.search);
    const { length } = found;
    return html`<div class="search">
        <input
          type="search"
          aria-label="Search starter sheets"
          placeholder="Search: port, chair, saw list"
          .value=${this.search}
          @input=${(event: Event) => (this.search = (event.target as HTMLInputElement).value)}
          @keydown=${this.#searchKey}
        />
        ${this.empty ? html`<button @click=${() => this.dispatchEvent(new CustomEvent('empty'))}>Empty document</button>` : nothing}
      </div>
      <p class="count" role="status">
        ${
          length === 0
            ? 'No starter sheet says that: try another word.'
            : `${String(length)} starter ${length === 1 ? 'sheet' : 'sheets'}`
        }
      </p>
      <div @keydown=${this.#cardKey}>
        ${groupedEntries(found).map(
          ([group, entries]) =>
            html`<section aria-label=${group}>
              <h3>${group}</h3>
              <ul>
                ${entries.map((entry) => this.#card(entry))}
              </ul>
            </section>`,
        )}
      </div>`;
  }

  #card(entry: GalleryEntry): TemplateResult {
    const { id, title, summary } = entry;
    const image = this.images.get(id);
    return html`<li class="card">
      <sheet-image aria-hidden="true" .image=${image}></sheet-image>
      <div class="words">
        <button
          class="title"
          data-id=${id}
          aria-describedby="summary-${id} picture-${id}"
          @click=${() => this.#choose(id)}
        >
          ${title}
        </button>
        <p class="summary" id="summary-${id}">${summary}</p>
        <p class="unseen" id="picture-${id}">${imageWords(image)}</p>
      </div>
    </li>`;
  }

  #cards(): HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLButtonElement>('button.title')];
  }

  readonly #searchKey = (event: KeyboardEvent): void => {
    const [first, ...others] = this.#cards();
    if (!first || (event.key !== 'ArrowDown' && event.key !== 'Enter')) return;
    event.preventDefault();
    if (event.key === 'Enter' && others.length === 0) first.click();
    else first.focus();
  };

  readonly #cardKey = (event: KeyboardEvent): void => {
    const cards = this.#cards();
    const at = cards.indexOf(event.target as HTMLButtonElement);
    if (at < 0 || event.ctrlKey || event.metaKey || event.altKey) return;
    const places = cards.map((card) => card.getBoundingClientRect());
    const next = neighbour(places, at, event.key);
    if (next === at) {
      if (event.key === 'ArrowUp') this.renderRoot.querySelector('input')?.focus();
      return;
    }
    event.preventDefault();
    cards[next]?.focus();
  };

  #choose(id: string): void {
    this.dispatchEvent(new CustomEvent('choose', { detail: { id } }));
  }
}

/** What the picture shows, for those who do not see it. */
function imageWords(image: SheetImage | undefined): string {
  if (!image) return '';
  const counted = (['good', 'caution', 'fail'] as const).flatMap((status) => {
    const count = image.sections.reduce((sum, section) => sum + section[status], 0);
    return count === 0 ? [] : [`${String(count)} ${status}`];
  });
  const sections = `Sections: ${image.sections.map(({ title }) => title).join('; ')}.`;
  return counted.length === 0 ? sections : `${sections} Verdicts as it comes: ${counted.join(', ')}.`;
}

declare global {
  interface HTMLElementTagNameMap {
    'template-gallery': TemplateGallery;
  }
}
