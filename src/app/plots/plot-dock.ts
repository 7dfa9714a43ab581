import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import '../../components/consequences/consequence-list.ts';
import '../../components/plot/curve-plot.ts';
import '../../components/plot/window-plot.ts';
import '../../components/drawing/cell-plot.ts';
import type { Plot, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { cellCard } from '../cell-card.ts';
import { askOfPlot, plotMenu } from './plot-menu.ts';
import { plotPicture } from './plot-picture.ts';
import { clock } from '../clock.ts';

type Tab = 'plots' | 'changes' | 'cell';

const tabs: readonly { readonly tab: Tab; readonly words: string }[] = [
  { tab: 'plots', words: 'Plots' },
  { tab: 'changes', words: 'What changed' },
  { tab: 'cell', words: 'Cell' },
];

/** Where plots and lists have no room beside one another; the same width as in the styles. */
const NARROW = matchMedia('(max-width: 1023px)');

/** Beside the sheet: its plots, what the last edit (or the distance to the baseline) changed, and the selected thing in full.
 *  @fires go - `detail` is the place to show. */
@customElement('plot-dock')
export class PlotDock extends LitElement {
  static override styles = css`
    :host {
      display: flex;
      flex-direction: column;
      height: 100%;
      contain: content;
      background: var(--panel);
      font: 14px/20px var(--sans);
      color: var(--ink);
    }
    .plots {
      flex: 1 1 62%;
      min-height: 0;
      overflow-y: auto;
    }
    .plots > section {
      padding: 8px 12px;
      border-bottom: 1px solid var(--line2);
      contain: layout style;
    }
    .plots:has(.none) {
      flex: none;
      padding: 4px 12px;
    }
    .blank {
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      justify-content: space-between;
    }
    .blank h2 {
      margin: 0;
      font-size: 14px;
      font-weight: 600;
    }
    .blank p {
      flex-basis: 100%;
    }
    .add {
      display: flex;
      gap: 10px;
      align-items: center;
      padding: 0 12px;
    }
    .none + .add {
      padding: 0;
    }
    .add button {
      font: inherit;
      min-height: 32px;
      padding: 0 12px;
      color: var(--ink);
      background: var(--paper);
      border: 1px solid var(--line2);
      border-radius: 5px;
      cursor: pointer;
    }
    .add button:focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
    }
    kbd {
      font: 12.5px/18px var(--sans);
    }
    .lower {
      flex: 1 1 38%;
      min-height: 0;
      overflow-y: auto;
      padding: 8px 12px 12px;
    }
    /* Until something has changed, the plots have the room. */
    .lower:has(.idle) {
      flex: none;
    }
    nav {
      display: flex;
      gap: 4px;
      padding: 0 8px;
      border-block: 1px solid var(--line2);
      background: var(--panel);
    }
    nav button {
      all: unset;
      box-sizing: border-box;
      min-height: 32px;
      padding: 0 8px;
      display: inline-flex;
      align-items: center;
      cursor: pointer;
      color: var(--ink2);
      border-bottom: 2px solid transparent;
    }
    nav button[aria-pressed='true'] {
      color: var(--ink);
      border-color: var(--accent);
      font-weight: 600;
    }
    nav button:focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: -2px;
    }
    .narrow {
      display: none;
    }
    p {
      margin: 8px 0;
      color: var(--ink2);
    }
    @media (max-width: 1023px) {
      nav {
        order: -1;
      }
      .add {
        align-self: start;
      }
      .add button,
      nav button {
        min-height: 44px;
        padding: 0 12px;
      }
      .narrow {
        display: inline-flex;
      }
      :host([tab='plots']) .lower,
      :host(:not([tab='plots'])) .plots {
        display: none;
      }
      .plots {
        display: grid;
        align-content: start;
        grid-template-columns: repeat(auto-fit, minmax(300px, 1fr));
      }
    }
  `;

  @property({ attribute: false }) workbook!: Workbook;
  @property({ attribute: false }) sheet!: Sheet;
  /** The address of the selected cell; what it holds is shown when it is a record, a problem or a formula's result. */
  @property() cell = '';
  /** Rises with every change of the workbook. */
  @property({ type: Number }) revision = 0;
  /** What is shown below the plots; where there is no room for both, `plots` shows the plots instead. */
  @property({ reflect: true }) tab: Tab = 'plots';
  @state() private isNarrow = NARROW.matches;
  @state() private crosshair: number | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    NARROW.addEventListener('change', this.#narrowed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    NARROW.removeEventListener('change', this.#narrowed);
  }

  protected override render(): TemplateResult {
    const { baseline } = this.workbook.document;
    const list = baseline ? this.workbook.distance : this.workbook.consequences;
    const since = baseline ? `since ${clock(baseline.pinned)}` : 'by the last edit';
    const { workbook, sheet } = this;
    const names = new Map(workbook.document.sheets.map(({ id, name }) => [id, name]));
    return html`
      <div class="plots">
        ${repeat(
          sheet.plots,
          (plot) => `${sheet.id}/${plot.id}`,
          (plot) => html`<section>${this.#plot(plot)}</section>`,
        )}
        ${
          sheet.plots.length > 0
            ? nothing
            : html`<p class="none">
                This sheet has no plots yet. Select cells with a curve, a shared window or numbers, and add one.
              </p>`
        }
        <p class="add">
          <button @click=${() => askOfPlot(this, { name: 'add', plot: '' })}>Add a plot…</button><kbd>F9</kbd>
        </p>
      </div>
      <nav aria-label="Beside the sheet">
        ${tabs.map(({ tab, words }) => {
          const isPressed = this.tab === tab || (tab === 'changes' && this.tab === 'plots' && !this.isNarrow);
          return html`<button
            class=${tab === 'plots' ? 'narrow' : ''}
            aria-pressed=${isPressed ? 'true' : 'false'}
            @click=${() => (this.tab = tab)}
          >
            ${words}${tab === 'changes' && list.length > 0 ? ` ${String(list.length)}` : ''}
          </button>`;
        })}
      </nav>
      <div class="lower">
        ${
          this.tab === 'cell'
            ? cellCard(workbook, sheet.id, this.cell, { full: false, go: (place) => this.#go(place) })
            : html`<consequence-list
                class=${list.length === 0 ? 'idle' : ''}
                .consequences=${list}
                since=${since}
                .sheet=${sheet.id}
                .sheetNames=${names}
                @go=${(event: CustomEvent<object>) => this.#go(event.detail)}
              ></consequence-list>`
        }
      </div>
    `;
  }

  /** A plot that has come is shown. */
  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('sheet');
    if (before?.id !== this.sheet.id) return;
    const at = this.sheet.plots.findIndex(({ id }) => before.plots.every((plot) => plot.id !== id));
    if (at < 0) return;
    if (this.isNarrow) this.tab = 'plots';
    const section = this.renderRoot.querySelectorAll('section')[at];
    // As soon as it is as high as what it draws.
    requestAnimationFrame(() => requestAnimationFrame(() => section?.scrollIntoView({ block: 'nearest' })));
  }

  #go(place: object): void {
    this.dispatchEvent(new CustomEvent('go', { detail: place }));
  }

  readonly #narrowed = (): void => {
    this.isNarrow = NARROW.matches;
  };

  #plot(plot: Plot): TemplateResult {
    const picture = plotPicture(this.workbook, this.sheet, plot);
    const menu = plotMenu(this.workbook, this.sheet, plot, picture !== undefined);
    if (!picture)
      return html`<div class="blank">
        <h2>${plot.title}</h2>
        ${menu}
        <p>Nothing to draw yet.</p>
      </div>`;
    switch (picture.kind) {
      case 'window':
        return html`<window-plot .data=${picture.data}>${menu}</window-plot>`;
      case 'drawing':
        return html`<cell-plot .data=${picture.data}>${menu}</cell-plot>`;
      case 'curves':
        return html`<curve-plot
          .data=${picture.data}
          .crosshair=${this.crosshair}
          ?dragged=${this.workbook.previewed !== undefined}
          @crosshair-move=${(event: CustomEvent<{ frequency: number | undefined }>) => (this.crosshair = event.detail.frequency)}
          >${menu}</curve-plot
        >`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'plot-dock': PlotDock;
  }
}
