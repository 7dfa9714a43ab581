import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { controlStyles } from '../control-styles.ts';
import { focused } from '../focused.ts';

/** One line of a menu; `separated` draws a hairline above it. */
export interface MenuItem {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly disabled?: boolean;
  readonly checked?: boolean;
  readonly separated?: boolean;
}

/** A button that opens a menu, after the WAI-ARIA menu-button pattern.
 *  @slot - What the button shows.
 *  @fires choose - An item was chosen; `detail.name` says which. */
@customElement('pop-menu')
export class PopMenu extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        display: inline-block;
      }
      :host([bare]) .opener {
        min-height: 28px;
        min-width: 28px;
      }
      ::slotted(svg) {
        flex: none;
        width: 18px;
        height: 18px;
      }
      [popover] {
        margin: 0;
        padding: 4px;
        border: 1px solid var(--line2);
        border-radius: 5px;
        background: var(--paper);
        color: var(--ink);
        font: 14px/20px var(--sans);
        min-width: 180px;
        max-height: 70vh;
        overflow: auto;
        inset: auto;
        position: fixed;
        visibility: visible;
      }
      [role='menuitem'],
      [role='menuitemradio'] {
        all: unset;
        box-sizing: border-box;
        display: flex;
        width: 100%;
        min-height: 32px;
        padding: 4px 10px;
        gap: 16px;
        align-items: center;
        justify-content: space-between;
        border-radius: 3px;
        cursor: pointer;
      }
      [role^='menuitem']:focus,
      [role^='menuitem']:hover {
        background: var(--accent-soft);
      }
      [role^='menuitem']:focus-visible {
        outline: 2px solid var(--accent);
        outline-offset: -2px;
      }
      [aria-disabled='true'] {
        opacity: 0.45;
        cursor: default;
      }
      .separated {
        border-top: 1px solid var(--line);
        border-radius: 0 0 3px 3px;
        margin-top: 4px;
      }
      .hint {
        color: var(--ink2);
        font-size: 12.5px;
      }
      [aria-checked='true'] .label::after {
        content: ' ✓';
      }
    `,
  ];

  @property({ attribute: false }) items: readonly MenuItem[] = [];
  /** The button has no frame. */
  @property({ type: Boolean }) bare = false;
  /** Names the button to assistive technology where it shows only an icon. */
  @property() label = '';
  @query('[popover]') private menu!: HTMLElement;
  @query('.opener') private opener!: HTMLButtonElement;
  /** What gets the focus back: the button, or what had it where the menu was opened at a point. */
  #before: HTMLElement | undefined;

  /** Opens the menu below the button, or at a point of the window. */
  open(at?: { readonly x: number; readonly y: number }): void {
    this.#before = at ? focused() : this.opener;
    this.menu.showPopover();
    const box = this.opener.getBoundingClientRect();
    const size = this.menu.getBoundingClientRect();
    const left = Math.min(at?.x ?? box.left, innerWidth - size.width - 8);
    const below = at?.y ?? box.bottom + 4;
    const top = below + size.height > innerHeight - 8 ? Math.max(8, innerHeight - size.height - 8) : below;
    this.menu.style.left = `${String(Math.max(8, left))}px`;
    this.menu.style.top = `${String(top)}px`;
    this.#focus(0);
  }

  override focus(): void {
    this.opener.focus();
  }

  protected override render(): TemplateResult {
    return html`
      <button
        class=${this.bare ? 'opener' : 'opener framed'}
        aria-haspopup="menu"
        aria-label=${this.label || nothing}
        title=${this.label || nothing}
        @click=${() => this.open()}
        @keydown=${this.#openByKey}
      >
        <slot></slot>
      </button>
      <div popover="auto" role="menu" aria-label=${this.label || 'Menu'} @keydown=${this.#move}>
        ${this.items.map(
          (item) => html`
            <button
              role=${item.checked === undefined ? 'menuitem' : 'menuitemradio'}
              aria-checked=${item.checked === undefined ? nothing : item.checked ? 'true' : 'false'}
              aria-disabled=${item.disabled ? 'true' : nothing}
              class=${item.separated ? 'separated' : ''}
              tabindex="-1"
              @click=${() => this.#choose(item)}
            >
              <span class="label">${item.label}</span>
              ${item.hint ? html`<span class="hint">${item.hint}</span>` : nothing}
            </button>
          `,
        )}
      </div>
    `;
  }

  get #entries(): HTMLElement[] {
    return [...this.menu.querySelectorAll<HTMLElement>('[role^=menuitem]')];
  }

  #focus(index: number): void {
    const entries = this.#entries;
    entries[(index + entries.length) % entries.length]?.focus();
  }

  #openByKey = (event: KeyboardEvent): void => {
    if (event.key !== 'ArrowDown') return;
    event.preventDefault();
    this.open();
  };

  #move = (event: KeyboardEvent): void => {
    const at = this.#entries.indexOf(event.target as HTMLElement);
    const steps: Record<string, () => void> = {
      ArrowDown: () => this.#focus(at + 1),
      ArrowUp: () => this.#focus(at - 1),
      Home: () => this.#focus(0),
      End: () => this.#focus(-1),
      Tab: () => this.#close(),
      Escape: () => this.#close(),
    };
    const step = steps[event.key];
    if (!step) return;
    event.preventDefault();
    event.stopPropagation();
    step();
  };

  #close(): void {
    this.menu.hidePopover();
    this.#before?.focus();
  }

  #choose(item: MenuItem): void {
    if (item.disabled) return;
    this.#close();
    this.dispatchEvent(new CustomEvent('choose', { detail: { name: item.name } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pop-menu': PopMenu;
  }
}
