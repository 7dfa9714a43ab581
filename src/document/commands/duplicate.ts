import type { Refusal } from '../command.ts';
import { renameIn, rewriteSheet, rewriteTexts } from '../references.ts';
import { checkSheetName, nameOfCopy, sheetOf } from '../sheets.ts';
import type { OctavoDocument } from '../types.ts';

/** Copies a sheet right behind its original. What the sheet says of itself, even by its own name, the copy says of itself;
 *  names and plots are the copy's own, and a baseline is copied with it. */
export function duplicateSheet(
  document: OctavoDocument,
  id: string,
  copyId: string,
  wish?: string,
): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const name = wish ?? nameOfCopy(document, sheet.name);
  const wrong = checkSheetName(document, name);
  if (wrong) return wrong;
  if (document.sheets.some((each) => each.id === copyId)) throw new Error(`A sheet ${copyId} is already there.`);
  const follow = renameIn(sheet.name, name);
  const copy = { ...rewriteSheet(sheet, follow), id: copyId, name };
  const sheets = document.sheets.toSpliced(document.sheets.indexOf(sheet) + 1, 0, copy);
  const remembered = document.baseline?.cells.get(id);
  if (!document.baseline || !remembered) return { ...document, sheets };
  const cells = new Map(document.baseline.cells).set(copyId, rewriteTexts(remembered, follow));
  return { ...document, sheets, baseline: { ...document.baseline, cells } };
}
