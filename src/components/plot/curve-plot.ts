import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { compared } from './compared.ts';
import type { PlotData } from './data.ts';
import { draw, type Drawing } from './drawing.ts';
import { standaloneSvg } from './export.ts';
import { Faces } from './faces.ts';
import { comparison, findingOf } from './finding.ts';
import { newMemory } from './layout.ts';
import { familyOf, textWidth } from './measure-text.ts';
import { whenDiffering } from './same-data.ts';
import { pictureStyles } from './picture-styles.ts';
import { picture } from './picture.ts';
import { readingAt, readingText, stepFrequency, thirdOctaves } from './readings.ts';
import { plotStyles } from './styles.ts';
import { valuesButton } from './values-button.ts';
import { Width } from './width.ts';
import { spellFrequency } from './unit.ts';

/** Curves over frequency on millimetre paper, named beside themselves, with limits, needles and the baseline behind.
 *  The crosshair follows the pointer, or the arrow keys (a 24th of an octave; an octave with Shift).
 *  @slot verdict - A chip at the end of the heading.
 *  @fires crosshair-move - The crosshair moved; `detail.frequency` in hertz, undefined when it left. */
@customElement('curve-plot')
export class CurvePlot extends LitElement {
  static override styles = [plotStyles, pictureStyles];

  /** What to draw. A new object draws anew. */
  @property(whenDiffering) data: PlotData | undefined;
  /** Height of the drawing with its axis numbers, in pixels. */
  @property({ type: Number }) height = 180;
  /** A number is being dragged: axes and labels stay where they are as long as they can. At rest the picture follows from
   *  the data and the width alone. */
  @property({ type: Boolean }) dragged = false;
  /** A crosshair given from outside, as another plot fires it. */
  @property({ attribute: false }) crosshair: number | undefined;

  @state() private tableOpen = false;

  #memory = newMemory();
  #drawing: Drawing | undefined;
  #subject = '';
  #keyboardFrequency: number | undefined;
  #width = new Width(this);

  constructor() {
    super();
    this.addController(new Faces(this));
  }

