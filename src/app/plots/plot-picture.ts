import type { PlotPicture } from '../../components/review/review-sheet.ts';
import type { Plot, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { drawingData } from './drawing-source.ts';
import { plotData, windowData } from './plot-source.ts';

/** What a plot shows now, by the element that draws it; nothing where its cells hold nothing of the kind. */
export function plotPicture(workbook: Workbook, sheet: Sheet, plot: Plot): PlotPicture | undefined {
  if (plot.kind === 'curves') return { kind: 'curves', data: plotData(workbook, sheet, plot) };
  if (plot.kind === 'window') {
    const data = windowData(workbook, sheet, plot);
    return data && { kind: 'window', data };
  }
  const data = drawingData(workbook, sheet, plot);
  return data && { kind: 'drawing', data };
}
