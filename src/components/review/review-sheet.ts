import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { originWords } from '../../document/origin-words.ts';
import type { Review, ReviewCell, ReviewSection, ReviewVerdict } from '../../document/review/types.ts';
import type { Origin } from '../../document/types.ts';
import { unbroken } from '../../units/show.ts';
import { icon } from '../icons.ts';
import '../drawing/cell-plot.ts';
import type { DrawingData } from '../drawing/data.ts';
import '../plot/curve-plot.ts';
import '../plot/window-plot.ts';
import type { PlotData } from '../plot/data.ts';
import type { WindowPlotData } from '../plot/window-data.ts';
import { reviewStyles } from './styles.ts';

/** A plot of the sheet with what it draws. */
export type PlotPicture =
  | { readonly kind: 'curves'; readonly data: PlotData }
  | { readonly kind: 'window'; readonly data: WindowPlotData }
  | { readonly kind: 'drawing'; readonly data: DrawingData };

/** The letter that stands beside a number for where it comes from. What the builder chose needs none. */
const letters: Readonly<Partial<Record<Origin, string>>> = {
  measured: 'M',
  datasheet: 'D',
  invented: 'I',
  assumed: 'A',
};

/** Texts of more characters than this are broken into lines. */
const LONG = 24;

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** The review of a sheet as a page to read, print and check. */
@customElement('review-sheet')
export class ReviewSheet extends LitElement {
  static override styles = reviewStyles;

  @property({ attribute: false }) review: Review | undefined;
  @property({ attribute: false }) plots: readonly PlotPicture[] = [];

  protected override render(): TemplateResult | typeof nothing {
    const { review } = this;
    if (!review) return nothing;
    const { title, sheet, summary, made, counts } = review;
    return html`<article>
      <header>
        <h2>${sheet === title ? title : `${title}, ${sheet}`}</h2>
        <p class="quiet">${summary}</p>
        <p class="quiet"><time datetime=${made}>${day.format(new Date(made))}</time></p>
        <p class="tally">
          ${(['fail', 'caution', 'good'] as const).map(
            (status) => html`<span class=${status}>${icon(status)}<b>${counts[status]}</b> ${status}</span>`,
          )}
        </p>
      </header>
      ${part(
        'Verdicts',
        review.verdicts,
        (all) =>
          html`<ul class="verdicts">
            ${all.map(verdict)}
          </ul>`,
      )}
      ${part('Open doubts', review.doubts, items)}
      ${part('Plots', this.plots, (all) => html`<div class="plots">${all.map(plot)}</div>`)}
      ${part('Inputs', review.inputs, tables)} ${part('Results', review.results, tables)}
      ${part('Where the numbers come from', review.origins, (all) =>
        items(
          all.map(({ origin, inputs }) => {
            const letter = origin === 'unstated' ? undefined : letters[origin];
            const words = origin === 'unstated' ? 'not stated' : originWords[origin];
            return `${letter ? `${letter}, ` : ''}${words}: ${inputs.join(', ')}`;
          }),
        ),
      )}
      ${part('Taken for granted', review.assumptions, items)}
      ${part('Rules of thumb, common practice without a source', review.rules, items)}
      ${part('Notes', review.notes, items)}
      ${part('Sources', review.sources, (all) =>
        items(all.map(({ title: source, functions }) => `${source}: ${functions.join(', ')}`)),
      )}
    </article>`;
  }
}

/** A heading with what stands under it; nothing where nothing does. */
function part<T>(
  heading: string,
  things: readonly T[],
  body: (things: readonly T[]) => TemplateResult,
): TemplateResult | typeof nothing {
  return things.length === 0
    ? nothing
    : html`<section>
        <h3>${heading}</h3>
        ${body(things)}
      </section>`;
}

const items = (texts: readonly string[]): TemplateResult =>
  html`<ul class="items">
    ${texts.map((text) => html`<li>${text}</li>`)}
  </ul>`;

const verdict = ({ label, status, word, reason, note, limits }: ReviewVerdict): TemplateResult => html`
  <li>
    <span class=${status}>${icon(status)}<span class="heard">${status}: </span></span>
    <div>
      <p><b>${label}</b>${label.endsWith('?') ? '' : ':'} <span class=${status}>${word}</span></p>
      <p>${unbroken(reason)}</p>
      ${note === '' ? nothing : html`<p class="quiet">${note}</p>`}
    </div>
    <div class="limits">${limits.map((limit) => html`<p>${limit}</p>`)}</div>
  </li>
`;

function plot(each: PlotPicture): TemplateResult {
  if (each.kind === 'window') return html`<window-plot .data=${each.data}></window-plot>`;
  if (each.kind === 'drawing') return html`<cell-plot .data=${each.data}></cell-plot>`;
  return html`<curve-plot .data=${each.data}></curve-plot>`;
}

const tables = (sections: readonly ReviewSection[]): TemplateResult =>
  html`<div class="sections">
    ${sections.map(
      ({ title, columns, rows }) =>
        html`<div class=${isWide({ columns, rows }) ? 'wide' : ''}>
          ${title === '' ? nothing : html`<h4>${title}</h4>`}
          <table aria-label=${title || 'Rows'}>
            ${
              columns.length < 2
                ? nothing
                : html`<thead>
                    <tr>
                      <td></td>
                      ${columns.map((column) => html`<th scope="col">${column}</th>`)}
                    </tr>
                  </thead>`
            }
            <tbody>
              ${rows.map(
                ({ label, cells }) =>
                  html`<tr>
                    <th scope="row">${label}</th>
                    ${cells.map(cell)}
                  </tr>`,
              )}
            </tbody>
          </table>
        </div>`,
    )}
  </div>`;

/** More than half of the page has room for, as four drivers side by side. */
const isWide = ({ columns, rows }: Pick<ReviewSection, 'columns' | 'rows'>): boolean =>
  columns.length > 3 || rows.some(({ cells }) => cells.filter(({ text }) => text.length > LONG).length > 1);

function cell({ text, origin }: ReviewCell): TemplateResult {
  const letter = origin && letters[origin];
  const mark = letter
    ? html`<sup aria-hidden="true">${letter}</sup><span class="heard">${originWords[origin]}</span>`
    : nothing;
  return html`<td class=${text.length > LONG ? 'long' : ''}>${text}${mark}</td>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'review-sheet': ReviewSheet;
  }
}
