import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import { placeCard, type Box } from './place-card.ts';

/** A place of the page that the tour tells about. */
export interface TourStop {
  readonly title: string;
  readonly text: string;
  /** Where it is now; nothing where it cannot be seen. */
  readonly target: () => Box | undefined;
}

/** A tour of the page: a modal card that goes from place to place, with a ring around each. Arrows and buttons lead on and
 *  back, Escape leaves; what had the focus has it again afterwards.
 *  @fires close - It is over. */
@customElement('tour-dialog')
export class TourDialog extends LitElement {
  static override styles = [
    formStyles,
    css`
      dialog {
        box-sizing: border-box;
        width: 100vw;
        height: 100dvh;
        max-width: none;
        max-height: none;
        padding: 0;
        border: 0;
        background: none;
        color: var(--ink);
        font: 14px/20px var(--sans);
        overflow: clip;
      }
      dialog::backdrop {
        background: none;
      }
      .ring {
        position: absolute;
        border: 2px solid var(--accent);
        border-radius: 5px;
        box-shadow: 0 0 0 200vmax rgb(0 0 0 / 35%);
        pointer-events: none;
      }
      .card {
        position: absolute;
        box-sizing: border-box;
        width: min(380px, calc(100vw - 16px));
        padding: 16px 20px;
        border: 1px solid var(--line2);
        border-radius: 5px;
        background: var(--paper);
      }
      .place {
        margin: 0;
        color: var(--ink2);
        font-size: 12.5px;
        line-height: 18px;
      }
      h2 {
        margin: 0 0 4px;
        font-size: 18px;
        line-height: 24px;
        font-weight: 500;
      }
      h2:focus {
        outline: 0;
      }
      p {
        margin: 0 0 12px;
      }
      .ways {
        display: flex;
        gap: 8px;
      }
      .ways span {
        flex: 1;
      }
    `,
  ];

  @property({ attribute: false }) stops: readonly TourStop[] = [];
  @state() private at = 0;
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('.card') private card!: HTMLElement;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('resize', this.#place);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('resize', this.#place);
  }

  protected override firstUpdated(): void {
    this.dialog.showModal();
    this.#speak();
    this.#place();
  }

  protected override updated(): void {
    this.#place();
  }

  protected override render(): TemplateResult | typeof nothing {
    const stop = this.stops[this.at];
    if (!stop) return nothing;
    const isLast = this.at === this.stops.length - 1;
    return html`<dialog
      aria-labelledby="title"
      aria-describedby="text"
      @close=${() => this.dispatchEvent(new CustomEvent('close'))}
      @keydown=${this.#key}
    >
      <div class="ring"></div>
      <div class="card">
        <p class="place">Short tour, ${this.at + 1} of ${this.stops.length}</p>
        <h2 id="title" tabindex="-1">${stop.title}</h2>
        <p id="text">${stop.text}</p>
        <div class="ways">
          <button ?disabled=${this.at === 0} @click=${() => this.#go(-1)}>Back</button>
          <span></span>
          ${isLast ? nothing : html`<button @click=${() => this.dialog.close()}>Leave</button>`}
          <button class="main" @click=${() => (isLast ? this.dialog.close() : this.#go(1))}>
            ${isLast ? 'Done' : 'Next'}
          </button>
        </div>
      </div>
    </dialog>`;
  }

  #go(by: 1 | -1): void {
    const at = Math.max(0, Math.min(this.stops.length - 1, this.at + by));
    if (at === this.at) return;
    this.at = at;
    void this.updateComplete.then(() => this.#speak());
  }

  /** Each stop is read from its title on: what has the focus is read. */
  #speak(): void {
    this.renderRoot.querySelector('h2')?.focus();
  }

  readonly #key = (event: KeyboardEvent): void => {
    const by = { ArrowRight: 1, ArrowLeft: -1, PageDown: 1, PageUp: -1 }[event.key] as 1 | -1 | undefined;
    if (by === undefined) return;
    event.preventDefault();
    this.#go(by);
  };

  /** Set on the elements themselves: a policy without inline styles refuses style attributes. */
  readonly #place = (): void => {
    const stop = this.stops[this.at];
    if (!stop) return;
    const target = stop.target();
    const pixels = (length: number): string => `${String(Math.round(length))}px`;
    const ring = this.renderRoot.querySelector<HTMLElement>('.ring');
    const box = target ?? { left: innerWidth / 2, top: innerHeight / 2, width: 0, height: 0 };
    Object.assign(ring?.style ?? {}, {
      left: pixels(box.left - 2),
      top: pixels(box.top - 2),
      width: pixels(box.width),
      height: pixels(box.height),
    });
    const { width, height } = this.card.getBoundingClientRect();
    const { left, top } = placeCard(target, { width, height }, { width: innerWidth, height: innerHeight });
    Object.assign(this.card.style, { left: pixels(left), top: pixels(top) });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'tour-dialog': TourDialog;
  }
}
