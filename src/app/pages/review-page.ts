import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import '../../components/review/review-sheet.ts';
import { reviewOf } from '../../document/review/review.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { reviewText } from '../../exchange/review-text.ts';
import { FollowWorkbook } from '../follow-workbook.ts';
import './copy-button.ts';
import { plotPicture } from '../plots/plot-picture.ts';

/** The review of a sheet over the sheet, to print or to copy.
 *  @fires close - It was closed. */
@customElement('review-page')
export class ReviewPage extends LitElement {
  static override styles = css`
    /* Laid out beside what is seen, so that its plots are drawn when the printer asks for them. */
    .paper {
      position: fixed;
      top: 0;
      left: 0;
      width: 688px;
      visibility: hidden;
    }
    @media print {
      .paper {
        position: static;
        width: auto;
        visibility: visible;
      }
      page-dialog {
        display: none;
      }
    }
  `;

  @property({ attribute: false }) workbook!: Workbook;
  @property({ attribute: false }) sheet!: Sheet;
  protected readonly following = new FollowWorkbook(this);

  protected override render(): TemplateResult {
    const { workbook, sheet } = this;
    const review = reviewOf(workbook, sheet, new Date());
    const plots = sheet.plots.flatMap((plot) => plotPicture(workbook, sheet, plot) ?? []);
    const sheetOf = (kind: string): TemplateResult =>
      html`<review-sheet class=${kind} .review=${review} .plots=${plots}></review-sheet>`;
    // What lies over the page is printed on one sheet of paper only: what is printed stands in the page itself.
    return html`<page-dialog wide heading="Review page" @close=${() => this.dispatchEvent(new CustomEvent('close'))}>
        <button slot="tools" type="button" @click=${() => print()}>Print or PDF</button>
        <copy-button slot="tools" .text=${() => reviewText(review)}></copy-button>
        ${sheetOf('seen')}
      </page-dialog>
      ${sheetOf('paper')}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'review-page': ReviewPage;
  }
}
