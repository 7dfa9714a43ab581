import type { AppHost } from '../app-host.ts';
import { openPlotForm } from '../plots/plot-acts.ts';
import { cellsOf } from './selection.ts';

/** Does one line of the menu of the cells; asks on the way what it must know. */
export async function runGridMenu(name: string, app: AppHost): Promise<void> {
  const { acts, sheet } = app;
  if (!sheet) return;
  const cells = cellsOf(app.selection);
  switch (name) {
    case 'open':
      app.open('cell');
      return;
    case 'ask':
      app.open('ask');
      return;
    case 'shelf':
      app.open('shelf');
      return;
    case 'plot':
      openPlotForm(app);
      return;
    case 'looks':
      app.open('looks');
      return;
    case 'unnamed': {
      const held = [...sheet.names].find(([, at]) => at === cells)?.[0];
      if (held) await acts.do({ kind: 'delete-name', sheet: sheet.id, name: held });
      else app.tell(`${cells} has no name.`);
      return;
    }
    case 'name':
    case 'range':
    case 'choices':
    case 'unit':
    case 'origin': {
      const { questionOf } = await import('./menu-questions.ts');
      await questionOf[name](app, sheet, cells);
      return;
    }
    case 'csv': {
      const { selectionToCsv } = await import('../plots/csv-files.ts');
      if (app.workbook) selectionToCsv(app.workbook, sheet, cells);
      return;
    }
    case 'rows-above':
      await acts.restructure('insert', 'rows');
      return;
    case 'columns-before':
      await acts.restructure('insert', 'columns');
      return;
    case 'delete-rows':
      await acts.restructure('delete', 'rows');
      return;
    case 'delete-columns':
      await acts.restructure('delete', 'columns');
      return;
    case 'fill-down':
      await acts.fill('down');
      return;
    case 'fill-right':
      await acts.fill('right');
      return;
    case 'clear':
      await acts.clear();
  }
}
