import type { Refusal } from '../command.ts';
import { sheetOf, withSheet } from '../sheets.ts';
import type { OctavoDocument, Plot } from '../types.ts';

/** Adds a plot, at the end or before the plot now at `at`; replaces the one of the same id. */
export function putPlot(document: OctavoDocument, id: string, plot: Plot, at?: number): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  const place = sheet.plots.findIndex((each) => each.id === plot.id);
  const rest = sheet.plots.filter((each) => each.id !== plot.id);
  const plots = rest.toSpliced(at ?? (place < 0 ? rest.length : place), 0, plot);
  return withSheet(document, { ...sheet, plots });
}

export function deletePlot(document: OctavoDocument, id: string, plot: string): OctavoDocument | Refusal {
  const sheet = sheetOf(document, id);
  if (!sheet.plots.some((each) => each.id === plot)) return { refused: 'This plot is no longer there.' };
  return withSheet(document, { ...sheet, plots: sheet.plots.filter((each) => each.id !== plot) });
}
