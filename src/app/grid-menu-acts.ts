import { originWords } from '../document/origin-words.ts';
import type { Origin } from '../document/types.ts';
import type { AppHost } from './app-host.ts';
import { cellsOf } from './selection.ts';

/** Does one line of the menu of the cells; asks on the way what it must know. */
export async function runGridMenu(name: string, app: AppHost): Promise<void> {
  const { acts, sheet, dialog } = app;
  if (!sheet) return;
  const cells = cellsOf(app.selection);
  const held = [...sheet.names].find(([, at]) => at === cells)?.[0];
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
    case 'name': {
      const asked = await dialog.ask({
        title: `Name ${cells}`,
        text: 'Formulas of this sheet can then say the name; other sheets write Sheet!Name.',
        label: 'Name',
        value: held ?? '',
        confirm: 'Name',
      });
      if (asked === undefined || asked.trim() === '' || asked === held) return;
      await acts.do(
        held
          ? { kind: 'rename-name', sheet: sheet.id, from: held, to: asked.trim() }
          : { kind: 'define-name', sheet: sheet.id, name: asked.trim(), cells },
      );
      return;
    }
    case 'unnamed':
      if (held) await acts.do({ kind: 'delete-name', sheet: sheet.id, name: held });
      else app.tell(`${cells} has no name.`);
      return;
    case 'range': {
      const range = sheet.cells.get(app.cell)?.range;
      const asked = await dialog.ask({
        title: `Plausible range of ${app.cell}`,
        text: 'The two ends of its rule, as quantities, with “to” between them.',
        label: 'Range, such as 800 Hz to 6 kHz',
        value: range ? range.join(' to ') : '',
        confirm: 'Set',
      });
      if (asked === undefined) return;
      const [from, to] = asked.split(/\s+to\s+|\s*–\s*/).map((text) => text.trim());
      if (asked.trim() !== '' && (!from || !to)) {
        app.tell(`“${asked}” is no range: write two quantities with “to” between them, such as 800 Hz to 6 kHz.`);
        return;
      }
      const attributes = { range: from && to ? ([from, to] as const) : undefined };
      await acts.do({ kind: 'describe', sheet: sheet.id, cells: app.cell, attributes });
      return;
    }
    case 'unit': {
      const asked = await dialog.ask({
        title: `Unit of ${cells}`,
        text: 'For results of formulas. A typed quantity shows in the unit it was typed in.',
        label: 'Unit, such as L, cm², kHz',
        value: sheet.cells.get(app.cell)?.unit ?? '',
        confirm: 'Show in it',
      });
      if (asked === undefined) return;
      const attributes = { unit: asked.trim() === '' ? undefined : asked.trim() };
      await acts.do({ kind: 'describe', sheet: sheet.id, cells, attributes });
      return;
    }
    case 'origin': {
      const words = Object.keys(originWords).join(', ');
      const asked = await dialog.ask({
        title: `Where ${cells} comes from`,
        text: `The review page says it beside each number; a number typed later loses it. Write one of ${words}; nothing takes it away.`,
        label: 'Measured, datasheet, …',
        value: sheet.cells.get(app.cell)?.origin ?? '',
        confirm: 'Note it',
      });
      if (asked === undefined) return;
      const origin = (Object.keys(originWords) as Origin[]).find((each) => each === asked.trim().toLowerCase());
      if (asked.trim() !== '' && !origin) app.tell(`“${asked}” is not one of ${words}.`);
      else await acts.do({ kind: 'describe', sheet: sheet.id, cells, attributes: { origin } });
      return;
    }
    case 'csv': {
      const { selectionToCsv } = await import('./csv-files.ts');
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
