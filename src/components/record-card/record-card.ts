import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Curve } from '../../../functions/values/curve.ts';
import { networkTable } from '../../../functions/values/network-table.ts';
import type { CellRecord } from '../../../functions/values/record.ts';
import type { Sentence } from '../../../functions/values/say.ts';
import type { Status } from '../../../functions/values/verdict.ts';
import { titleOf } from '../../document/record-text.ts';
import type { Line, UnitSystem } from '../../document/types.ts';
import { alignedStyles } from '../aligned.ts';
import { icon } from '../icons.ts';
import { speak, unbroken } from '../../units/show.ts';
import { spell } from '../plot/unit.ts';
import '../plot/curve-plot.ts';
import '../plot/window-plot.ts';
import { linesOf, textOf } from './card-text.ts';
import type { CardFinding, CardState, CardValue } from './content.ts';
import { cardStyles } from './styles.ts';
import { curveTable, pointText } from './curve-table.ts';
import type { Origin } from './origin.ts';
import { tableIn, tableView } from './table-view.ts';

/** A cell opened in full: every field of a record with its unit, the points of a curve, the reason of a verdict, the
 *  whole message of a problem, and the formula behind it.
 *  @fires copy-text - The reader wants the content as text; `detail.text`.
 *  @fires save-table - The reader wants the curve or table as a file; `detail.record`.
 *  @fires go - The reader wants to see the cell where a problem arose; `detail` is `{ sheet, cell }`. */
@customElement('record-card')
export class RecordCard extends LitElement {
  static override styles = [cardStyles, alignedStyles];

  @property({ attribute: false }) state: CardState | undefined;
  /** What the row of the cell is called. */
  @property() label = '';
  /** Names of the sheets by id. */
  @property({ attribute: false }) sheetNames: ReadonlyMap<string, string> = new Map();
  /** As typed, with the leading `=`; empty for a typed value. */
  @property() formula = '';
  /** The formula with the values put in. */
  @property() worked = '';
  /** The functions that the formula calls. */
  @property({ attribute: false }) origins: readonly Origin[] = [];
  /** Every point of a curve stands below its plot. */
  @property({ type: Boolean }) full = false;
  @property() system: UnitSystem = 'metric';
  /** The line style for a curve. */
  @property() line: Line = 'system';
  /** Ends of the frequency axis for a curve or a shared window, in hertz. */
  @property({ attribute: false }) horizontal: readonly [number, number] = [20, 20000];

  override render(): TemplateResult | typeof nothing {
    const { state } = this;
    if (!state) return nothing;
    const { value } = state;
    return html`
      <div class="head">
        <b>${state.cell}</b>
        <h2>${this.label || (value.kind === 'record' ? titleOf(value.record) : 'Cell')}</h2>
        ${value.kind === 'empty' ? nothing : html`<button type="button" @click=${this.#copy}>Copy as text</button>`}
        ${
          value.kind === 'record' && (value.record.kind === 'curve' || tableIn(value.record))
            ? html`<button type="button" @click=${() => this.#save(value.record)}>Save as CSV</button>`
            : nothing
        }
      </div>
      ${this.#body(state)} ${state.findings.map((finding) => this.#finding(finding))}
      ${
        this.formula === ''
          ? nothing
          : html`<h3>Formula</h3>
              <code>${this.formula}</code>`
      }
      ${
        this.worked === ''
          ? nothing
          : html`<h3>With its values</h3>
              <code>${this.worked}</code>`
      }
      ${this.origins.map(
        ({ name, summary, source }) =>
          html`<h3>${name}</h3>
            <p>${summary}</p>
            <p class="quiet">${source}</p>`,
      )}
    `;
  }

  #body(state: CardState): TemplateResult {
    const { value } = state;
    switch (value.kind) {
      case 'empty':
        return html`<p class="quiet">This cell is empty.</p>`;
      case 'number':
        return this.#number(value.value, state);
      case 'text':
        return html`<p>${value.text}</p>`;
      case 'truth':
        return html`<p>${value.truth ? 'true' : 'false'}</p>`;
      case 'problem':
        return this.#problem(value, state.sheet);
      case 'record':
        return html`${this.#named(value.record)}${this.#record(value.record)}`;
    }
  }

  /** The record's own name, where the heading is the label of the row. */
  #named(record: CellRecord): TemplateResult | typeof nothing {
    const repeats =
      this.label === '' || record.kind === 'verdict' || record.kind === 'window' || titleOf(record) === this.label;
    return repeats || record.kind === 'curve' ? nothing : html`<p class="quiet">${titleOf(record)}</p>`;
  }

  #number(value: number, { type, unit }: CardState): TemplateResult {
    const [number = '', symbol = ''] = spell(value, type.quantity ?? 'ratio', this.system, unit).split('\u00a0');
    return html`
      <p class="number">${number}<span>${symbol}</span></p>
      <p class="exact">Unrounded ${`${Number(value.toPrecision(12))}`} in SI units</p>
    `;
  }

