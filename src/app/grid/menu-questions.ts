import { refusalOf } from '../../document/apply.ts';
import { addressesIn, rectangleOf } from '../../document/area.ts';
import type { Command } from '../../document/command.ts';
import { takenBy } from '../../document/commands/names.ts';
import { originWords } from '../../document/origin-words.ts';
import type { Origin, Sheet } from '../../document/types.ts';
import { parseQuantity } from '../../units/parse.ts';
import type { AppHost } from '../app-host.ts';
import { choicesIn, choicesText } from './choice-words.ts';

type Question = (app: AppHost, sheet: Sheet, cells: string) => Promise<void>;

const refused = (app: AppHost, command: Command): string | undefined =>
  app.workbook && refusalOf(app.workbook.document, command);

/** What the menu of the cells asks before it does something, by the name of its line. Fetched when it is first asked. */
export const questionOf: Readonly<Record<'name' | 'range' | 'choices' | 'unit' | 'origin', Question>> = {
  name: async (app, sheet, cells) => {
    const held = [...sheet.names].find(([, at]) => at === cells)?.[0];
    const naming = (name: string): Command =>
      held === undefined
        ? { kind: 'define-name', sheet: sheet.id, name, cells }
        : { kind: 'rename-name', sheet: sheet.id, from: held, to: name };
    const isNothing = (text: string): boolean => text.trim() === '' || text === held;
    const wrong = (name: string): string | undefined =>
      takenBy(sheet, name, held)?.refused ?? refused(app, naming(name));
    const asked = await app.dialog.ask({
      title: `Name ${cells}`,
      text: 'Formulas of this sheet can then say the name; other sheets write Sheet!Name.',
      label: 'Name',
      value: held ?? '',
      confirm: 'Name',
      check: (text) => (isNothing(text) ? undefined : wrong(text.trim())),
    });
    if (asked !== undefined && !isNothing(asked)) await app.acts.do(naming(asked.trim()));
  },

  range: async (app, sheet) => {
    const { cell } = app;
    const range = sheet.cells.get(cell)?.range;
    const endsOf = (text: string): readonly string[] => text.split(/\s+to\s+|\s*–\s*/).map((end) => end.trim());
    const isRange = (text: string): boolean => {
      const [from, to, ...more] = endsOf(text).map((end) => parseQuantity(end));
      return from !== undefined && to !== undefined && more.length === 0;
    };
    const asked = await app.dialog.ask({
      title: `Plausible range of ${cell}`,
      text: 'The two ends of its rule, as quantities, with “to” between them.',
      label: 'Range, such as 800 Hz to 6 kHz',
      value: range ? range.join(' to ') : '',
      confirm: 'Set',
      check: (text) =>
        text.trim() === '' || isRange(text)
          ? undefined
          : `“${text}” is no range: write two quantities with “to” between them, such as 800 Hz to 6 kHz.`,
    });
    if (asked === undefined) return;
    const [from, to] = endsOf(asked);
    const attributes = { range: from && to ? ([from, to] as const) : undefined };
    await app.acts.do({ kind: 'describe', sheet: sheet.id, cells: cell, attributes });
  },

  choices: async (app, sheet, cells) => {
    const formula = [...addressesIn(rectangleOf(cells))].find((each) => sheet.cells.get(each)?.text.startsWith('='));
    if (formula !== undefined) {
      app.tell(`${formula} holds a formula; choices are for cells that one types into. Select such a cell.`);
      return;
    }
    const asked = await app.dialog.ask({
      title: `Choices of ${cells}`,
      text: 'The words it can take, with a comma between them; semicolons where a word holds a comma. Leave it empty to take them away.',
      label: 'Words, such as closed, vented',
      value: choicesText(sheet.cells.get(app.cell)?.choices ?? []),
      confirm: 'Set',
      check: (text) => {
        const choices = choicesIn(text);
        return 'refused' in choices ? choices.refused : undefined;
      },
    });
    const choices = asked === undefined ? undefined : choicesIn(asked);
    if (!choices || 'refused' in choices) return;
    const attributes = { choices: choices.length === 0 ? undefined : choices };
    await app.acts.do({ kind: 'describe', sheet: sheet.id, cells, attributes });
  },

  unit: async (app, sheet, cells) => {
    const showing = (text: string): Command => {
      const attributes = { unit: text.trim() === '' ? undefined : text.trim() };
      return { kind: 'describe', sheet: sheet.id, cells, attributes };
    };
    const asked = await app.dialog.ask({
      title: `Unit of ${cells}`,
      text: 'For results of formulas. A typed quantity shows in the unit it was typed in.',
      label: 'Unit, such as L, cm², kHz',
      value: sheet.cells.get(app.cell)?.unit ?? '',
      confirm: 'Show in it',
      check: (text) => refused(app, showing(text)),
    });
    if (asked !== undefined) await app.acts.do(showing(asked));
  },

  origin: async (app, sheet, cells) => {
    const words = Object.keys(originWords).join(', ');
    const originOf = (text: string): Origin | undefined =>
      (Object.keys(originWords) as Origin[]).find((each) => each === text.trim().toLowerCase());
    const asked = await app.dialog.ask({
      title: `Where ${cells} comes from`,
      text: `The review page says it beside each number; a number typed later loses it. Write one of ${words}; nothing takes it away.`,
      label: 'Measured, datasheet, …',
      value: sheet.cells.get(app.cell)?.origin ?? '',
      confirm: 'Note it',
      check: (text) =>
        text.trim() === '' || originOf(text) ? undefined : `“${text}” is not one of ${words}: write one of these.`,
    });
    if (asked === undefined) return;
    await app.acts.do({ kind: 'describe', sheet: sheet.id, cells, attributes: { origin: originOf(asked) } });
  },
};
