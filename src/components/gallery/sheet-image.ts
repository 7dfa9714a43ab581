import { LitElement, css, html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { drawingStyles } from '../drawing/styles.ts';
import { icon } from '../icons.ts';
import { pictureStyles } from '../plot/picture-styles.ts';
import { windowStyles } from '../plot/window-styles.ts';
import type { PictureSection, SheetImage } from './data.ts';
import { curvesSmall, drawingSmall, windowSmall } from './thumbnail.ts';

const SIZE = { width: 168, height: 124 };
/** As many sections as the height has lines for. */
const LINES = 6;

/** A sheet in small: the names of its sections with their verdicts, beside its first plot. A picture: what it says in words
 *  belongs to whatever it illustrates. */
@customElement('sheet-image')
export class SheetImageView extends LitElement {
  static override styles = [
    pictureStyles,
    windowStyles,
    drawingStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr) 52%;
        height: 132px;
        background: var(--paper);
        overflow: hidden;
      }
      :host([plain]) {
        grid-template-columns: minmax(0, 1fr);
      }
      ol,
      dl {
        list-style: none;
        margin: 0;
        padding: 6px 8px;
        font-size: 11px;
        line-height: 20px;
        color: var(--ink2);
        min-width: 0;
      }
      li {
        display: flex;
        gap: 6px;
        justify-content: space-between;
        border-bottom: 1px solid var(--line);
      }
      li span,
      dt {
        overflow: clip;
        text-overflow: ellipsis;
        white-space: nowrap;
        min-width: 0;
      }
      .marks {
        display: inline-flex;
        flex: none;
        align-items: center;
        gap: 2px;
      }
      .marks svg {
        width: 12px;
        height: 12px;
      }
      .marks .good {
        color: var(--good);
      }
      .marks .caution {
        color: var(--caution);
      }
      .marks .fail {
        color: var(--fail);
      }
      .plot,
      dl {
        border-left: 1px solid var(--line2);
        background: var(--panel);
      }
      .plot {
        display: block;
        width: 100%;
        height: 100%;
        overflow: hidden;
      }
      dl div {
        display: flex;
        gap: 8px;
        justify-content: space-between;
      }
      dd {
        margin: 0;
        flex: none;
        color: var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) image: SheetImage | undefined;

  protected override render(): TemplateResult {
    const sections = (this.image?.sections ?? []).slice(0, LINES);
    return html`<ol>
        ${sections.map((section) => html`<li><span>${section.title}</span>${marks(section)}</li>`)}
      </ol>
      ${this.#beside()}`;
  }

  #beside(): TemplateResult {
    const { curves, window, drawing, figures = [] } = this.image ?? {};
    if (!curves && !window && !drawing && figures.length > 0) {
      return html`<dl>
        ${figures.slice(0, LINES).map(
          ({ label, text }) =>
            html`<div>
              <dt>${label}</dt>
              <dd>${text}</dd>
            </div>`,
        )}
      </dl>`;
    }
    return html`<svg
      class="plot"
      viewBox="0 0 ${SIZE.width} ${SIZE.height}"
      preserveAspectRatio=${drawing?.form === 'shapes' ? 'xMidYMid meet' : 'none'}
      aria-hidden="true"
    >
      ${curves ? curvesSmall(curves, SIZE) : window ? windowSmall(window, SIZE) : drawing ? drawingSmall(drawing, SIZE) : svg``}
    </svg>`;
  }
}

/** One mark for each kind of verdict that there is. */
const marks = (section: PictureSection): TemplateResult =>
  html`<span class="marks"
    >${(['fail', 'caution', 'good'] as const).map((status) =>
      section[status] === 0 ? nothing : html`<span class=${`marks ${status}`}>${icon(status)}</span>`,
    )}</span
  >`;

declare global {
  interface HTMLElementTagNameMap {
    'sheet-image': SheetImageView;
  }
}
