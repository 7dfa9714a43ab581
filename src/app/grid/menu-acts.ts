import { refusalOf } from '../../document/apply.ts';
import type { Command } from '../../document/command.ts';
import { originWords } from '../../document/origin-words.ts';
import type { Origin } from '../../document/types.ts';
import type { AppHost } from '../app-host.ts';
import { cellsOf } from './selection.ts';

/** Does one line of the menu of the cells; asks on the way what it must know. */
export async function runGridMenu(name: string, app: AppHost): Promise<void> {
  const { acts, sheet, dialog } = app;
  if (!sheet) return;
  const cells = cellsOf(app.selection);
  const held = [...sheet.names].find(([, at]) => at === cells)?.[0];
  const refused = (command: Command): string | undefined => app.workbook && refusalOf(app.workbook.document, command);
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
      const naming = (name: string): Command =>
        held === undefined
          ? { kind: 'define-name', sheet: sheet.id, name, cells }
          : { kind: 'rename-name', sheet: sheet.id, from: held, to: name };
      const isNothing = (text: string): boolean => text.trim() === '' || text === held;
      const asked = await dialog.ask({
        title: `Name ${cells}`,
        text: 'Formulas of this sheet can then say the name; other sheets write Sheet!Name.',
        label: 'Name',
        value: held ?? '',
        confirm: 'Name',
        check: (text) => (isNothing(text) ? undefined : refused(naming(text.trim()))),
      });
      if (asked !== undefined && !isNothing(asked)) await acts.do(naming(asked.trim()));
      return;
    }
    case 'unnamed':
      if (held) await acts.do({ kind: 'delete-name', sheet: sheet.id, name: held });
      else app.tell(`${cells} has no name.`);
      return;
    case 'range': {
      const range = sheet.cells.get(app.cell)?.range;
      const endsOf = (text: string): readonly string[] => text.split(/\s+to\s+|\s*–\s*/).map((end) => end.trim());
      const asked = await dialog.ask({
        title: `Plausible range of ${app.cell}`,
        text: 'The two ends of its rule, as quantities, with “to” between them.',
        label: 'Range, such as 800 Hz to 6 kHz',
        value: range ? range.join(' to ') : '',
        confirm: 'Set',
        check: (text) =>
          text.trim() === '' || (endsOf(text)[0] && endsOf(text)[1])
            ? undefined
            : `“${text}” is no range: write two quantities with “to” between them, such as 800 Hz to 6 kHz.`,
      });
      if (asked === undefined) return;
      const [from, to] = endsOf(asked);
      const attributes = { range: from && to ? ([from, to] as const) : undefined };
      await acts.do({ kind: 'describe', sheet: sheet.id, cells: app.cell, attributes });
      return;
    }
    case 'unit': {
      const showing = (text: string): Command => {
        const attributes = { unit: text.trim() === '' ? undefined : text.trim() };
        return { kind: 'describe', sheet: sheet.id, cells, attributes };
      };
      const asked = await dialog.ask({
        title: `Unit of ${cells}`,
        text: 'For results of formulas. A typed quantity shows in the unit it was typed in.',
        label: 'Unit, such as L, cm², kHz',
        value: sheet.cells.get(app.cell)?.unit ?? '',
        confirm: 'Show in it',
        check: (text) => refused(showing(text)),
      });
      if (asked !== undefined) await acts.do(showing(asked));
      return;
    }
    case 'origin': {
      const words = Object.keys(originWords).join(', ');
      const originOf = (text: string): Origin | undefined =>
        (Object.keys(originWords) as Origin[]).find((each) => each === text.trim().toLowerCase());
      const asked = await dialog.ask({
        title: `Where ${cells} comes from`,
        text: `The review page says it beside each number; a number typed later loses it. Write one of ${words}; nothing takes it away.`,
        label: 'Measured, datasheet, …',
        value: sheet.cells.get(app.cell)?.origin ?? '',
        confirm: 'Note it',
        check: (text) =>
          text.trim() === '' || originOf(text) ? undefined : `“${text}” is not one of ${words}: write one of these.`,
      });
      if (asked === undefined) return;
      await acts.do({ kind: 'describe', sheet: sheet.id, cells, attributes: { origin: originOf(asked) } });
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
