import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Consequence } from '../../document/consequences.ts';
import type { ShownCell } from '../../document/shown.ts';
import { icon } from '../icons.ts';
import { ranked, wordsOf } from './data.ts';

/** What an edit changed: the cause first, then verdicts that turned, then values.
 *  @fires go - A row was chosen; `detail` is its place `{ sheet, cell }`. */
@customElement('consequence-list')
export class ConsequenceList extends LitElement {
  static override styles = css`
    :host {
      display: block;
      color: var(--ink);
      font-size: 14px;
      line-height: 20px;
      font-variant-numeric: tabular-nums lining-nums;
    }
    .head {
      display: flex;
      flex-wrap: wrap;
      align-items: baseline;
      gap: 0 10px;
      padding-bottom: 4px;
    }
    h2 {
      margin: 0;
      font-size: 14px;
      line-height: 20px;
      font-weight: 600;
    }
    .count,
    .none {
      color: var(--ink2);
      font-size: 12.5px;
      line-height: 18px;
    }
    .count {
      margin-inline-start: auto;
    }
    .none {
      margin: 4px 0;
    }
    ol {
      margin: 0;
      padding: 0;
      list-style: none;
    }
    li + li {
      border-top: 1px solid var(--line);
    }
    li button {
      display: flex;
      gap: 10px;
      align-items: center;
      width: 100%;
      min-height: 30px;
      margin: 0;
      padding: 4px 0;
      border: 0;
      background: none;
      color: inherit;
      font: inherit;
      text-align: start;
      cursor: pointer;
    }
    li button:hover {
      background: color-mix(in srgb, var(--ink) 7%, transparent);
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
    }
    .address {
      flex: none;
      min-width: 36px;
      color: var(--ink3);
      font-size: 12.5px;
    }
    .label {
      flex: 1;
      min-width: 84px;
      overflow-wrap: anywhere;
    }
    .cause .address,
    .cause .after {
      color: var(--accent);
    }
    /* Words in a line: boxes side by side would take the browser twice as long to lay out. */
    .change {
      flex: 0 1 auto;
      max-width: 190px;
      text-align: end;
    }
    .before,
    .arrow {
      color: var(--ink3);
    }
    .after {
      font-weight: 600;
    }
    .arrow {
      margin-inline: 6px;
    }
    :is(.good, .caution, .fail) + :is(.good, .caution, .fail) {
      margin-inline-start: 5px;
    }
    .good {
      color: var(--good);
    }
    .caution {
      color: var(--caution);
    }
    .fail {
      color: var(--fail);
    }
    .icon {
      vertical-align: -3px;
      width: 16px;
      height: 16px;
      fill: none;
      stroke: currentColor;
      stroke-width: 1.5;
      stroke-linecap: round;
      stroke-linejoin: round;
    }
    p.caution {
      margin: 0 0 6px;
      font-size: 12.5px;
      line-height: 18px;
    }
    .more {
      min-height: 32px;
      margin: 2px 0 0;
      padding: 0;
      border: 0;
      background: none;
      color: var(--accent);
      font: inherit;
      text-decoration: underline;
      text-decoration-color: color-mix(in srgb, currentColor 45%, transparent);
      text-underline-offset: 3px;
      cursor: pointer;
    }
    .heard {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
      white-space: nowrap;
    }
    @media (pointer: coarse) {
      li button,
      .more {
        min-height: 44px;
      }
    }
  `;

  @property({ attribute: false }) consequences: readonly Consequence[] = [];
  /** The sheet the reader is on; cells of others are written with the sheet's name. */
  @property() sheet = '';
  /** Names of the sheets by id. */
  @property({ attribute: false }) sheetNames: ReadonlyMap<string, string> = new Map();
  /** Since when, in words that follow "Changed": "since 14:02", "by the last edit". */
  @property() since = '';
  /** Cells of the sheet with a result, where known: "11 of 58 cells". */
  @property({ type: Number }) total = 0;

  @state() private open = false;

  override render(): TemplateResult {
    const { first, smaller } = ranked(this.consequences);
    const changed = this.consequences.length;
    const rows = this.open ? [...first, ...smaller] : first;
    return html`
      <div class="head">
        <h2>${this.since === '' ? 'What changed' : `Changed ${this.since}`}</h2>
        ${changed === 0 ? nothing : html`<span class="count">${this.#count(changed)}</span>`}
      </div>
      ${changed === 0 ? html`<p class="none">Nothing yet: what an edit changes is listed here.</p>` : nothing}
      <ol id="rows" ?hidden=${changed === 0}>
        ${rows.map((row) => this.#row(row))}
      </ol>
      ${
        smaller.length === 0
          ? nothing
          : html`<button
              class="more"
              type="button"
              aria-expanded=${this.open ? 'true' : 'false'}
              aria-controls="rows"
              @click=${() => (this.open = !this.open)}
            >
              ${this.open ? 'Fewer' : `${smaller.length} smaller changes`}
            </button>`
      }
    `;
  }

  #address({ sheet, cell }: Consequence['place']): string {
    const isHere = this.sheet === '' || sheet === this.sheet;
    return isHere ? cell : `${this.sheetNames.get(sheet) ?? 'other sheet'}!${cell}`;
  }

  #count(changed: number): string {
    if (this.total > 0) return `${changed} of ${this.total} cells`;
    return changed === 1 ? '1 cell' : `${changed} cells`;
  }

  #row(row: Consequence): TemplateResult {
    return html`
      <li class=${row.isCause ? 'cause' : ''}>
        <button type="button" @click=${() => this.#go(row)}>
          <span class="address">${this.#address(row.place)}</span>
          <span class="label">${row.label === row.place.cell ? '' : row.label}</span>
          <span class="change">${this.#change(row)}</span>
        </button>
        ${row.doubts.map((words) => html`<p class="caution">${icon('caution')} ${words}</p>`)}
      </li>
    `;
  }

  /** Before and after; where both would say the same, that it changed all the same. */
  #change({ before, after, move }: Consequence): TemplateResult | string {
    if (move !== undefined) return move;
    if (before.kind === 'verdict' && after.kind === 'verdict' && before.word === after.word)
      return html`<span class="before">still</span> ${this.#cell(after)}`;
    if (before.kind === 'record' && after.kind === 'record' && wordsOf(before) === wordsOf(after)) return 'changed';
    return html`<span class="before">${this.#before(before, after)}</span>
      <span class="arrow" aria-hidden="true">→</span><span class="heard">now</span>
      <span class="after">${this.#cell(after)}</span>`;
  }

  /** The unit is written once where both have the same, and a verdict that turned leaves its icon only. */
  #before(before: ShownCell, after: ShownCell): TemplateResult | string {
    if (before.kind === 'verdict' && after.kind === 'verdict')
      return html`<span class=${before.status}>${icon(before.status)}</span><span class="heard">${before.word}</span>`;
    if (before.kind === 'number' && after.kind === 'number' && before.unit === after.unit) return before.number;
    return this.#cell(before);
  }

  #cell(shown: ShownCell): TemplateResult | string {
    if (shown.kind === 'verdict')
      return html`<span class=${shown.status}>${icon(shown.status)}</span
        ><span class=${shown.status}>${shown.word}</span>`;
    if (shown.kind === 'problem')
      return html`<span class="fail">${icon('fail')}</span><span class="fail">${wordsOf(shown)}</span>`;
    return wordsOf(shown);
  }

  #go({ place }: Consequence): void {
    this.dispatchEvent(
      new CustomEvent('go', { detail: { sheet: place.sheet, cell: place.cell }, bubbles: true, composed: true }),
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'consequence-list': ConsequenceList;
  }
}
