import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { compared } from './compared.ts';
import { standaloneSvg } from './export.ts';
import { Faces } from './faces.ts';
import { flag, FLAG_HEIGHT } from './flag.ts';
import { frameOf, type Frame } from './frame.ts';
import { familyOf, textWidth } from './measure-text.ts';
import { whenDiffering } from './same-data.ts';
import { pictureStyles } from './picture-styles.ts';
import { edge, hatch, paper } from './picture.ts';
import { plotStyles } from './styles.ts';
import { valuesButton } from './values-button.ts';
import { Width } from './width.ts';
import { stepFrequency } from './readings.ts';
import { spellFrequency } from './unit.ts';
import { windowStyles } from './window-styles.ts';
import {
  comparisonOf,
  octaveText,
  outcomeOf,
  rowsOf,
  rulesAt,
  windowFinding,
  type WindowPlotData,
  type WindowRow,
} from './window-data.ts';

const ROW = 26;
const HEAD = 24;
const FOOT = 20;

/** The band that two drivers share, as bars over the frequency axis of the other plots: one bar a rule, hatched where
 *  the rule forbids, pale where it holds only when stretched, the shared window in green and the gap in red. What the rules
 *  say of the frequency under the pointer, or of one gone to with the arrow keys, stands in its heading. */
@customElement('window-plot')
export class WindowPlot extends LitElement {
  static override styles = [plotStyles, pictureStyles, windowStyles];

  @property(whenDiffering) data: WindowPlotData | undefined;

  @state() private tableOpen = false;
  @state() private crosshair: number | undefined;

  #width = new Width(this);

  constructor() {
    super();
    this.addController(new Faces(this));
  }

  /** The plot as the text of an SVG file that needs nothing else. */
  svgText(): string {
    const drawing = this.renderRoot.querySelector<SVGSVGElement>('svg.drawing');
    return drawing && this.data
      ? standaloneSvg(drawing, `${this.data.title}  ${outcomeOf(this.data).text}`, windowFinding(this.data))
      : '';
  }

  override render(): TemplateResult | typeof nothing {
    const { data } = this;
    if (!data) return nothing;
    const outcome = this.crosshair === undefined ? outcomeOf(data) : rulesAt(data, this.crosshair);
    return html`
      <div class="head">
        <h2>${data.title}</h2>
        <span class="end">
          ${compared(comparisonOf(data), data.baseline)}
          <slot name="verdict"></slot>
          ${valuesButton(this.tableOpen, () => (this.tableOpen = !this.tableOpen))}
        </span>
        <span class="outcome ${outcome.status}">${outcome.text}</span>
      </div>
      ${this.#width.pixels > 0 ? this.#picture(data) : nothing} ${this.tableOpen ? this.#table(data) : nothing}
    `;
  }

  #picture(data: WindowPlotData): TemplateResult {
    const rows = rowsOf(data);
    const height = HEAD + rows.length * ROW + 6;
    const outer = { width: this.#width.pixels, height: height + FOOT + 8 };
    const frame = frameOf(outer, data.horizontal, { from: 0, to: 1, step: 1 });
    return html`
      <div class="stage">
        <svg class="drawing" role="img" aria-label=${windowFinding(data)} width=${outer.width} height=${outer.height}>
          ${hatch}
          <g transform="translate(${frame.left} ${frame.top})">
            ${paper(frame, [])}
            <svg width=${frame.width} height=${frame.height} overflow="hidden">
              ${this.#band(data, frame)} ${rows.map((row, index) => this.#bar(row, HEAD + index * ROW, frame))}
              ${data.marks.map(({ frequency }) => svg`<path class="needle" d="M${frame.x(frequency)} 0V${frame.height}" />`)}
            </svg>
            ${edge(frame)} ${rows.map((row, index) => this.#name(row, HEAD + index * ROW, frame, data))}
            ${data.marks.map((mark) => this.#flag(spellFrequency(mark.frequency, data.system), frame.x(mark.frequency), frame))}
            ${this.crosshair === undefined ? nothing : svg`<path class="hair" d="M${frame.x(this.crosshair)} 0V${frame.height}" />`}
          </g>
        </svg>
        ${this.#reader(data, frame)}
      </div>
    `;
  }

