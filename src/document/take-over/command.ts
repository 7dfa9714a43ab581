import type { Command } from '../command.ts';
import { freeSheetName, newId } from '../create.ts';
import { renameIn, rewriteSheet } from '../references.ts';
import { sheetOf } from '../sheets.ts';
import type { Cell, OctavoDocument, Sheet } from '../types.ts';
import { sheetsBefore } from './drivers.ts';
import { takeFrom } from './take.ts';
import type { PickedAt, Taking, TypedAs } from './types.ts';

/** A new sheet with what it took over: one command, so one step back. */
export interface TakeOver extends Taking {
  readonly command: Command;
  /** The id of the new sheet. */
  readonly sheet: string;
  readonly name: string;
}

/** Makes sheets of a starter sheet and puts them right behind the present one, the first filled with what the present one
 *  holds, and with what those hold that it was made from. What the starter says of its own sheets it says of the new ones. */
export function takeOver(
  document: OctavoDocument,
  id: string,
  starter: OctavoDocument,
  typedAs: TypedAs,
  pickedAt?: PickedAt,
): TakeOver {
  const from = sheetOf(document, id);
  let held = document;
  const added = starter.sheets.map((sheet) => {
    const name = freeSheetName(held, sheet.name);
    const made = { ...sheet, id: newId(), name };
    held = { ...held, sheets: [...held.sheets, made] };
    return { was: sheet.name, made };
  });
  const renamed = added.map(({ made }) =>
    added.reduce<Sheet>((sheet, each) => rewriteSheet(sheet, renameIn(each.was, each.made.name)), made),
  );
  const [first, ...others] = renamed;
  if (!first) throw new Error(`The starter sheet ${starter.title} holds no sheet.`);
  const taking = takeFrom([from, ...sheetsBefore(document, from, pickedAt)], first, typedAs, pickedAt);
  const at = document.sheets.indexOf(from) + 1;
  const sheets = [{ ...first, cells: new Map([...first.cells, ...filled(first, taking)]) }, ...others];
  return {
    ...taking,
    sheet: first.id,
    name: first.name,
    command: {
      kind: 'all',
      commands: sheets.map((sheet, index) => ({ kind: 'add-sheet', sheet, at: at + index })),
    },
  };
}

/** Fills a sheet that is there already anew; what is told as taken is only what thereby changes. */
export function takeInto(
  document: OctavoDocument,
  id: string,
  into: string,
  typedAs: TypedAs,
  pickedAt?: PickedAt,
): TakeOver {
  const from = sheetOf(document, id);
  const sheet = sheetOf(document, into);
  const taking = takeFrom([from, ...sheetsBefore(document, from, pickedAt)], sheet, typedAs, pickedAt);
  return {
    ...taking,
    taken: taking.taken.filter(({ cell, text }) => sheet.cells.get(cell)?.text !== text),
    sheet: into,
    name: sheet.name,
    command: { kind: 'put-cells', sheet: into, cells: filled(sheet, taking) },
  };
}

/** The cells that get a text, with where it comes from. */
const filled = (sheet: Sheet, { texts, origins }: Taking): ReadonlyMap<string, Cell> =>
  new Map(
    [...texts].map(([address, text]) => {
      const { origin: _, ...cell } = sheet.cells.get(address) ?? { text };
      const origin = origins.get(address);
      return [address, { ...cell, text, ...(origin && { origin }) }];
    }),
  );