  /** The plot as the text of an SVG file that needs nothing else. */
  svgText(): string {
    const drawing = this.renderRoot.querySelector<SVGSVGElement>('svg.drawing');
    if (!drawing || !this.data || !this.#drawing) return '';
    const title = `${this.data.title}  ${this.#conditions(this.data, this.#drawing)}`;
    return standaloneSvg(drawing, title, findingOf(this.data, this.#drawing.unit));
  }

  override render(): TemplateResult | typeof nothing {
    const { data } = this;
    if (!data) return nothing;
    const drawing = this.#width.pixels > 0 ? this.#lay(data) : undefined;
    this.#drawing = drawing;
    return html`
      <div class="head">
        <h2>${data.title}</h2>
        <span class="detail">${this.#conditions(data, drawing)}</span>
        <span class="end">
          ${compared(comparison(data), data.baseline)}
          <slot name="verdict"></slot>
          ${valuesButton(this.tableOpen, () => (this.tableOpen = !this.tableOpen))}
        </span>
      </div>
      ${data.series.length === 0 ? html`<p class="empty">No curve yet.</p>` : drawing && this.#stage(data, drawing)}
      ${this.tableOpen && drawing ? this.#table(data, drawing) : nothing}
    `;
  }

  /** Sets places on the elements themselves: a policy without inline styles refuses style attributes. */
  override updated(): void {
    const { frame } = this.#drawing ?? {};
    if (!frame) return;
    const pixels = (length: number): string => `${length}px`;
    const place = (selector: string, styles: Partial<CSSStyleDeclaration>): void => {
      Object.assign(this.renderRoot.querySelector<HTMLElement>(selector)?.style ?? {}, styles);
    };
    place('.crosshair', {
      left: pixels(frame.left),
      top: pixels(frame.top),
      width: pixels(frame.width),
      height: pixels(frame.height),
    });
    if (this.crosshair === undefined) return;
    const x = frame.x(this.crosshair);
    const isLeft = x < frame.width / 2;
    place('.readout', {
      top: pixels(frame.top + 24),
      left: isLeft ? pixels(frame.left + x + 12) : '',
      right: isLeft ? '' : pixels(this.#width.pixels - frame.left - x + 12),
    });
  }

  #lay(data: PlotData): Drawing {
    const subject = `${data.title} ${data.series[0]?.curve.quantity} ${data.system}`;
    if (!this.dragged || subject !== this.#subject) this.#memory = newMemory();
    this.#subject = subject;
    const fontFamily = familyOf(this);
    return draw(
      data,
      {
        width: this.#width.pixels,
        height: this.height,
        label: (text) => textWidth(text, `600 12px ${fontFamily}`),
        small: (text) => textWidth(text, `600 11px ${fontFamily}`),
      },
      this.#memory,
    );
  }

  /** `dB at 1 m`, `mm, one way`. */
  #conditions({ detail = '' }: PlotData, drawing: Drawing | undefined): string {
    const unit = drawing?.unit.symbol ?? '';
    return unit === '' || detail === '' || detail.startsWith('at ') ? `${unit} ${detail}`.trim() : `${unit}, ${detail}`;
  }

  #stage(data: PlotData, drawing: Drawing): TemplateResult {
    const [low, high] = data.horizontal;
    const frequency = this.crosshair ?? this.#keyboardFrequency;
    const spoken =
      frequency === undefined ? 'no frequency chosen' : readingText(readingAt(data, frequency), data, drawing.unit);
    return html`
      <div class="stage">
        <svg
          class="drawing"
          role="img"
          aria-label=${findingOf(data, drawing.unit)}
          width=${this.#width.pixels}
          height=${this.height}
        >
          ${picture(drawing, this.crosshair)}
        </svg>
        <div
          class="crosshair"
          role="slider"
          tabindex="0"
          aria-label="Read values of ${data.title}"
          aria-valuemin=${low}
          aria-valuemax=${high}
          aria-valuenow=${Math.round(frequency ?? Math.sqrt(low * high))}
          aria-valuetext=${spoken}
          @pointermove=${this.#follow}
          @pointerdown=${this.#follow}
          @pointerleave=${this.#leave}
          @keydown=${this.#key}
          @blur=${this.#leave}
        ></div>
        ${this.crosshair === undefined ? nothing : this.#readout(data, drawing, this.crosshair)}
      </div>
    `;
  }

  #readout(data: PlotData, drawing: Drawing, frequency: number): TemplateResult {
    return html`
      <div class="readout" aria-hidden="true">
        <b>${spellFrequency(frequency, data.system)}</b>
        <dl>
          ${readingAt(data, frequency).values.map(
            ({ label, line, value }) => html`
              <svg viewBox="0 0 18 4"><path class="curve ${line}" d="M0 2H18" /></svg>
              <dt>${label}</dt>
              <dd>${value === undefined ? '–' : drawing.unit.text(value)}</dd>
            `,
          )}
        </dl>
      </div>
    `;
  }

  #table(data: PlotData, drawing: Drawing): TemplateResult {
    return html`
      <div class="table" tabindex="0" role="region" aria-label="Values of ${data.title}">
        <table>
          <thead>
            <tr>
              <th scope="col">Frequency</th>
              ${data.series.map(({ label }) => html`<th scope="col">${label}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${thirdOctaves(...data.horizontal).map(
              (frequency) => html`
                <tr>
                  <th scope="row">${spellFrequency(frequency, data.system)}</th>
                  ${readingAt(data, frequency).values.map(
                    ({ value }) => html`<td>${value === undefined ? '–' : drawing.unit.text(value)}</td>`,
                  )}
                </tr>
              `,
            )}
          </tbody>
        </table>
      </div>
    `;
  }

  #follow = (event: PointerEvent): void => {
    const { frame } = this.#drawing ?? {};
    if (!frame) return;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const x = Math.min(Math.max(event.clientX - box.left, 0), frame.width);
    this.#move(frame.hertz(x));
  };

  #leave = (): void => this.#move(undefined);

  #key = (event: KeyboardEvent): void => {
    const { data } = this;
    if (!data) return;
    const [low, high] = data.horizontal;
    const now = this.crosshair ?? this.#keyboardFrequency ?? data.marks[0]?.frequency ?? Math.sqrt(low * high);
    const next = {
      ArrowLeft: () => stepFrequency(now, -1, event.shiftKey, data.horizontal),
      ArrowRight: () => stepFrequency(now, 1, event.shiftKey, data.horizontal),
      ArrowDown: () => stepFrequency(now, -1, event.shiftKey, data.horizontal),
      ArrowUp: () => stepFrequency(now, 1, event.shiftKey, data.horizontal),
      PageDown: () => stepFrequency(now, -1, true, data.horizontal),
      PageUp: () => stepFrequency(now, 1, true, data.horizontal),
      Home: () => low,
      End: () => high,
      Escape: () => undefined,
    }[event.key];
    if (!next) return;
    event.preventDefault();
    this.#keyboardFrequency = next();
    this.#move(this.#keyboardFrequency);
  };

  #move(frequency: number | undefined): void {
    this.crosshair = frequency;
    this.dispatchEvent(new CustomEvent('crosshair-move', { detail: { frequency }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'curve-plot': CurvePlot;
  }
}
