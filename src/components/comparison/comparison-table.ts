import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Consequence } from '../../document/consequences.ts';
import { groupsOf, moveText, sideText, type Sides } from '../../document/difference-text.ts';
import type { Differences } from '../../document/sheet-differences.ts';
import type { ShownCell } from '../../document/shown.ts';
import { unbroken } from '../../units/show.ts';
import { icon } from '../icons.ts';

/** Two sheets side by side: only what differs, verdicts that turn first.
 *  @fires go - A row was chosen; `detail` is its place `{ sheet, cell }`. */
@customElement('comparison-table')
export class ComparisonTable extends LitElement {
  static override styles = css`
    :host {
      display: block;
      container-type: inline-size;
      color: var(--ink);
      font: 14px/20px var(--sans);
      font-variant-numeric: tabular-nums lining-nums;
      overflow-wrap: anywhere;
    }
    table {
      width: 100%;
      border-collapse: collapse;
      table-layout: fixed;
    }
    col.label {
      width: 34%;
    }
    col.move {
      width: 92px;
    }
    th,
    td {
      padding: 5px 12px 5px 0;
      border-bottom: 1px solid var(--line);
      font-weight: 400;
      text-align: start;
      vertical-align: top;
    }
    thead th {
      position: sticky;
      top: 0;
      background: var(--paper);
      color: var(--ink2);
      font-size: 12.5px;
      font-weight: 600;
      border-bottom-color: var(--line2);
    }
    .number {
      padding-inline-end: 0;
      text-align: end;
    }
    tbody th.group {
      padding-top: 16px;
      border-bottom-color: var(--line2);
      font-weight: 600;
    }
    button {
      all: unset;
      cursor: pointer;
      text-decoration: underline;
      text-decoration-color: var(--line2);
      text-underline-offset: 3px;
    }
    button:hover {
      text-decoration-color: currentColor;
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
      border-radius: 3px;
    }
    .verdict {
      display: grid;
      grid-template-columns: 16px minmax(0, 1fr);
      gap: 0 6px;
    }
    .verdict b {
      font-weight: 600;
    }
    .verdict .reason {
      grid-column: 2;
      color: var(--ink2);
      font-size: 12.5px;
      line-height: 18px;
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
    .quiet {
      color: var(--ink3);
    }
    .icon {
      width: 16px;
      height: 16px;
      margin-top: 2px;
      stroke-width: 1.5;
    }
    @media (pointer: coarse) {
      button {
        padding: 12px 0;
      }
    }
    @container (max-width: 560px) {
      colgroup,
      thead th:first-child,
      .number {
        display: none;
      }
      table,
      thead,
      tbody {
        display: block;
      }
      tr {
        display: grid;
        grid-template-columns: 1fr 1fr;
        border-bottom: 1px solid var(--line);
      }
      th,
      td {
        border: 0;
      }
      tbody th {
        grid-column: 1 / -1;
        padding-bottom: 0;
      }
    }
  `;

  @property({ attribute: false }) differences: Differences | undefined;
  @property({ attribute: false }) sides: Sides = { first: '', second: '' };

  protected override render(): TemplateResult | typeof nothing {
    const { differences, sides } = this;
    if (!differences) return nothing;
    const groups = groupsOf(differences, sides);
    if (groups.length === 0) return html`<p role="status">Nothing differs.</p>`;
    return html`<table aria-label=${`${sides.first} beside ${sides.second}`}>
      <colgroup>
        <col class="label" />
        <col />
        <col />
        <col class="move" />
      </colgroup>
      <thead>
        <tr>
          <th scope="col">What differs</th>
          <th scope="col">${sides.first}</th>
          <th scope="col">${sides.second}</th>
          <th scope="col" class="number">By</th>
        </tr>
      </thead>
      ${groups.map(
        ({ heading, rows }) =>
          html`<tbody>
            <tr>
              <th class="group" scope="rowgroup" colspan="4">${heading} <span class="quiet">${rows.length}</span></th>
            </tr>
            ${rows.map((row) => this.#row(row))}
          </tbody>`,
      )}
    </table>`;
  }

  #row(row: Consequence): TemplateResult {
    const { label, before, after, place } = row;
    return html`<tr>
      <th scope="row">
        <button type="button" @click=${() => this.#go(row)} title=${`Go to ${place.cell}`}>${label}</button>
      </th>
      <td>${side(before)}</td>
      <td>${side(after)}</td>
      <td class="number">${moveText(row)}</td>
    </tr>`;
  }

  #go({ place }: Consequence): void {
    this.dispatchEvent(new CustomEvent('go', { detail: place, bubbles: true, composed: true }));
  }
}

function side(shown: ShownCell): TemplateResult | string {
  switch (shown.kind) {
    case 'empty':
      return html`<span class="quiet">–</span>`;
    case 'verdict':
      return html`<span class="verdict"
        ><span class=${shown.status}>${icon(shown.status)}</span><b class=${shown.status}>${shown.word}</b
        ><span class="reason">${unbroken(shown.reason)}</span></span
      >`;
    case 'problem':
      return html`<span class="fail">${shown.message}</span>`;
    default:
      return sideText(shown);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'comparison-table': ComparisonTable;
  }
}
