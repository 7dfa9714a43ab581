import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { compared } from '../plot/compared.ts';
import { standaloneSvg } from '../plot/export.ts';
import { Faces } from '../plot/faces.ts';
import { familyOf, textWidth } from '../plot/measure-text.ts';
import { pictureStyles } from '../plot/picture-styles.ts';
import { hatch } from '../plot/picture.ts';
import { whenDiffering } from '../plot/same-data.ts';
import { plotStyles } from '../plot/styles.ts';
import { valuesButton } from '../plot/values-button.ts';
import { Width } from '../plot/width.ts';
import type { DrawingData } from './data.ts';
import { placeAt, type Laid } from './laid.ts';
import { lay } from './lay.ts';
import { drawingComparison, drawingFinding, readingsOf, spoken, type Reading } from './readings.ts';
import { drawingStyles } from './styles.ts';

/** What cells hold as a drawing: bars, points, lines, or shapes to scale. Each thing is read under the pointer, or with the
 *  arrow keys from one to the next.
 *  @slot verdict - What stands at the end of the heading. */
@customElement('cell-plot')
export class CellPlot extends LitElement {
  static override styles = [plotStyles, pictureStyles, drawingStyles];

  @property(whenDiffering) data: DrawingData | undefined;

  @state() private tableOpen = false;
  /** The thing that is being read. */
  @state() private read: number | undefined;

  #laid: Laid | undefined;
  #width = new Width(this);

  constructor() {
    super();
    this.addController(new Faces(this));
  }

  /** The plot as the text of an SVG file that needs nothing else. */
  svgText(): string {
    const drawing = this.renderRoot.querySelector<SVGSVGElement>('svg.drawing');
    if (!drawing || !this.data) return '';
    return standaloneSvg(drawing, `${this.data.title}  ${unitsOf(this.data)}`, drawingFinding(this.data));
  }

  protected override render(): TemplateResult | typeof nothing {
    const { data } = this;
    if (!data) return nothing;
    const width = this.#width.pixels;
    const font = `600 12px ${familyOf(this)}`;
    const measure = (text: string): number => textWidth(text, font);
    this.#laid = width > 0 ? lay(data, { width, measure, isSmall: false }) : undefined;
    const readings = readingsOf(data);
    return html`
      <div class="head">
        <h2>${data.title}</h2>
        <span class="detail">${unitsOf(data)}</span>
        <span class="end">
          ${compared(drawingComparison(data))}
          <slot name="verdict"></slot>
          ${valuesButton(this.tableOpen, () => (this.tableOpen = !this.tableOpen))}
        </span>
      </div>
      ${readings.length === 0 ? html`<p class="empty">Nothing to draw yet.</p>` : this.#laid && this.#stage(data, this.#laid, readings)}
      ${this.tableOpen ? table(data, readings) : nothing}
    `;
  }

  #stage(data: DrawingData, laid: Laid, readings: readonly Reading[]): TemplateResult {
    const place = this.read === undefined ? undefined : laid.places[this.read];
    const reading = this.read === undefined ? undefined : readings[this.read];
    return html`
      <div class="stage">
        <svg
          class="drawing"
          role="img"
          aria-label=${drawingFinding(data)}
          width=${this.#width.pixels}
          height=${laid.height}
        >
          ${hatch} ${laid.picture}
        </svg>
        <div
          class="crosshair"
          role="slider"
          tabindex="0"
          aria-label="Read values of ${data.title}"
          aria-valuemin="1"
          aria-valuemax=${readings.length}
          aria-valuenow=${(this.read ?? 0) + 1}
          aria-valuetext=${reading ? spoken(reading) : 'nothing chosen'}
          @pointermove=${this.#follow}
          @pointerdown=${this.#follow}
          @pointerleave=${this.#leave}
          @keydown=${this.#key}
          @blur=${this.#leave}
        ></div>
        ${reading && place ? readout(reading) : nothing}
      </div>
    `;
  }

  /** Sets places on the elements themselves: a policy without inline styles refuses style attributes. */
  protected override updated(): void {
    const place = this.read === undefined ? undefined : this.#laid?.places[this.read];
    const box = this.renderRoot.querySelector<HTMLElement>('.readout');
    if (!place || !box) return;
    const width = this.#width.pixels;
    const isLeft = place.x < width / 2;
    const middle = Math.min(Math.max(place.x, 0), width);
    Object.assign(box.style, {
      top: `${place.y + Math.min(place.halfHeight, 12) + 4}px`,
      left: isLeft ? `${Math.max(0, middle - 12)}px` : '',
      right: isLeft ? '' : `${Math.max(0, width - middle - 12)}px`,
    });
  }

  #follow = (event: PointerEvent): void => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const found = placeAt(this.#laid?.places ?? [], event.clientX - box.left, event.clientY - box.top);
    this.read = found < 0 ? undefined : found;
  };

  #leave = (): void => {
    this.read = undefined;
  };

  #key = (event: KeyboardEvent): void => {
    const last = (this.#laid?.places.length ?? 0) - 1;
    const by = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1, PageUp: -5, PageDown: 5 }[event.key];
    const to = { Home: 0, End: last, Escape: undefined };
    if (by !== undefined) this.read = Math.min(Math.max((this.read ?? (by > 0 ? -1 : last + 1)) + by, 0), last);
    else if (event.key in to) this.read = to[event.key as keyof typeof to];
    else return;
    event.preventDefault();
  };
}

const readout = ({ name, values }: Reading): TemplateResult => html`
  <div class="readout" aria-hidden="true">
    <b>${name}</b>
    <dl>
      ${values.map(
        ([label, text]) =>
          html`<dt>${label}</dt>
            <dd>${text}</dd>`,
      )}
    </dl>
  </div>
`;

/** `oct over ¤`: what is measured, and along the bottom. */
function unitsOf(data: DrawingData): string {
  if (data.form === 'bars' || data.form === 'shapes') return data.axis.symbol;
  return [data.up.symbol, data.across.symbol].filter(Boolean).join(' over ');
}

function table(data: DrawingData, readings: readonly Reading[]): TemplateResult {
  const labels = [...new Set(readings.flatMap(({ values }) => values.map(([label]) => label)))];
  return html`
    <div class="table" tabindex="0" role="region" aria-label="Values of ${data.title}">
      <table>
        <thead>
          <tr>
            <th scope="col">Name</th>
            ${labels.map((label) => html`<th scope="col">${label || 'Note'}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${readings.map(
            ({ name, values }) =>
              html`<tr>
                <th scope="row">${name}</th>
                ${labels.map((label) => html`<td>${values.find(([each]) => each === label)?.[1] ?? ''}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
  `;
}

declare global {
  interface HTMLElementTagNameMap {
    'cell-plot': CellPlot;
  }
}
