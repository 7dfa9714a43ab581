import type { Axis, DrawingData, Shape } from '../../components/drawing/data.ts';
import { unitOf } from '../../exchange/csv/unit-of.ts';
import { writeCsv, type CsvField } from '../../exchange/csv/write-csv.ts';

interface Column {
  readonly head: string;
  /** Texts have none. */
  readonly axis?: Axis;
}

/** What a drawing shows as a table: a row of names, a row of units, then a row for each thing in it. */
export function drawingCsv(data: DrawingData): string {
  switch (data.form) {
    case 'bars': {
      const labels = [...new Set(data.bars.flatMap(({ parts }) => parts.map(({ label }) => label)))];
      const rows = data.bars.map(({ name, parts }) => [
        name,
        ...labels.map((label) => parts.find((part) => part.label === label)?.value),
      ]);
      return written([{ head: 'Name' }, ...labels.map((head) => ({ head, axis: data.axis }))], rows);
    }
    case 'points':
    case 'lines': {
      const rows = data.groups.flatMap(({ label, points }) => points.map(({ name, x, y }) => [label, name, x, y]));
      const heads = [{ head: 'Series' }, { head: 'Name' }];
      return written([...heads, { head: 'Across', axis: data.across }, { head: 'Up', axis: data.up }], rows);
    }
    case 'shapes': {
      const sizes = ['From left', 'From below', 'Width', 'Height'].map((head) => ({ head, axis: data.axis }));
      const rows = data.grounds.flatMap((shapes, index) => shapes.map((shape) => [...shapeRow(shape), index + 1]));
      return written([{ head: 'Name' }, { head: 'Form' }, ...sizes, { head: 'Ground' }], rows);
    }
  }
}

const shapeRow = ({ name, outline, left, below, width, height }: Shape): CsvField[] => [
  name,
  outline === 'circle' ? 'circle, by its middle' : 'rectangle, by its lower left corner',
  left,
  below,
  width,
  height,
];

const written = (columns: readonly Column[], rows: readonly (readonly CsvField[])[]): string =>
  writeCsv([
    columns.map(({ head }) => head),
    columns.map(({ axis }) => axis?.symbol),
    ...rows.map((row) =>
      row.map((value, index) => {
        const axis = columns[index]?.axis;
        return axis && typeof value === 'number' ? unitOf(axis.symbol).of(value) : value;
      }),
    ),
  ]);
