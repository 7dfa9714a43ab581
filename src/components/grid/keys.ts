import type { CellAt, GridModel, Selection } from './model.ts';

export type Step =
  | 'up'
  | 'down'
  | 'left'
  | 'right'
  | 'page-up'
  | 'page-down'
  | 'row-start'
  | 'row-end'
  | 'start'
  | 'end'
  | 'edge-up'
  | 'edge-down'
  | 'edge-left'
  | 'edge-right';

export type GridAct =
  'edit' | 'clear' | 'all' | 'fill-down' | 'fill-right' | 'menu' | 'nudge-up' | 'nudge-down' | 'narrower' | 'wider';

/** One key of the grid and what it does; Shift with a step extends the selection. */
export interface GridKey {
  readonly key: string;
  readonly control?: true;
  readonly alt?: true;
  /** Only with Shift; left out, Shift may be held or not. */
  readonly shift?: true;
  readonly step?: Step;
  readonly act?: GridAct;
}

/** The keys of the grid, as a table. */
export const gridKeys: readonly GridKey[] = [
  { key: 'ArrowUp', step: 'up' },
  { key: 'ArrowDown', step: 'down' },
  { key: 'ArrowLeft', step: 'left' },
  { key: 'ArrowRight', step: 'right' },
  { key: 'ArrowUp', control: true, step: 'edge-up' },
  { key: 'ArrowDown', control: true, step: 'edge-down' },
  { key: 'ArrowLeft', control: true, step: 'edge-left' },
  { key: 'ArrowRight', control: true, step: 'edge-right' },
  { key: 'Home', step: 'row-start' },
  { key: 'End', step: 'row-end' },
  { key: 'Home', control: true, step: 'start' },
  { key: 'End', control: true, step: 'end' },
  { key: 'PageUp', step: 'page-up' },
  { key: 'PageDown', step: 'page-down' },
  { key: 'F2', act: 'edit' },
  { key: 'Delete', act: 'clear' },
  { key: 'Backspace', act: 'clear' },
  { key: 'a', control: true, act: 'all' },
  { key: 'd', control: true, act: 'fill-down' },
  { key: 'r', control: true, act: 'fill-right' },
  { key: 'F10', shift: true, act: 'menu' },
  { key: 'ContextMenu', act: 'menu' },
  { key: 'ArrowUp', alt: true, act: 'nudge-up' },
  { key: 'ArrowDown', alt: true, act: 'nudge-down' },
  { key: 'ArrowLeft', alt: true, shift: true, act: 'narrower' },
  { key: 'ArrowRight', alt: true, shift: true, act: 'wider' },
];

export const keyFor = (event: KeyboardEvent): GridKey | undefined =>
  gridKeys.find(
    (each) =>
      each.key.toLowerCase() === event.key.toLowerCase() &&
      Boolean(each.control) === (event.ctrlKey || event.metaKey) &&
      Boolean(each.alt) === event.altKey &&
      (!each.shift || event.shiftKey),
  );

/** What of a grid a step asks for. */
type Cells = Pick<GridModel, 'rows' | 'columns' | 'cell'>;

/** Where a step leads. `page` is how many rows are seen at once. */
export function stepped(at: CellAt, step: Step, model: Cells, page: number): CellAt {
  const lastRow = model.rows - 1;
  const lastColumn = model.columns.length - 1;
  const { row, column } = at;
  switch (step) {
    case 'up':
      return { row: Math.max(0, row - 1), column };
    case 'down':
      return { row: Math.min(lastRow, row + 1), column };
    case 'left':
      return { row, column: Math.max(0, column - 1) };
    case 'right':
      return { row, column: Math.min(lastColumn, column + 1) };
    case 'page-up':
      return { row: Math.max(0, row - page), column };
    case 'page-down':
      return { row: Math.min(lastRow, row + page), column };
    case 'row-start':
      return { row, column: 0 };
    case 'row-end':
      return { row, column: lastFilled(row, model) };
    case 'start':
      return { row: 0, column: 0 };
    case 'end':
      return { row: lastRow, column: lastColumn };
    case 'edge-up':
      return edge(at, -1, 0, model);
    case 'edge-down':
      return edge(at, 1, 0, model);
    case 'edge-left':
      return edge(at, 0, -1, model);
    case 'edge-right':
      return edge(at, 0, 1, model);
  }
}

function lastFilled(row: number, model: Cells): number {
  for (let column = model.columns.length - 1; column > 0; column--) if (model.cell(row, column)) return column;
  return 0;
}

/** Inside a run of filled cells to its end, otherwise over the gap to the next filled cell or the border. */
function edge(at: CellAt, rows: number, columns: number, model: Cells): CellAt {
  const inside = ({ row, column }: CellAt): boolean =>
    row >= 0 && column >= 0 && row < model.rows && column < model.columns.length;
  const filled = ({ row, column }: CellAt): boolean => Boolean(model.cell(row, column)?.text);
  const next = (from: CellAt): CellAt => ({ row: from.row + rows, column: from.column + columns });
  let here = at;
  const isRun = filled(at) && inside(next(at)) && filled(next(at));
  while (inside(next(here))) {
    const ahead = next(here);
    if (isRun && !filled(ahead)) return here;
    here = ahead;
    if (!isRun && filled(here)) return here;
  }
  return here;
}

export const extended = (selection: Selection, to: CellAt, isExtending: boolean): Selection =>
  isExtending ? { anchor: selection.anchor, focus: to } : { anchor: to, focus: to };
