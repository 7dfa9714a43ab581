import type { Place } from '../engine/types.ts';
import type { Refusal } from './command.ts';
import type { Cell, OctavoDocument, Sheet } from './types.ts';

/** The sheet of that id. Asking for one that is not there is a mistake of the program, not of the reader. */
export function sheetOf(document: OctavoDocument, id: string): Sheet {
  const sheet = document.sheets.find((each) => each.id === id);
  if (!sheet) throw new Error(`No sheet ${id} in this document.`);
  return sheet;
}

export const cellIn = (document: OctavoDocument | undefined, { sheet, cell }: Place): Cell | undefined =>
  document?.sheets.find(({ id }) => id === sheet)?.cells.get(cell);

/** The document with one sheet replaced by its successor. */
export const withSheet = (document: OctavoDocument, sheet: Sheet): OctavoDocument => ({
  ...document,
  sheets: document.sheets.map((each) => (each.id === sheet.id ? sheet : each)),
});

/** The document with another text in a cell, which stays otherwise what it is. */
export function withText(document: OctavoDocument, { sheet: id, cell }: Place, text: string): OctavoDocument {
  const sheet = sheetOf(document, id);
  return withSheet(document, { ...sheet, cells: new Map(sheet.cells).set(cell, { ...sheet.cells.get(cell), text }) });
}

/** Why a sheet cannot be called that; nothing where it can. `except` is the sheet itself when renaming. */
export function checkSheetName(document: OctavoDocument, name: string, except?: string): Refusal | undefined {
  if (name.trim() === '') return { refused: 'A sheet needs a name of at least one character.' };
  if (name !== name.trim()) return { refused: 'A sheet name cannot begin or end with a space.' };
  if (name.length > 60) return { refused: `A sheet name has at most 60 characters; this one has ${name.length}.` };
  if (/['!\n\r\t[\]]/.test(name)) return { refused: `A sheet name cannot hold ' ! [ ] or a line break: "${name}".` };
  const taken = document.sheets.find((each) => each.id !== except && sameWord(each.name, name));
  return taken && { refused: `There is already a sheet "${taken.name}"; choose another name.` };
}

/** "Two drivers" -> "Two drivers 2", or the next number that is free. */
export function nameOfCopy(document: OctavoDocument, name: string): string {
  const [, stem = name] = /^(.*?)(?: \d+)?$/.exec(name) ?? [];
  for (let number = 2; ; number++) {
    const candidate = `${stem.slice(0, 55)} ${number}`;
    if (!document.sheets.some((each) => sameWord(each.name, candidate))) return candidate;
  }
}

export const sameWord = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
