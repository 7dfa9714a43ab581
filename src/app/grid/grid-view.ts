import { html, type TemplateResult } from 'lit';
import '../../components/grid/sheet-grid.ts';
import type { CellAt, GridModel, Selection } from '../../components/grid/model.ts';
import '../../components/menu/pop-menu.ts';
import type { PopMenu } from '../../components/menu/pop-menu.ts';
import type { Sheet } from '../../document/types.ts';
import type * as Rest from '../after-first-paint.ts';
import type { AppHost } from '../app-host.ts';

/** The grid of a sheet and the menu of its cells, with what each of their events does. */
export const gridView = (
  app: AppHost,
  sheet: Sheet,
  model: GridModel,
  rest: typeof Rest | undefined,
): TemplateResult => html`
  <sheet-grid
    .model=${model}
    .selection=${app.selection}
    .fit=${rest?.fitGrid}
    .due=${app.due}
    label=${sheet.name}
    .of=${`${app.workbook?.document.id ?? ''}/${sheet.id}`}
    @selection-change=${(event: CustomEvent<Selection>) => app.select(event.detail)}
    @cell-commit=${(event: CustomEvent<CellAt & { text: string }>) =>
      void app.acts.commit(event.detail.row, event.detail.column, event.detail.text)}
    @formula-start=${(event: CustomEvent<{ text?: string }>) => app.edit(event.detail.text)}
    @clear=${() => void app.acts.clear()}
    @fill=${(event: CustomEvent<{ direction: 'down' | 'right' }>) => void app.acts.fill(event.detail.direction)}
    @column-resize=${(event: CustomEvent<{ column: number; width: number }>) =>
      void app.acts.resize(event.detail.column, event.detail.width)}
    @nudge=${(event: CustomEvent<{ direction: 1 | -1; coarse: boolean }>) =>
      app.nudge(event.detail.direction, event.detail.coarse)}
    @menu=${rest && openMenu}
  ></sheet-grid>
  <pop-menu
    id="grid-menu"
    class="floating"
    label="Cells"
    .items=${rest?.gridMenu ?? []}
    @choose=${(event: CustomEvent<{ name: string }>) => void runMenu(event.detail.name, app, rest)}
  ></pop-menu>
`;

function openMenu(event: CustomEvent<{ x: number; y: number }>): void {
  (event.currentTarget as Element).parentElement?.querySelector<PopMenu>('#grid-menu')?.open(event.detail);
}

/** At once where it has come, so that what is typed next finds what was done. */
async function runMenu(name: string, app: AppHost, rest: typeof Rest | undefined): Promise<void> {
  const { runGridMenu } = rest ?? (await import('../after-first-paint.ts'));
  await runGridMenu(name, app);
}
