import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { icon } from '../components/icons.ts';
import '../components/menu/pop-menu.ts';
import type { MenuItem } from '../components/menu/pop-menu.ts';
import type { UnitSystem } from '../document/types.ts';
import { controlStyles } from '../components/control-styles.ts';

const documentMenu = (system: UnitSystem): readonly MenuItem[] => [
  { name: 'gallery', label: 'New document…', hint: 'Ctrl G' },
  { name: 'open-file', label: 'Open a file…', hint: 'Ctrl O' },
  { name: 'save-file', label: 'Save a copy to a file', hint: 'Ctrl S' },
  { name: 'link', label: 'Link to this document…' },
  { name: 'review', label: 'Review page, to print or copy…', hint: 'Ctrl P' },
  { name: 'save-csv', label: 'Save the sheet as a table (CSV)' },
  { name: 'shelf', label: 'Driver shelf…', hint: 'F8' },
  { name: 'shortlist', label: 'Which drivers go together…', hint: 'Shift F8' },
  { name: 'rename', label: 'Rename the document…', separated: true },
  // The button beside the baseline has no room in a narrow bar.
  { name: 'system', label: system === 'metric' ? 'Show imperial units' : 'Show metric units' },
];

const helpMenu: readonly MenuItem[] = [
  { name: 'guide', label: 'Function guide', hint: 'F1' },
  { name: 'keys', label: 'Keys', hint: 'Ctrl /' },
  { name: 'tour', label: 'Short tour' },
];

/** The bar over everything: the document, undo and redo, the baseline, units, light or dark, help.
 *  @fires act - `detail.name` was asked for. */
@customElement('top-bar')
export class TopBar extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        display: flex;
        align-items: center;
        gap: 8px;
        padding: 0 12px;
        border-bottom: 1px solid var(--line2);
        min-width: 0;
        font: 14px/20px var(--sans);
        color: var(--ink);
      }
      h1 {
        font-size: 14px;
        line-height: 20px;
        font-weight: 600;
        margin: 0;
        max-height: 40px;
        overflow: clip;
        min-width: 40px;
      }
      .mark {
        color: var(--accent);
        width: 22px;
        height: 22px;
        flex: none;
      }
      .space {
        flex: 1;
      }
      .drawer {
        display: none;
      }
      .find {
        width: 300px;
        justify-content: space-between;
        color: var(--ink2);
      }
      small {
        font-size: 12.5px;
      }
      @media (max-width: 1180px) {
        .drawer {
          display: inline-flex;
        }
        .find {
          display: none;
        }
      }
      @media (max-width: 700px) {
        :host {
          gap: 0;
          padding: 0 6px;
        }
        h1 {
          font-size: 13px;
          line-height: 16px;
          max-height: 48px;
        }
        .optional,
        .framed b,
        .mark {
          display: none;
        }
        .framed {
          padding: 0 6px;
        }
      }
      @media (max-width: 359px) {
        button {
          min-width: 34px;
        }
      }
    `,
  ];

  @property() override title = '';
  @property({ type: Boolean }) canUndo = false;
  @property({ type: Boolean }) canRedo = false;
  /** The clock time of the pinned baseline; empty without one. */
  @property() pinned = '';
  @property() system: UnitSystem = 'metric';
  @property({ type: Boolean }) dark = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.role = 'banner';
  }

  protected override render(): TemplateResult {
    return html`
      <button class="drawer" aria-label="Sheets and documents" @click=${() => this.#act('drawer')}>
        ${icon('menu')}
      </button>
      <svg class="mark" viewBox="0 0 24 24" fill="none" stroke="currentColor" stroke-width="1.8" aria-hidden="true">
        <path d="M3 3v18h18M4 19c4 0 4-13 8-13s4 13 9 13" />
      </svg>
      <h1>${this.title}</h1>
      <pop-menu label="Document" bare .items=${documentMenu(this.system)} @choose=${this.#chosen}
        >${icon('chevron')}</pop-menu
      >
      <span class="space"></span>
      <button class="framed find" @click=${() => this.#act('go-to')}>
        Go to a cell or a name <small>Ctrl K</small>
      </button>
      <span class="space"></span>
      <button aria-label="Undo" title="Undo (Ctrl Z)" ?disabled=${!this.canUndo} @click=${() => this.#act('undo')}>
        ${icon('undo')}
      </button>
      <button aria-label="Redo" title="Redo (Ctrl Y)" ?disabled=${!this.canRedo} @click=${() => this.#act('redo')}>
        ${icon('redo')}
      </button>
      <button
        class="framed"
        aria-pressed=${this.pinned === '' ? 'false' : 'true'}
        title="Pin the present numbers and see every distance to them (Ctrl B)"
        @click=${() => this.#act('pin')}
      >
        ${icon('pin')}<span class="optional">Baseline</span>${this.pinned ? html`<b>${this.pinned}</b>` : nothing}
      </button>
      <button class="framed optional" title="Drivers kept for every document (F8)" @click=${() => this.#act('shelf')}>
        Drivers
      </button>
      <button
        class="framed optional"
        title="Show quantities in metric or imperial units; what was typed stays"
        @click=${() => this.#act('system')}
      >
        ${this.system === 'metric' ? 'Metric' : 'Imperial'}
      </button>
      <button
        aria-label=${this.dark ? 'Light colours' : 'Dark colours'}
        title=${this.dark ? 'Light colours' : 'Dark colours'}
        @click=${() => this.#act('theme')}
      >
        ${icon(this.dark ? 'sun' : 'moon')}
      </button>
      <pop-menu label="Help" .items=${helpMenu} @choose=${this.#chosen}>Help</pop-menu>
    `;
  }

  #chosen = (event: CustomEvent<{ name: string }>): void => this.#act(event.detail.name);

  #act(name: string): void {
    this.dispatchEvent(new CustomEvent('act', { detail: { name } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'top-bar': TopBar;
  }
}