  #reader(data: WindowPlotData, frame: Frame): TemplateResult {
    const [low, high] = data.horizontal;
    const frequency = this.crosshair ?? Math.sqrt(low * high);
    const go = (to: number | undefined): void => void (this.crosshair = to);
    const follow = ({ clientX, currentTarget }: PointerEvent): void => {
      const x = clientX - (currentTarget as Element).getBoundingClientRect().left - frame.left;
      go(frame.hertz(Math.min(Math.max(x, 0), frame.width)));
    };
    const step = (event: KeyboardEvent): void => {
      const direction = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key] as 1 | -1 | undefined;
      if (!direction) return;
      event.preventDefault();
      go(stepFrequency(frequency, direction, event.shiftKey, data.horizontal));
    };
    return html`<div
      class="crosshair"
      role="slider"
      tabindex="0"
      aria-label="Ask the rules of ${data.title}"
      aria-valuemin=${low}
      aria-valuemax=${high}
      aria-valuenow=${Math.round(frequency)}
      aria-valuetext=${this.crosshair === undefined ? 'no frequency chosen' : rulesAt(data, frequency).text}
      @pointermove=${follow}
      @pointerdown=${follow}
      @pointerleave=${() => go(undefined)}
      @keydown=${step}
      @blur=${() => go(undefined)}
    ></div>`;
  }

  #band({ window }: WindowPlotData, frame: Frame): SVGTemplateResult {
    const { low, high, octaves, stretchedOctaves } = window;
    const across = (from: number, to: number, kind: string): SVGTemplateResult =>
      svg`<rect class="band ${kind}" x=${frame.x(from)} y="1" width=${Math.max(1, frame.x(to) - frame.x(from))} height=${frame.height - 2} />`;
    const [floor, ceiling] = [
      Math.max(...window.floors.map(({ stretched }) => stretched), 1),
      Math.min(...window.ceilings.map(({ stretched }) => stretched), 1e6),
    ];
    return svg`
      ${octaves >= 0 ? across(low.at, high.at, 'shared') : across(high.at, low.at, 'gap')}
      ${stretchedOctaves > 0 ? across(floor, ceiling, 'loose') : nothing}
    `;
  }

  #bar({ side, limit, was, binding }: WindowRow, top: number, frame: Frame): SVGTemplateResult {
    const end = frame.width;
    const strict = Math.min(Math.max(frame.x(limit.at), 0), end);
    const loose = Math.min(Math.max(frame.x(limit.stretched), 0), end);
    const [inner, outer] = [Math.min(strict, loose), Math.max(strict, loose)];
    const y = top + 3;
    const height = ROW - 8;
    const line = (x: number, kind: string): SVGTemplateResult =>
      svg`<path class="end-line ${kind}" d="M${x} ${y - 1}V${y + height + 1}" />`;
    return svg`
      <g class=${side === 'floor' ? 'tweeter' : 'woofer'}>
        ${
          side === 'floor'
            ? svg`<rect x="0" y=${y} width=${inner} height=${height} fill="url(#hatch)" />
                <rect class="bar" x=${strict} y=${y} width=${end - strict} height=${height} />`
            : svg`<rect x=${outer} y=${y} width=${end - outer} height=${height} fill="url(#hatch)" />
                <rect class="bar" x="0" y=${y} width=${strict} height=${height} />`
        }
        <rect class="bar loose" x=${inner} y=${y} width=${outer - inner} height=${height} />
        ${line(loose, 'loose')} ${line(strict, binding ? 'binding' : '')}
        ${was === undefined ? nothing : line(frame.x(was), 'was')}
      </g>
    `;
  }

  #name({ side, limit, binding }: WindowRow, top: number, frame: Frame, data: WindowPlotData): SVGTemplateResult {
    const text = `${limit.name} ${spellFrequency(limit.at, data.system)}`;
    const width = textWidth(text, `${binding ? 600 : 400} 12px ${familyOf(this)}`);
    const ends = [frame.x(limit.at), frame.x(limit.stretched)];
    const busy = [...ends, frame.x(data.window.low.at), frame.x(data.window.high.at)];
    // Names stand in one column at the left, away from where the bars end, unless the band begins there.
    const left = 8 + width < Math.min(...busy) - 4;
    const x = left || Math.max(...busy) + 4 > frame.width - width - 8 ? 8 : frame.width - width - 8;
    const isFree = left || x !== 8;
    const hatched = !isFree || (side === 'floor') === left;
    return svg`<text class="rule ${binding ? 'binding' : ''} ${hatched ? 'hatched' : ''}" x=${x} y=${top + 16.5}>${text}</text>`;
  }

  #flag(text: string, x: number, frame: Frame): SVGTemplateResult {
    const width = textWidth(text, `600 11px ${familyOf(this)}`) + 12;
    const left = x + width > frame.width ? x - width : x;
    return flag(text, { x: left, y: 0, width, height: FLAG_HEIGHT });
  }

  #table(data: WindowPlotData): TemplateResult {
    return html`
      <div class="table" tabindex="0" role="region" aria-label="Values of ${data.title}">
        <table>
          <thead>
            <tr>
              <th scope="col">Rule</th>
              <th scope="col">Side</th>
              <th scope="col">Limit</th>
              <th scope="col">Stretched</th>
            </tr>
          </thead>
          <tbody>
            ${rowsOf(data).map(
              ({ side, limit }) => html`
                <tr>
                  <th scope="row">${limit.name}</th>
                  <td>${side === 'floor' ? 'from' : 'up to'}</td>
                  <td>${spellFrequency(limit.at, data.system)}</td>
                  <td>${spellFrequency(limit.stretched, data.system)}</td>
                </tr>
              `,
            )}
            <tr>
              <th scope="row">Shared window</th>
              <td></td>
              <td>${octaveText(data.window.octaves)}</td>
              <td>${octaveText(data.window.stretchedOctaves)}</td>
            </tr>
          </tbody>
        </table>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'window-plot': WindowPlot;
  }
}
