import type { DrawingData, Mark, Point } from '../../components/drawing/data.ts';
import type { Plot, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { axisOf, CellReader } from './cell-reader.ts';
import { ends } from './plot-source.ts';
import { shapesOf } from './shapes-source.ts';

/** What a plot of cells draws now, with the baseline behind it; nothing for a plot of another kind. */
export function drawingData(workbook: Workbook, sheet: Sheet, plot: Plot): DrawingData | undefined {
  const now = drawn(workbook, plot, new CellReader(workbook, sheet));
  if (!now || !workbook.document.baseline) return now;
  const before = drawn(workbook, plot, new CellReader(workbook, sheet, 'before'));
  if (now.form === 'bars' && before?.form === 'bars') return { ...now, ghost: before.bars };
  if (now.form === 'shapes' && before?.form === 'shapes') return { ...now, ghost: before.grounds };
  return before && 'groups' in now && 'groups' in before ? { ...now, ghost: before.groups } : now;
}

function drawn(workbook: Workbook, plot: Plot, reader: CellReader): DrawingData | undefined {
  switch (plot.kind) {
    case 'bars':
      return barsOf(workbook, plot, reader);
    case 'points':
    case 'lines':
      return pointsOf(workbook, plot, reader, plot.kind);
    case 'shapes':
      return shapesOf(workbook, plot, reader);
    default:
      return undefined;
  }
}

const limitsOf = (plot: Plot, reader: CellReader) =>
  plot.limits.flatMap(({ cell, label, forbidden }) => {
    const value = reader.value(cell)?.value;
    return value === undefined ? [] : [{ label, value, forbidden }];
  });

function barsOf({ document }: Workbook, plot: Plot, reader: CellReader): DrawingData {
  const series = plot.series.map((each) => ({ ...each, read: reader.columns(each) }));
  const rows = Math.max(0, ...series.map(({ read }) => read.values.length));
  const names = series.find(({ read }) => read.names.length > 0)?.read.names ?? [];
  const bars = Array.from({ length: rows }, (_, row) => ({
    name: names[row] ?? '',
    // A single cell belongs to every row.
    parts: series.flatMap(({ label, line, read: { values } }) => {
      const value = (values.length === 1 ? values[0] : values[row])?.value;
      return value === undefined ? [] : [{ label, line, value }];
    }),
  }));
  const horizontal = ends(plot.horizontal);
  return {
    form: 'bars',
    title: plot.title,
    axis: axisOf(series.flatMap(({ read }) => read.values)),
    bars: bars.filter(({ parts }) => parts.length > 0),
    ...(horizontal && { horizontal }),
    limits: limitsOf(plot, reader),
    system: document.system,
  };
}

function pointsOf({ document }: Workbook, plot: Plot, reader: CellReader, form: 'points' | 'lines'): DrawingData {
  const read = plot.series.map((series) => ({ series, ...reader.columns(series) }));
  const groups = read.map(({ series: { label, line }, values, across, names }) => ({
    label,
    line,
    points: values.flatMap((value, row): Point[] => {
      const x = across[row];
      return value && x ? [{ name: names[row] ?? '', x: x.value, y: value.value }] : [];
    }),
  }));
  const [horizontal, vertical] = [ends(plot.horizontal), ends(plot.vertical)];
  return {
    form,
    title: plot.title,
    across: axisOf(read.flatMap(({ across }) => across)),
    up: axisOf(read.flatMap(({ values }) => values)),
    groups: groups.filter(({ points }) => points.length > 0),
    limits: limitsOf(plot, reader),
    marks: plot.marks.flatMap(({ cell, label }): Mark[] => {
      const value = reader.value(cell)?.value;
      return value === undefined ? [] : [{ label, value }];
    }),
    ...(plot.best && { best: plot.best }),
    ...(horizontal && { horizontal }),
    ...(vertical && { vertical }),
    system: document.system,
  };
}
