import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../components/dialog/page-dialog.ts';
import '../components/review/review-sheet.ts';
import type { ReviewPlot } from '../components/review/review-sheet.ts';
import { reviewOf } from '../document/review/review.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import { reviewText } from '../exchange/review-text.ts';
import './copy-button.ts';
import { plotData, windowData } from './plot-source.ts';

/** The review of a sheet over the sheet, to print or to copy.
 *  @fires close - It was closed. */
@customElement('review-page')
export class ReviewPage extends LitElement {
  @property({ attribute: false }) workbook!: Workbook;
  @property({ attribute: false }) sheet!: Sheet;

  protected override render(): TemplateResult {
    const { workbook, sheet } = this;
    const review = reviewOf(workbook, sheet, new Date());
    const plots = sheet.plots.flatMap((plot): ReviewPlot[] => {
      if (plot.kind === 'curves') return [{ kind: 'curves', data: plotData(workbook, sheet, plot) }];
      const data = windowData(workbook, sheet, plot);
      return data ? [{ kind: 'window', data }] : [];
    });
    return html`<page-dialog wide heading="Review page" @close=${() => this.dispatchEvent(new CustomEvent('close'))}>
      <button slot="tools" type="button" @click=${() => print()}>Print or PDF</button>
      <copy-button slot="tools" .text=${() => reviewText(review)}></copy-button>
      <review-sheet .review=${review} .plots=${plots}></review-sheet>
    </page-dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'review-page': ReviewPage;
  }
}