  #problem({ message, origin }: Extract<CardValue, { kind: 'problem' }>, here: string): TemplateResult {
    const sheet = origin && origin.sheet !== here ? `${this.sheetNames.get(origin.sheet) ?? 'other sheet'}!` : '';
    return html`
      <div class="note fail">
        ${icon('fail')}
        <p>${message}</p>
        ${origin ? html`<button type="button" @click=${() => this.#go(origin)}>Go to ${sheet}${origin.cell}</button>` : nothing}
      </div>
    `;
  }

  #record(record: CellRecord): TemplateResult {
    switch (record.kind) {
      case 'driver':
        return html`
          ${this.#fields(record, record.derived)}
          ${record.doubts.map((doubt) => this.#note('caution', 'Worth a second look', doubt))}
        `;
      case 'box':
        return html`${this.#fields(record, [])}
          <h3>Driver: ${titleOf(record.driver)}</h3>
          ${this.#record(record.driver)}`;
      case 'verdict':
        return html`<div class="note ${record.status}">
          ${icon(record.status)}
          <p class="word">${record.word}</p>
          <p>${unbroken(speak(record.reason, this.system))}</p>
          ${record.note ? html`<p>${unbroken(speak(record.note, this.system))}</p>` : nothing}
        </div>`;
      case 'curve':
        return this.#curve(record, this.label);
      case 'window':
        return html`<window-plot
          .data=${{ title: 'Shared window', window: record, marks: [], horizontal: this.horizontal, system: this.system }}
        ></window-plot>`;
      case 'way':
        return html`${this.#fields(record, [])} ${this.#curve(record.pressure, '')} ${this.#curve(record.impedance, '')}
          <h3>Filter: ${titleOf(record.network)}</h3>
          ${this.#record(record.network)}`;
      case 'table':
        return tableView(record, this.system);
      case 'network':
        return tableView(networkTable(record), this.system);
      case 'sample':
        return this.#fields(record, []);
    }
  }

  #curve(curve: Curve, label: string): TemplateResult {
    return html`<curve-plot
        .data=${{
          title: curve.title,
          series: [{ label: label === '' ? curve.title : label, line: this.line, curve }],
          limits: [],
          marks: [],
          horizontal: this.horizontal,
          system: this.system,
        }}
      ></curve-plot>
      ${this.full ? this.#points(curve) : nothing}`;
  }

  #points(curve: Curve): TemplateResult {
    const { head, points } = curveTable(curve, this.system);
    return html`<h3>Every point</h3>
      <div class="table points" tabindex="0" role="region" aria-label=${`Points of ${curve.title}`}>
        <table>
          <thead>
            <tr>
              ${head.map((unit) => html`<th scope="col" class="number">${unit}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${points.map(
              (point) =>
                html`<tr>
                  ${point.map((value) => html`<td class="number">${pointText(value ?? Number.NaN)}</td>`)}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>`;
  }

  #fields(record: CellRecord, derived: readonly string[]): TemplateResult {
    return html`<dl>
      ${linesOf(record, this.system).map(
        ({ name, label, meaning, text }) =>
          html`<div>
            <dt>
              ${label}${meaning === '' ? nothing : html`<span class="meaning">${meaning}</span>`}${derived.includes(name) ? html`<span class="derived">computed</span>` : nothing}
            </dt>
            <dd class=${text.length > 24 ? 'long' : ''}>${text}</dd>
          </div>`,
      )}
    </dl>`;
  }

  #note(status: Status, word: string, sentence: Sentence): TemplateResult {
    return html`<div class="note ${status}">
      ${icon(status)}
      <p class="word">${word}</p>
      <p>${unbroken(speak(sentence, this.system))}</p>
    </div>`;
  }

  #finding({ level, message, fix }: CardFinding): TemplateResult {
    const status = level === 'error' ? 'fail' : 'caution';
    return html`<div class="note ${status}">
      ${icon(status)}
      <p>${message}</p>
      ${fix === undefined ? nothing : html`<p>Write <strong>${fix}</strong></p>`}
    </div>`;
  }

  #copy = (): void => {
    if (!this.state) return;
    const text = textOf(this.state, this.system);
    this.dispatchEvent(new CustomEvent('copy-text', { detail: { text }, bubbles: true, composed: true }));
  };

  #save(record: CellRecord): void {
    this.dispatchEvent(new CustomEvent('save-table', { detail: { record }, bubbles: true, composed: true }));
  }

  #go({ sheet, cell }: { readonly sheet: string; readonly cell: string }): void {
    this.dispatchEvent(new CustomEvent('go', { detail: { sheet, cell }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'record-card': RecordCard;
  }
}
