/** The pages over the sheet that are fetched after the first paint. */
import { html, type TemplateResult } from 'lit';
import '../components/dialog/page-dialog.ts';
import type { Place } from '../engine/types.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import { runAction } from './run-action.ts';
import type { AppHost, Page } from './app-host.ts';
import { cellCard } from './cell-card.ts';
import './pages/key-page.ts';
import { THREE_WAY } from './two-way.ts';

export function openPage(
  page: Page,
  app: AppHost,
  { workbook, sheet, close }: { readonly workbook: Workbook; readonly sheet: Sheet; readonly close: () => void },
): TemplateResult {
  switch (page) {
    case 'shelf':
      // Fetched when it is first asked for.
      void import('./pages/shelf-page.ts');
      return html`<shelf-page
        .app=${app}
        .sheet=${sheet}
        system=${workbook.document.system}
        @close=${close}
      ></shelf-page>`;
    case 'shortlist':
      void import('./shortlist/shortlist-page.ts');
      return html`<shortlist-page .app=${app} .workbook=${workbook} .sheet=${sheet} @close=${close}></shortlist-page>`;
    case 'ask':
      void import('./ask/ask-page.ts');
      return html`<ask-page .app=${app} .workbook=${workbook} .sheet=${sheet} @close=${close}></ask-page>`;
    case 'review':
      void import('./pages/review-page.ts');
      return html`<review-page .workbook=${workbook} .sheet=${sheet} @close=${close}></review-page>`;
    case 'compare':
      void import('./pages/comparison-page.ts');
      return html`<comparison-page
        .workbook=${workbook}
        .sheet=${sheet}
        @close=${close}
        @go=${(event: CustomEvent<Place>) => {
          close();
          app.go(event.detail);
        }}
      ></comparison-page>`;
    case 'link':
      void import('./pages/link-page.ts');
      return html`<link-page .document=${workbook.document} @close=${close}></link-page>`;
    case 'plot':
      void import('./pages/plot-page.ts');
      return html`<plot-page .app=${app} .workbook=${workbook} .sheet=${sheet} @close=${close}></plot-page>`;
    case 'looks':
      void import('./pages/looks-page.ts');
      return html`<looks-page .app=${app} .sheet=${sheet} @close=${close}></looks-page>`;
    case 'take-over':
    case 'three-way':
      void import('./pages/take-over-page.ts');
      return html`<take-over-page
        .app=${app}
        .workbook=${workbook}
        .from=${sheet}
        into=${page === 'three-way' ? THREE_WAY : ''}
        @close=${close}
      ></take-over-page>`;
    case 'tour':
      void import('./pages/tour-page.ts');
      return html`<tour-page @close=${close}></tour-page>`;
    case 'lesson':
      void import('./pages/lesson-page.ts');
      return html`<lesson-page .app=${app} .workbook=${workbook} .sheet=${sheet} @close=${close}></lesson-page>`;
    case 'gallery':
      return gallery(app, close);
    case 'guide':
      void import('../components/function-guide/function-guide.ts');
      return html`<page-dialog wide filled heading="Function guide" @close=${close}>
        <function-guide
          function=${app.guideAt}
          .functions=${workbook.functions}
          @use-example=${(event: CustomEvent<{ formula: string }>) => {
            close();
            app.edit(event.detail.formula);
          }}
        ></function-guide>
      </page-dialog>`;
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

/** Fetched when it is first asked for; the starter sheets are not small. */
function gallery(app: AppHost, close: () => void): TemplateResult {
  const begin = (action: string, id?: string): void => {
    close();
    // As soon as it is open, not when it is kept: by then the reader may be elsewhere.
    const ready = (): void => {
      if (app.sheet?.lesson) app.open('lesson');
    };
    app.session?.addEventListener('opened', ready, { once: true });
    void runAction(action, app, id);
  };
  void import('./pages/gallery-page.ts');
  return html`<gallery-page
    heading="Begin a new document"
    empty
    @choose=${(event: CustomEvent<{ id: string }>) => begin('template', event.detail.id)}
    @empty=${() => begin('new-empty')}
    @close=${close}
  ></gallery-page>`;
}
