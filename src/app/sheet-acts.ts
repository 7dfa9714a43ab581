import type { AskDialog } from '../components/dialog/ask-dialog.ts';
import type { Command } from '../document/command.ts';
import { refusalOf } from '../document/apply.ts';
import { freeSheetName, newId, newSheet } from '../document/create.ts';
import type { OctavoDocument } from '../document/types.ts';

/** What the menu of a sheet asks for, as a command; questions are asked on the way. `show` is the sheet to go to. */
export async function sheetCommand(
  act: { readonly name: string; readonly id: string },
  document: OctavoDocument,
  dialog: AskDialog,
): Promise<{ readonly command: Command; readonly show?: string } | undefined> {
  const at = document.sheets.findIndex(({ id }) => id === act.id);
  const sheet = document.sheets[at];
  if (act.name === 'add') {
    const added = newSheet(freeSheetName(document, 'Sheet'));
    return { command: { kind: 'add-sheet', sheet: added }, show: added.id };
  }
  if (!sheet) return undefined;
  switch (act.name) {
    case 'duplicate': {
      const id = newId();
      return { command: { kind: 'duplicate-sheet', sheet: sheet.id, id }, show: id };
    }
    case 'up':
      return { command: { kind: 'move-sheet', sheet: sheet.id, to: at - 1 } };
    case 'down':
      return { command: { kind: 'move-sheet', sheet: sheet.id, to: at + 1 } };
    case 'rename': {
      const renaming = (name: string): Command => ({ kind: 'rename-sheet', sheet: sheet.id, name });
      const name = await dialog.ask({
        title: 'Rename the sheet',
        label: 'Name',
        value: sheet.name,
        confirm: 'Rename',
        check: (text) => refusalOf(document, renaming(text)),
      });
      return name === undefined ? undefined : { command: renaming(name) };
    }
    case 'summary': {
      const summary = await dialog.ask({
        title: `Line under “${sheet.name}”`,
        text: 'One sentence that says what the sheet answers. It stands under its name and on its review page.',
        label: 'The line',
        value: sheet.summary,
        confirm: 'Set',
      });
      return summary === undefined
        ? undefined
        : { command: { kind: 'summarise-sheet', sheet: sheet.id, summary: summary.trim() } };
    }
    case 'delete': {
      const text = 'Cells elsewhere that refer to it lose what they refer to. Undo brings it back.';
      const agreed = await dialog.ask({ title: `Delete “${sheet.name}”?`, text, confirm: 'Delete', cancel: 'Keep it' });
      const next = document.sheets[at + 1] ?? document.sheets[at - 1];
      return agreed === undefined
        ? undefined
        : { command: { kind: 'delete-sheet', sheet: sheet.id }, ...(next && { show: next.id }) };
    }
    default:
      return undefined;
  }
}
