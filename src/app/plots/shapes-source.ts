import type { TableRecord } from '../../../functions/values/table.ts';
import type { Shape, ShapesData } from '../../components/drawing/data.ts';
import type { Line, Plot } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { axisOf, type CellReader } from './cell-reader.ts';

/** A drawing to scale. A range of cells gives a shape in each row: its name, from left, from below, width, height; without a
 *  height it is a circle, placed by its middle. A table gives rectangles by its columns From left, From below, Along and
 *  Across; `column` of its series says which column tells the ground that each lies on. */
export function shapesOf({ document }: Workbook, plot: Plot, reader: CellReader): ShapesData | undefined {
  const [width, height] = (plot.ground ?? []).map((cell) => reader.value(cell));
  if (!width || !height || width.value <= 0 || height.value <= 0) return undefined;
  const placed = plot.series.flatMap(({ cell, line, column }) => {
    const table = reader.table(cell);
    return table ? inTable(table, line, column) : inCells(cell, line, reader);
  });
  const count = Math.max(1, ...placed.map(({ ground }) => ground));
  return {
    form: 'shapes',
    title: plot.title,
    axis: axisOf([width, height]),
    width: width.value,
    height: height.value,
    grounds: Array.from({ length: count }, (_, index) =>
      placed.filter(({ ground }) => ground === index + 1).map(({ shape }) => shape),
    ),
    system: document.system,
  };
}

interface PlacedShape {
  readonly ground: number;
  readonly shape: Shape;
}

function inTable({ columns, rows }: TableRecord, line: Line, column: string | undefined): PlacedShape[] {
  const place = (name: string | undefined): number => columns.findIndex((each) => each.name === name);
  const named = columns.findIndex(({ quantity }) => quantity === 'text');
  const [left, below, along, across] = ['From left', 'From below', 'Along', 'Across'].map(place);
  return rows.map((row) => {
    const number = (at: number | undefined): number => Number(row[at ?? -1] ?? 0);
    const ground = column === undefined ? 1 : number(place(column));
    const shape: Shape = {
      name: String(row[named] ?? ''),
      outline: 'rectangle',
      line,
      left: number(left),
      below: number(below),
      width: number(along),
      height: number(across),
    };
    return { ground: Math.max(1, ground), shape };
  });
}

function inCells(cells: string, line: Line, reader: CellReader): PlacedShape[] {
  return reader.rows(cells).flatMap(([name = '', ...sizes]) => {
    const [left, below, width, height] = sizes.map((each) => reader.value(each)?.value);
    if (left === undefined || below === undefined || width === undefined || width <= 0) return [];
    const shape: Shape = {
      name: reader.words([name]),
      outline: height === undefined ? 'circle' : 'rectangle',
      line,
      left,
      below,
      width,
      height: height ?? width,
    };
    return [{ ground: 1, shape }];
  });
}
