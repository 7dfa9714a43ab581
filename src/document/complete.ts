import type { Place } from '../engine/types.ts';
import { parseQuantity } from '../units/parse.ts';
import { isRefusal, type Command } from './command.ts';
import { textsPasted } from './commands/cell-edits.ts';

/** The unit that a cell shows now; nothing where it shows none. */
export type UnitShown = (place: Place) => string | undefined;

/** Gives the bare numbers of a command the units of the cells that they are typed into: "85" over "132 cm²" is meant as
 *  85 cm². Pasted text is typed text in this. */
export function completed(command: Command, unitShown: UnitShown): Command {
  switch (command.kind) {
    case 'write': {
      const { sheet, texts } = command;
      const complete = [...texts].map(([cell, text]) => [cell, withUnit(text, unitShown({ sheet, cell }))] as const);
      return { ...command, texts: new Map(complete) };
    }
    case 'paste-text': {
      const texts = textsPasted(command.to.cell, command.text);
      return isRefusal(texts) ? command : completed({ kind: 'write', sheet: command.to.sheet, texts }, unitShown);
    }
    case 'all':
      return { ...command, commands: command.commands.map((each) => completed(each, unitShown)) };
    default:
      return command;
  }
}

/** The text with the unit, where it is a bare number and the unit is one that can be typed. */
export function withUnit(text: string, unit: string | undefined): string {
  if (!unit || parseQuantity(text)?.unit !== '') return text;
  const complete = `${text.trim()} ${unit}`;
  return parseQuantity(complete) ? complete : text;
}
