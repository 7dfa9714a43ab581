import type { Cell, OctavoDocument, Plot, Sheet } from './types.ts';

/** Gives a formula as it must read after a change; `sheet` is the one in which it stands. Gives the same text back where
 *  nothing in it is touched. */
export type Rewriting = (formula: string, sheet: Sheet) => string;

/** Rewrites every formula of the document, those remembered in the baseline too. Sheets without a change stay the same. */
export function rewriteFormulas(document: OctavoDocument, rewriting: Rewriting): OctavoDocument {
  const sheets = document.sheets.map((sheet) => rewriteSheet(sheet, (formula) => rewriting(formula, sheet)));
  const { baseline } = document;
  if (!baseline) return { ...document, sheets };
  const bySheet = new Map(document.sheets.map((sheet) => [sheet.id, sheet]));
  const cells = new Map(
    [...baseline.cells].map(([id, texts]) => {
      const sheet = bySheet.get(id);
      return [id, sheet ? rewriteTexts(texts, (formula) => rewriting(formula, sheet)) : texts];
    }),
  );
  return { ...document, sheets, baseline: { ...baseline, cells } };
}

/** Rewrites the formulas of one sheet. */
export function rewriteSheet(sheet: Sheet, rewriting: (formula: string) => string): Sheet {
  let cells: Map<string, Cell> | undefined;
  for (const [address, cell] of sheet.cells) {
    if (!cell.text.startsWith('=')) continue;
    const text = rewriting(cell.text);
    if (text !== cell.text) (cells ??= new Map(sheet.cells)).set(address, { ...cell, text });
  }
  return cells ? { ...sheet, cells } : sheet;
}

export const rewriteTexts = (
  texts: ReadonlyMap<string, string>,
  rewriting: (formula: string) => string,
): ReadonlyMap<string, string> =>
  new Map([...texts].map(([address, text]) => [address, text.startsWith('=') ? rewriting(text) : text]));

/** Puts other cells in the place of those that a plot refers to; what is gone without a successor leaves the plot. */
export function rewritePlot(plot: Plot, rewriting: (cell: string) => string | undefined): Plot {
  const follow = <T extends { readonly cell: string }>(parts: readonly T[]): readonly T[] =>
    parts.flatMap((part) => {
      const cell = rewriting(part.cell);
      return cell === undefined ? [] : [cell === part.cell ? part : { ...part, cell }];
    });
  return { ...plot, series: follow(plot.series), limits: follow(plot.limits), marks: follow(plot.marks) };
}

export const renamedSheet = (d: OctavoDocument, _f: string, _t: string) => d;
export const renamedName = (d: OctavoDocument, _i: string, _f: string, _t: string) => d;
