/** The pages over the sheet that are fetched after the first paint. */
import { html, type TemplateResult } from 'lit';
import '../components/dialog/page-dialog.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { AppHost, Page } from './app-host.ts';
import { cellCard } from './cell-card.ts';
import './guide-dialog.ts';
import './key-page.ts';

export function openPage(
  page: Page,
  app: AppHost,
  { workbook, sheet, close }: { readonly workbook: Workbook; readonly sheet: Sheet; readonly close: () => void },
): TemplateResult {
  switch (page) {
    case 'shelf':
      // Fetched when it is first asked for.
      void import('./shelf-page.ts');
      return html`<shelf-page
        .app=${app}
        .sheet=${sheet}
        system=${workbook.document.system}
        @close=${close}
      ></shelf-page>`;
    case 'guide':
      return html`<guide-dialog
        at=${app.guideAt}
        .functions=${workbook.functions}
        @use-example=${(event: CustomEvent<{ formula: string }>) => {
          close();
          app.edit(event.detail.formula);
        }}
        @close=${close}
      ></guide-dialog>`;
    case 'keys':
      return html`<page-dialog heading="Keys" @close=${close}><key-page></key-page></page-dialog>`;
    case 'cell':
      return html`<page-dialog heading=${`${app.cell} in full`} @close=${close}>
        ${cellCard(workbook, sheet.id, app.cell, {
          full: true,
          go: (place) => {
            close();
            app.go(place);
          },
        })}
      </page-dialog>`;
  }
}
