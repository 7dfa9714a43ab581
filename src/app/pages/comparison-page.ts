import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../components/comparison/comparison-table.ts';
import '../../components/dialog/page-dialog.ts';
import { differenceText, type Sides } from '../../document/difference-text.ts';
import { betweenSheets, sinceBaseline, type Differences } from '../../document/sheet-differences.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { FollowWorkbook } from '../follow-workbook.ts';
import { clock } from '../clock.ts';
import './copy-button.ts';

const BASELINE = 'baseline';

/** The sheet beside its baseline or beside another sheet.
 *  @fires close - It was closed.
 *  @fires go - A cell was chosen; `detail` is its place. */
@customElement('comparison-page')
export class ComparisonPage extends LitElement {
  static override styles = css`
    label {
      display: inline-flex;
      flex-wrap: wrap;
      align-items: center;
      gap: 4px 10px;
      margin-bottom: 12px;
      font: 14px/20px var(--sans);
      color: var(--ink2);
    }
    select {
      font: inherit;
      color: var(--ink);
      background: var(--paper);
      border: 1px solid var(--ink3);
      border-radius: 5px;
      min-height: 32px;
      padding: 0 8px;
      max-width: 100%;
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 2px;
    }
    @media (pointer: coarse) {
      select {
        min-height: 44px;
      }
    }
  `;

  @property({ attribute: false }) workbook!: Workbook;
  @property({ attribute: false }) sheet!: Sheet;
  protected readonly following = new FollowWorkbook(this);
  /** What the sheet is compared with: the baseline, or the id of a sheet. */
  @state() private other = '';

  protected override render(): TemplateResult {
    const choices = this.#choices();
    const chosen = choices.find(({ id }) => id === this.other) ?? choices[0];
    const compared = chosen && this.#compare(chosen.id);
    return html`<page-dialog
      wide
      heading=${`Compare ${this.sheet.name}`}
      @close=${() => this.dispatchEvent(new CustomEvent('close'))}
    >
      ${
        compared
          ? html`<copy-button
              slot="tools"
              .text=${() => differenceText(compared.differences, compared.sides)}
            ></copy-button>`
          : nothing
      }
      ${
        chosen
          ? html`<label
              >with
              <select @change=${(event: Event) => (this.other = (event.target as HTMLSelectElement).value)}>
                ${choices.map(({ id, words }) => html`<option value=${id} ?selected=${id === chosen.id}>${words}</option>`)}
              </select></label
            >`
          : html`<p>
              There is nothing to compare with yet. Pin the baseline (Ctrl B) and change something, or duplicate the
              sheet and change the copy.
            </p>`
      }
      ${
        compared
          ? html`<comparison-table
              .differences=${compared.differences}
              .sides=${compared.sides}
              @go=${(event: CustomEvent<object>) => this.dispatchEvent(new CustomEvent('go', { detail: event.detail }))}
            ></comparison-table>`
          : nothing
      }
    </page-dialog>`;
  }

  #choices(): readonly { readonly id: string; readonly words: string }[] {
    const { baseline, sheets } = this.workbook.document;
    const others = sheets.filter(({ id }) => id !== this.sheet.id).map(({ id, name }) => ({ id, words: name }));
    const isThere = baseline?.cells.has(this.sheet.id);
    return isThere ? [{ id: BASELINE, words: `its baseline of ${clock(baseline?.pinned ?? '')}` }, ...others] : others;
  }

  #compare(id: string): { readonly differences: Differences; readonly sides: Sides } | undefined {
    const { workbook, sheet } = this;
    if (id === BASELINE) {
      const first = `Baseline ${clock(workbook.document.baseline?.pinned ?? '')}`;
      return { differences: sinceBaseline(workbook, sheet.id), sides: { first, second: 'Now' } };
    }
    const other = workbook.document.sheets.find((each) => each.id === id);
    return (
      other && {
        differences: betweenSheets(workbook, sheet, other),
        sides: { first: sheet.name, second: other.name },
      }
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'comparison-page': ComparisonPage;
  }
}
