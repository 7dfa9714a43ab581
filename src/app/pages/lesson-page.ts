import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import '../../components/lesson/lesson-steps.ts';
import { withUnit } from '../../document/complete.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { AppHost } from '../app-host.ts';
import { FollowWorkbook } from '../follow-workbook.ts';
import { lessonOf } from './lesson-source.ts';

/** The lesson of a sheet over it. Guesses are written into the sheet like anything typed.
 *  @fires close - It was closed. */
@customElement('lesson-page')
export class LessonPage extends LitElement {
  @property({ attribute: false }) app: AppHost | undefined;
  @property({ attribute: false }) workbook: Workbook | undefined;
  @property({ attribute: false }) sheet: Sheet | undefined;
  protected readonly following = new FollowWorkbook(this);

  protected override render(): TemplateResult | typeof nothing {
    const { workbook, sheet } = this;
    if (!workbook || !sheet) return nothing;
    return html`<page-dialog covering heading=${sheet.name} @close=${this.#close}>
      <lesson-steps
        .steps=${lessonOf(workbook, sheet)}
        @answer=${(event: CustomEvent<{ cell: string; text: string; unit: string }>) =>
          this.#write([event.detail.cell], withUnit(event.detail.text, event.detail.unit))}
        @again=${() =>
          this.#write(
            (sheet.lesson ?? []).map(({ guess }) => sheet.names.get(guess) ?? guess),
            '',
          )}
        @finish=${this.#close}
      ></lesson-steps>
    </page-dialog>`;
  }

  #write(cells: readonly string[], text: string): void {
    const { app, sheet } = this;
    if (!app || !sheet) return;
    const texts = new Map(cells.map((cell) => [cell, text]));
    void app.acts.do({ kind: 'write', sheet: sheet.id, texts });
  }

  readonly #close = (): void => {
    this.dispatchEvent(new CustomEvent('close'));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lesson-page': LessonPage;
  }
}
