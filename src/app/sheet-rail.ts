import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controlStyles } from '../components/control-styles.ts';
import { icon } from '../components/icons.ts';
import '../components/menu/pop-menu.ts';
import { moment } from './clock.ts';
import type { SaveState } from './session.ts';
import { sheetMenu, type RailSheet } from './sheet-menu.ts';

export interface RailEntry {
  readonly id: string;
  readonly title: string;
  /** When it was saved last. */
  readonly saved: number;
}

/** The rail: sheets of the document with their tallies, starter sheets, documents kept on this device, and how saving stands.
 *  @fires sheet - `detail.id` was chosen.
 *  @fires sheet-act - `detail.name` from the sheet's menu, for `detail.id`.
 *  @fires act - `detail.name` was asked for: the starter sheets, or an empty document.
 *  @fires document - another kept document was chosen. */
@customElement('sheet-rail')
export class SheetRail extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        display: flex;
        flex-direction: column;
        gap: 18px;
        background: var(--ground);
        padding: 16px 8px;
        overflow-y: auto;
        font: 14px/20px var(--sans);
        color: var(--ink);
      }
      h2 {
        font-size: 12px;
        line-height: 16px;
        font-weight: 600;
        color: var(--ink2);
        margin: 0 8px 4px;
        display: flex;
        justify-content: space-between;
        align-items: center;
        min-height: 28px;
      }
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        display: flex;
        align-items: center;
        border: 1px solid transparent;
        border-radius: 5px;
      }
      li.current {
        background: var(--paper);
        border-color: var(--line2);
        font-weight: 500;
      }
      .entry {
        flex: 1;
        min-width: 0;
        padding: 4px 7px;
        justify-content: space-between;
        text-align: start;
        white-space: normal;
      }
      /* A long name has a second line: sheets that begin alike are told apart by how they end. */
      .name {
        min-width: 0;
        overflow: hidden;
        overflow-wrap: anywhere;
        line-height: 18px;
        display: -webkit-box;
        -webkit-box-orient: vertical;
        -webkit-line-clamp: 2;
      }
      .tally {
        display: inline-flex;
        gap: 6px;
        font-size: 12.5px;
        font-weight: 400;
        white-space: nowrap;
      }
      .tally span {
        display: inline-flex;
        gap: 2px;
        align-items: center;
      }
      .fail {
        color: var(--fail);
      }
      .caution {
        color: var(--caution);
      }
      .good {
        color: var(--good);
      }
      /* Below a name that is not alone. */
      .entry:has(.detail) {
        flex-wrap: wrap;
        gap: 0 8px;
      }
      .detail {
        color: var(--ink2);
        font-size: 12.5px;
        white-space: nowrap;
      }
      :focus-visible {
        outline-offset: -2px;
      }
      .small {
        padding: 0;
      }
      @media (min-width: 1024px) {
        .small {
          min-width: 28px;
          min-height: 28px;
        }
      }
      .kept {
        position: sticky;
        bottom: -16px;
        margin: auto 0 -16px;
        border-top: 1px solid var(--line2);
        padding: 12px 8px 16px;
        background: var(--ground);
        font-size: 12.5px;
        line-height: 18px;
      }
      .kept b {
        font-weight: 600;
      }
      .kept.failed {
        color: var(--fail);
      }
      svg {
        width: 16px;
        height: 16px;
      }
    `,
  ];

  @property({ attribute: false }) sheets: readonly RailSheet[] = [];
  @property() current = '';
  @property({ attribute: false }) documents: readonly RailEntry[] = [];
  @property() document = '';
  @property({ attribute: false }) saving: SaveState = { status: 'saved', text: '' };

  protected override render(): TemplateResult {
    return html`
      <nav aria-label="Sheets of this document">
        <h2>
          Sheets
          <button
            class="small"
            aria-label="Add a sheet"
            title="Add a sheet"
            @click=${() => this.#fire('sheet-act', { name: 'add' })}
          >
            ${icon('plus')}
          </button>
        </h2>
        <ul>
          ${this.sheets.map((sheet, index) => this.#sheet(sheet, index))}
        </ul>
      </nav>
      <nav aria-label="Starter sheets">
        <h2>Start a new document</h2>
        <ul>
          <li>
            <button class="entry" @click=${() => this.#fire('act', { name: 'gallery' })}>
              <span class="name">Starter sheets…</span><span class="detail">Ctrl G</span>
            </button>
          </li>
          <li>
            <button class="entry" @click=${() => this.#fire('act', { name: 'new-empty' })}>
              <span class="name">Empty document</span>
            </button>
          </li>
        </ul>
      </nav>
      ${
        this.documents.length > 1
          ? html`<nav aria-label="Documents on this device">
              <h2>Kept documents</h2>
              <ul>
                ${this.documents.map((entry) => this.#document(entry))}
              </ul>
            </nav>`
          : nothing
      }
      <p
        class="kept ${this.saving.status}"
        role="status"
        aria-live=${this.saving.status.startsWith('sav') ? 'off' : 'polite'}
      >
        <b>Kept on this device</b><br />${this.saving.text}
      </p>
    `;
  }

  #sheet(sheet: RailSheet, index: number): TemplateResult {
    const current = sheet.id === this.current;
    return html`<li class=${current ? 'current' : ''}>
      <button
        class="entry"
        aria-current=${current ? 'page' : nothing}
        @click=${() => this.#fire('sheet', { id: sheet.id })}
      >
        <span class="name" title=${sheet.name}>${sheet.name}</span>
        <span class="tally">
          ${(['fail', 'caution', 'good'] as const)
            .filter((status) => sheet.counts[status] > 0)
            .slice(0, 1)
            .map((status) => {
              const words = `${String(sheet.counts[status])} ${status}`;
              return html`<span class=${status} role="img" aria-label=${words} title=${words}
                >${icon(status)}${sheet.counts[status]}</span
              >`;
            })}
        </span>
      </button>
      <pop-menu
        bare
        label=${`More for ${sheet.name}`}
        .items=${sheetMenu(index === 0, index === this.sheets.length - 1, this.sheets.length === 1, sheet)}
        @choose=${(event: CustomEvent<{ name: string }>) => this.#fire('sheet-act', { id: sheet.id, name: event.detail.name })}
        >${icon('more')}</pop-menu
      >
    </li>`;
  }

  #document(entry: RailEntry): TemplateResult {
    const current = entry.id === this.document;
    const isAlone = this.documents.every(({ id, title }) => id === entry.id || title !== entry.title);
    const when = isAlone ? '' : moment(entry.saved);
    return html`<li class=${current ? 'current' : ''}>
      <button
        class="entry"
        aria-current=${current ? 'true' : nothing}
        @click=${() => this.#fire('document', { id: entry.id })}
      >
        <span class="name" title=${entry.title}>${entry.title}</span>
        <span class="detail">${when}</span>
      </button>
      <button
        class="small"
        aria-label=${`Remove ${`${entry.title} ${when}`.trim()} from this device`}
        title="Remove from this device"
        @click=${() => this.#fire('forget', { id: entry.id, title: entry.title })}
      >
        ${icon('close')}
      </button>
    </li>`;
  }

  #fire(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'sheet-rail': SheetRail;
  }
}
