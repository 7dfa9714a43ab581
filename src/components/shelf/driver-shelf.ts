import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { newId } from '../../document/create.ts';
import type { DriverEntry, DriverRow } from '../../document/shelf/entry.ts';
import type { Reading } from '../../document/shelf/reading.ts';
import type { UnitSystem } from '../../document/types.ts';
import './driver-form.ts';
import './driver-list.ts';
import './sheet-paste.ts';
import { formStyles } from '../form-styles.ts';

/** What the shelf shows: the list, one driver in full, or a datasheet being pasted. Kept by the page, so that nothing typed is
 *  lost when the shelf is closed half way. */
export type ShelfView =
  | { readonly kind: 'list' }
  | { readonly kind: 'driver'; readonly entry: DriverEntry; readonly kept: boolean }
  | { readonly kind: 'paste'; readonly text: string };

/** The driver shelf.
 *  @fires view - `detail.view` is to be shown, or has been typed in.
 *  @fires put-driver - `detail.entry` is to stand in the sheet.
 *  @fires add - `detail.entries` are new; with `detail.put` the one shall stand in the sheet, too.
 *  @fires change - `detail.entry` takes the place of the one of the same id.
 *  @fires remove - `detail.entry` is taken off.
 *  @fires save-file - the shelf is to be saved to a file.
 *  @fires read-file - a shelf is to be read from a file. */
@customElement('driver-shelf')
export class DriverShelf extends LitElement {
  static override styles = [
    formStyles,
    css`
      .bar {
        margin-bottom: 12px;
      }
      .told {
        padding: 8px 12px;
        border: 1px solid var(--line2);
        border-radius: 5px;
        background: var(--panel);
        white-space: pre-line;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly DriverEntry[] = [];
  @property({ attribute: false }) view: ShelfView = { kind: 'list' };
  @property({ attribute: false }) read: (text: string) => readonly Reading[] = () => [];
  /** What the driver's place in the sheet is called; empty where none is selected. */
  @property() place = '';
  /** The driver that stands at that place. */
  @property({ attribute: false }) there: { readonly name: string; readonly rows: readonly DriverRow[] } | undefined;
  @property() told = '';
  @property() system: UnitSystem = 'metric';

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('view')?.kind;
    if (!changed.has('view') || before === this.view.kind) return;
    const inner = this.renderRoot.querySelector<HTMLElement & { updateComplete: Promise<unknown> }>(
      'driver-list, sheet-paste, driver-form',
    );
    void inner?.updateComplete.then(() => (inner.localName === 'driver-form' ? firstField(inner) : inner)?.focus());
  }

  protected override render(): TemplateResult {
    const { view } = this;
    const list = (): void => this.#show({ kind: 'list' });
    switch (view.kind) {
      case 'driver':
        return html`<driver-form
          .entry=${view.entry}
          ?kept=${view.kept}
          place=${this.place}
          system=${this.system}
          @draft=${(event: CustomEvent<{ entry: DriverEntry }>) => this.#show({ ...view, entry: event.detail.entry })}
          @keep=${(event: CustomEvent<{ entry: DriverEntry }>) => this.#keep(event.detail.entry, view.kept)}
          @remove=${() => this.#fire('remove', { entry: view.entry })}
          @put-driver=${(event: CustomEvent<object>) => this.#fire('put-driver', event.detail)}
          @leave=${list}
        ></driver-form>`;
      case 'paste':
        return html`<sheet-paste
          text=${view.text}
          place=${this.place}
          .read=${this.read}
          system=${this.system}
          @draft=${(event: CustomEvent<{ text: string }>) => this.#show({ kind: 'paste', text: event.detail.text })}
          @take=${(event: CustomEvent<object>) => this.#fire('add', event.detail)}
          @leave=${list}
        ></sheet-paste>`;
      case 'list':
        return this.#list();
    }
  }

  #list(): TemplateResult {
    return html`
      <div class="bar">
        <button class=${this.place ? '' : 'main'} @click=${() => this.#show({ kind: 'paste', text: '' })}>
          Paste a datasheet
        </button>
        <button @click=${() => this.#type('', [])}>Type a driver</button>
        ${
          this.there
            ? html`<button @click=${() => this.#type(this.there?.name ?? '', this.there?.rows ?? [])}>
                Take the driver of ${this.place}
              </button>`
            : nothing
        }
        <button @click=${() => this.#fire('save-file')}>Save my drivers to a file</button>
        <button @click=${() => this.#fire('read-file')}>Read a shelf from a file</button>
      </div>
      <div role="status">${this.told ? html`<p class="told">${this.told}</p>` : nothing}</div>
      ${
        this.place
          ? html`<p>“Put here” writes a driver over all rows of ${this.place}, as one step that can be undone.</p>`
          : html`<p class="quiet">
              To put a driver into a sheet, select a cell of a driver there first: one beside a label such as Fs or Qts.
            </p>`
      }
      <driver-list
        .entries=${this.entries}
        place=${this.place}
        system=${this.system}
        @open-driver=${(event: CustomEvent<{ entry: DriverEntry }>) =>
          this.#show({ kind: 'driver', entry: event.detail.entry, kept: true })}
        @put-driver=${(event: CustomEvent<{ entry: DriverEntry }>) => this.#fire('put-driver', event.detail)}
      ></driver-list>
    `;
  }

  #type(name: string, rows: readonly DriverRow[]): void {
    const entry = { id: newId(), name, rows, source: '', tables: [], invented: false };
    this.#show({ kind: 'driver', entry, kept: false });
  }

  /** A changed example becomes a driver of one's own; the example stays. */
  #keep(entry: DriverEntry, kept: boolean): void {
    if (kept && !entry.invented) this.#fire('change', { entry });
    else this.#fire('add', { entries: [entry.invented ? { ...entry, id: newId(), invented: false } : entry] });
  }

  #show(view: ShelfView): void {
    this.#fire('view', { view });
  }

  #fire(name: string, detail: object = {}): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

const firstField = (form: HTMLElement): HTMLElement | null | undefined => form.shadowRoot?.querySelector('input');

declare global {
  interface HTMLElementTagNameMap {
    'driver-shelf': DriverShelf;
  }
}
