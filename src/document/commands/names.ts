import { readRectangle, formatRectangle } from '../area.ts';
import type { Refusal } from '../command.ts';
import { checkName } from '../legal-name.ts';
import { renamedName, rewriteShown } from '../references.ts';
import { sameWord, sheetOf, withSheet } from '../sheets.ts';
import type { OctavoDocument, Sheet } from '../types.ts';

/** Calls a cell or a range by a name, on its sheet; a name already there is given its new cells, and how it is written now. */
export function defineName(
  document: OctavoDocument,
  id: string,
  name: string,
  cells: string,
): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const area = readRectangle(cells.replaceAll('$', ''));
  if (!area) return { refused: `"${cells}" is no cell and no range of cells; write it as B4 or B4:C18.` };
  if (area.bottom >= sheet.rows || area.right >= sheet.columns.length) {
    const size = `${sheet.rows} rows and ${sheet.columns.length} columns`;
    return { refused: `${formatRectangle(area)} lies outside the ${size} of "${sheet.name}".` };
  }
  const wrong = checkName(name);
  if (wrong) return wrong;
  const held = [...sheet.names.keys()].find((each) => sameWord(each, name));
  const names = new Map(sheet.names);
  if (held !== undefined) names.delete(held);
  names.set(name, formatRectangle(area));
  return withSheet(document, { ...sheet, names, ...rewriteShown(sheet, (cell) => (cell === held ? name : cell)) });
}

/** Why cells of a sheet cannot have a name: others have it, whose formulas would all at once mean these.
 *  @param held - The name that the cells have now. */
export function takenBy({ names }: Sheet, name: string, held: string | undefined): Refusal | undefined {
  const [other, cells] = [...names].find(([each]) => each !== held && sameWord(each, name)) ?? [];
  if (other === undefined) return undefined;
  return { refused: `"${other}" already names ${String(cells)} on this sheet; choose another name.` };
}

/** Formulas and plots that use the name follow, on every sheet. */
export function renameName(document: OctavoDocument, id: string, from: string, to: string): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const held = [...sheet.names.keys()].find((each) => sameWord(each, from));
  if (held === undefined) return { refused: `Sheet "${sheet.name}" has no name "${from}".` };
  if (held === to) return document;
  const wrong = checkName(to);
  if (wrong) return wrong;
  const taken = takenBy(sheet, to, held);
  if (taken) return taken;
  const rewritten = renamedName(document, id, held, to);
  const changed = sheetOf(rewritten, id);
  const names = new Map([...changed.names].map(([name, cells]) => [name === held ? to : name, cells]));
  return withSheet(rewritten, { ...changed, names });
}

/** Formulas keep the word and say that nothing is called that any more; plots go on drawing the cells that it meant. */
export function deleteName(document: OctavoDocument, id: string, name: string): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const held = [...sheet.names.keys()].find((each) => sameWord(each, name));
  if (held === undefined) return { refused: `Sheet "${sheet.name}" has no name "${name}".` };
  const names = new Map(sheet.names);
  names.delete(held);
  const cells = sheet.names.get(held);
  return withSheet(document, { ...sheet, names, ...rewriteShown(sheet, (cell) => (cell === held ? cells : cell)) });
}
