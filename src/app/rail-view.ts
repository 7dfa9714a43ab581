import { html, type TemplateResult } from 'lit';
import type { Workbook } from '../document/workbook.ts';
import { runAction } from './run-action.ts';
import type { AppHost } from './app-host.ts';
import type { Session } from './session.ts';
import './sheet-rail.ts';
import { tally } from './tally.ts';
import { isTwoWay } from './two-way.ts';

/** The rail of an open document, with what each of its events does. */
export function railView(app: AppHost, session: Session, workbook: Workbook): TemplateResult {
  const { document } = workbook;
  const run =
    (action: string) =>
    (event: CustomEvent<{ id: string }>): void =>
      void runAction(action, app, event.detail.id);
  return html`<sheet-rail
    .sheets=${document.sheets.map((each) => ({
      id: each.id,
      name: each.name,
      counts: tally(workbook, each),
      twoWay: isTwoWay(each),
      lesson: each.lesson !== undefined,
    }))}
    current=${app.sheet?.id ?? ''}
    .documents=${session.documents}
    document=${document.id}
    .saving=${session.saving}
    @sheet=${(event: CustomEvent<{ id: string }>) => {
      app.show(event.detail.id);
      app.begin();
    }}
    @sheet-act=${(event: CustomEvent<{ id: string; name: string }>) => void sheetAct(app, workbook, event.detail)}
    @act=${(event: CustomEvent<{ name: string }>) => void runAction(event.detail.name, app)}
    @document=${run('document')}
    @forget=${run('forget')}
  ></sheet-rail>`;
}

async function sheetAct(
  app: AppHost,
  workbook: Workbook,
  act: { readonly id: string; readonly name: string },
): Promise<void> {
  const page = (['compare', 'review', 'take-over', 'three-way', 'lesson'] as const).find((name) => name === act.name);
  if (page) {
    app.show(act.id);
    app.open(page);
    return;
  }
  const { sheetCommand } = await import('./after-first-paint.ts');
  const outcome = await sheetCommand(act, workbook.document, app.dialog);
  if (!outcome || !(await app.acts.do(outcome.command)) || !outcome.show) return;
  app.show(outcome.show);
  app.begin();
}
