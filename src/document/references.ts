import { formatAddress, parseAddress, MOST_COLUMNS, MOST_ROWS } from '../formula/address.ts';
import { mapReferences, type Corner, type Written } from './formula-words.ts';
import { sameWord } from './sheets.ts';
import type { Cell, OctavoDocument, Plot, Series, Sheet } from './types.ts';

/** Gives a reference as it must read after a change; its formula stands at an address of a sheet. */
export type Rewriting = (written: Written, standing: Sheet, address: string) => Written | undefined;

/** Rewrites every formula of the document, those remembered in the baseline too. Sheets without a change stay the same. */
export function rewriteFormulas(document: OctavoDocument, rewriting: Rewriting): OctavoDocument {
  const sheets = document.sheets.map((sheet) =>
    rewriteSheet(sheet, (written, address) => rewriting(written, sheet, address)),
  );
  const { baseline } = document;
  if (!baseline) return { ...document, sheets };
  const bySheet = new Map(document.sheets.map((sheet) => [sheet.id, sheet]));
  const cells = new Map(
    [...baseline.cells].map(([id, texts]) => {
      const sheet = bySheet.get(id);
      return [id, sheet ? rewriteTexts(texts, (written, address) => rewriting(written, sheet, address)) : texts];
    }),
  );
  return { ...document, sheets, baseline: { ...baseline, cells } };
}

type Following = (written: Written, address: string) => Written | undefined;

/** Rewrites the formulas of one sheet. */
export function rewriteSheet(sheet: Sheet, follow: Following): Sheet {
  let cells: Map<string, Cell> | undefined;
  for (const [address, cell] of sheet.cells) {
    const text = rewriteText(cell.text, (written) => follow(written, address));
    if (text !== cell.text) (cells ??= new Map(sheet.cells)).set(address, { ...cell, text });
  }
  return cells ? { ...sheet, cells } : sheet;
}

export const rewriteTexts = (texts: ReadonlyMap<string, string>, follow: Following): ReadonlyMap<string, string> =>
  new Map([...texts].map(([address, text]) => [address, rewriteText(text, (written) => follow(written, address))]));

/** Only a formula has references. */
const rewriteText = (text: string, follow: (written: Written) => Written | undefined): string =>
  text.startsWith('=') ? mapReferences(text, follow) : text;

/** Puts other cells in the place of those that a plot refers to; what is gone without a successor leaves the plot. */
function rewritePlot(plot: Plot, rewriting: (cell: string) => string | undefined): Plot {
  const follow = <T extends { readonly cell: string }>(parts: readonly T[]): readonly T[] =>
    parts.flatMap((part) => {
      const cell = rewriting(part.cell);
      return cell === undefined ? [] : [cell === part.cell ? part : { ...part, cell }];
    });
  const { ground, ...rest } = plot;
  const [width, height] = (ground ?? []).map((cell) => rewriting(cell));
  return {
    ...rest,
    series: follow(plot.series).map((series) => rewriteAround(series, rewriting)),
    limits: follow(plot.limits),
    marks: follow(plot.marks),
    ...(width !== undefined && height !== undefined && { ground: [width, height] }),
  };
}

/** The cells that stand beside the values of a series; what names columns of a table is none. */
function rewriteAround(series: Series, rewriting: (cell: string) => string | undefined): Series {
  const { across, names, ...rest } = series;
  if (series.column !== undefined || (across === undefined && names === undefined)) return series;
  const [acrossNow, namesNow] = [across, names].map((cell) => (cell === undefined ? undefined : rewriting(cell)));
  return {
    ...rest,
    ...(acrossNow !== undefined && { across: acrossNow }),
    ...(namesNow !== undefined && { names: namesNow }),
  };
}

/** Plots and lesson of a sheet with other cells in the place of theirs. A step whose guess has no cell any more is gone. */
export function rewriteShown(
  sheet: Sheet,
  rewriting: (cell: string) => string | undefined,
): Pick<Sheet, 'plots' | 'lesson'> {
  const plots = sheet.plots.map((plot) => rewritePlot(plot, rewriting));
  if (!sheet.lesson) return { plots };
  const lesson = sheet.lesson.flatMap((step) => {
    const guess = rewriting(step.guess);
    return guess === undefined
      ? []
      : [{ ...step, guess, reveal: step.reveal.flatMap((cell) => rewriting(cell) ?? []) }];
  });
  return { plots, lesson };
}

/** Whether a reference means cells or names of the sheet. */
export const isOf = (written: Written, sheet: Sheet, standing: Sheet): boolean =>
  written.sheet === undefined ? standing.id === sheet.id : sameWord(written.sheet, sheet.name);

/** A copied formula: relative rows and columns move along, fixed ones stay. */
export function shiftReferences(text: string, rows: number, columns: number): string {
  const shifted = (corner: Corner): Corner | undefined => {
    const row = corner.fixedRow ? corner.row : corner.row + rows;
    const column = corner.fixedColumn ? corner.column : corner.column + columns;
    const isInside = row >= 0 && row < MOST_ROWS && column >= 0 && column < MOST_COLUMNS;
    return isInside ? { ...corner, row, column } : undefined;
  };
  if (rows === 0 && columns === 0) return text;
  return rewriteText(text, (written) => (written.kind === 'cells' ? mapCorners(written, shifted) : written));
}

/** A reference with both its corners put elsewhere; nothing where one is gone. */
export function mapCorners(
  written: Written & { kind: 'cells' },
  map: (corner: Corner) => Corner | undefined,
): Written | undefined {
  const first = map(written.first);
  const last = written.last && map(written.last);
  if (!first || (written.last && !last)) return undefined;
  return { ...written, first, ...(last && { last }) };
}

/** Writes the new name of a sheet wherever its old one is written. */
export const renameIn =
  (from: string, to: string) =>
  (written: Written): Written =>
    written.sheet !== undefined && sameWord(written.sheet, from) ? { ...written, sheet: to } : written;

/** Renames a name of a sheet in formulas and in the sheet's plots. */
export function renamedName(document: OctavoDocument, id: string, from: string, to: string): OctavoDocument {
  const sheet = document.sheets.find((each) => each.id === id);
  if (!sheet) return document;
  const rewritten = rewriteFormulas(document, (written, standing) =>
    written.kind === 'name' && sameWord(written.name, from) && isOf(written, sheet, standing)
      ? { ...written, name: to }
      : written,
  );
  const rename = (cell: string): string => (sameWord(cell, from) ? to : cell);
  return {
    ...rewritten,
    sheets: rewritten.sheets.map((each) => (each.id === id ? { ...each, ...rewriteShown(each, rename) } : each)),
  };
}

/** Puts the values of a map under other addresses; those without one are dropped. */
export function readdressed<T>(
  cells: ReadonlyMap<string, T>,
  map: (at: {
    readonly row: number;
    readonly column: number;
  }) => { readonly row: number; readonly column: number } | undefined,
): ReadonlyMap<string, T> {
  const moved = new Map<string, T>();
  for (const [address, value] of cells) {
    const at = parseAddress(address);
    const to = at && map(at);
    if (to) moved.set(formatAddress(to), value);
  }
  return moved;
}
