import { renameIn, rewriteFormulas } from '../references.ts';
import type { ColumnAttributes, Refusal } from '../command.ts';
import { checkSheetName, sheetOf, withSheet } from '../sheets.ts';
import type { Column, OctavoDocument, Sheet } from '../types.ts';

const NARROWEST = 32;
const WIDEST = 1200;

export function addSheet(document: OctavoDocument, sheet: Sheet, at?: number): OctavoDocument | Refusal {
  if (document.sheets.some((each) => each.id === sheet.id)) throw new Error(`A sheet ${sheet.id} is already there.`);
  const wrong = checkSheetName(document, sheet.name);
  return wrong ?? { ...document, sheets: document.sheets.toSpliced(at ?? document.sheets.length, 0, sheet) };
}

/** Every formula that writes the sheet's name is rewritten. */
export function renameSheet(document: OctavoDocument, id: string, name: string): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const wrong = checkSheetName(document, name, id);
  if (wrong || name === sheet.name) return wrong ?? document;
  const rewritten = rewriteFormulas(document, renameIn(sheet.name, name));
  return withSheet(rewritten, { ...sheetOf(rewritten, id), name });
}

export const summariseSheet = (document: OctavoDocument, id: string, summary: string): OctavoDocument =>
  withSheet(document, { ...sheetOf(document, id), summary });

export function moveSheet(document: OctavoDocument, id: string, to: number): OctavoDocument {
  const sheet = sheetOf(document, id);
  const others = document.sheets.filter((each) => each.id !== id);
  return { ...document, sheets: others.toSpliced(Math.max(0, Math.min(to, others.length)), 0, sheet) };
}

/** Formulas elsewhere keep the deleted sheet's name, so that they say what is missing and heal when it comes back. */
export function deleteSheet(document: OctavoDocument, id: string): OctavoDocument | Refusal {
  sheetOf(document, id);
  if (document.sheets.length === 1) {
    return { refused: 'The only sheet of a document cannot be deleted; add another one first.' };
  }
  const { baseline, ...rest } = document;
  const sheets = document.sheets.filter((each) => each.id !== id);
  if (!baseline) return { ...rest, sheets };
  const cells = new Map([...baseline.cells].filter(([sheet]) => sheet !== id));
  return { ...rest, sheets, baseline: { ...baseline, cells } };
}

export function describeColumn(
  document: OctavoDocument,
  id: string,
  index: number,
  attributes: ColumnAttributes,
): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const column = sheet.columns[index];
  if (!column) throw new Error(`No column ${index} in sheet ${sheet.name}.`);
  const described: Record<string, unknown> = { ...column, ...attributes };
  for (const [name, value] of Object.entries(described)) if (value === undefined) delete described[name];
  const wanted = attributes.width ?? column.width;
  const width = Math.round(Math.max(NARROWEST, Math.min(WIDEST, wanted)));
  const changed: Column = { ...described, width };
  return withSheet(document, { ...sheet, columns: sheet.columns.with(index, changed) });
}
