import type { Curve } from '../../../functions/values/curve.ts';
import { networkTable } from '../../../functions/values/network-table.ts';
import type { CellRecord } from '../../../functions/values/record.ts';
import { rectangleOf } from '../../document/area.ts';
import type { Plot, Sheet, UnitSystem } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { cellsCsv, filledArea } from '../../exchange/csv/cells-csv.ts';
import { curvesCsv } from '../../exchange/csv/curve-csv.ts';
import { tableCsv } from '../../exchange/csv/table-csv.ts';
import { drawingCsv } from './drawing-csv.ts';
import { handOutCsv } from '../hand-out.ts';
import { plotPicture } from './plot-picture.ts';
import { windowCsv } from './window-csv.ts';

const titled = ({ document }: Workbook, words: string): string =>
  document.title === words ? words : `${document.title}, ${words}`;

export const sheetToCsv = (workbook: Workbook, sheet: Sheet): void =>
  handOutCsv(titled(workbook, sheet.name), cellsCsv(workbook, sheet, filledArea(workbook, sheet)));

/** `cells` is a rectangle, `B4:C18`. */
export const selectionToCsv = (workbook: Workbook, sheet: Sheet, cells: string): void =>
  handOutCsv(
    titled(workbook, `${sheet.name} ${cells.replace(':', '-')}`),
    cellsCsv(workbook, sheet, rectangleOf(cells)),
  );

/** All that a plot draws. */
export function plotToCsv(workbook: Workbook, sheet: Sheet, plot: Plot): void {
  const picture = plotPicture(workbook, sheet, plot);
  if (picture?.kind === 'curves')
    handOutCsv(titled(workbook, plot.title), curvesCsv(picture.data.series, workbook.document.system));
  if (picture?.kind === 'window') handOutCsv(titled(workbook, plot.title), windowCsv(picture.data));
  if (picture?.kind === 'drawing') handOutCsv(titled(workbook, plot.title), drawingCsv(picture.data));
}

/** A curve or a table; any other record has no table in it. */
export function recordToCsv(record: CellRecord, system: UnitSystem): void {
  const csv = recordCsv(record, system);
  if (csv !== undefined) handOutCsv('title' in record ? record.title : 'table', csv);
}

function recordCsv(record: CellRecord, system: UnitSystem): string | undefined {
  switch (record.kind) {
    case 'curve':
      return curvesCsv([{ label: nameOf(record), curve: record }], system);
    case 'table':
      return tableCsv(record, system);
    case 'network':
      return tableCsv(networkTable(record), system);
    default:
      return undefined;
  }
}

const nameOf = ({ title }: Curve): string => title || 'Value';
