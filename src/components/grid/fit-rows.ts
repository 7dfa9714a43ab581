import { isPointerCoarse } from '../coarse-pointer.ts';
import { drawCell, lookAt, lookKey, type CellLook } from './cell-view.ts';
import { Geometry, HEAD_HEIGHT, HEAD_WIDTH } from './geometry.ts';
import type { SheetGrid } from './sheet-grid.ts';
import { laterStyles } from './later-styles.ts';

/** Milliseconds that a sheet must stand still before its rows become higher or lower: nothing moves while a number is drawn. */
const STILL = 120;
const NEXT_FRAME = 30;
/** A longer sheet is a table of numbers. */
const MOST_CELLS = 10_000;
/** Letters reach a little out of lines that are set close, CSS pixels; a line that has no room is more. */
const OVERHANG = 6;
/** The message of a problem is told whole beside the sheet: in a column narrower than this it would pile up. */
const LEAST_FOR_PROBLEM = 240;
/** Letters are narrower than this on the average, CSS pixels: shorter words fit without being measured. */
const WIDE_LETTER = 8;
const MOST_KEPT = 2000;

/** Words of a cell that may need more than one line. */
interface Words {
  readonly row: number;
  readonly look: CellLook;
  readonly width: number;
  readonly key: string;
}

/** What words need: whether a usual row has room for them, and the height of the row where it has not. */
interface Need {
  readonly fits: boolean;
  readonly height: number;
}

const needs = new Map<string, Need>();
const last = new WeakMap<SheetGrid, { timer: ReturnType<typeof setTimeout>; at: number }>();
document.fonts.addEventListener('loadingdone', () => needs.clear());

/** Gives the rows of a grid the heights that their words need: in the next frame after a while of rest, else once it stands
 *  still. What changed is painted first, for words are dear to measure. */
export function fitRows(grid: SheetGrid): void {
  const now = performance.now();
  const before = last.get(grid);
  if (!before) {
    if (laterStyles.styleSheet) grid.shadowRoot?.adoptedStyleSheets.push(laterStyles.styleSheet);
    new ResizeObserver(() => fitRows(grid)).observe(grid);
  }
  clearTimeout(before?.timer);
  const isRested = !before || now - before.at > STILL;
  last.set(grid, { at: now, timer: setTimeout(() => void fit(grid), isRested ? NEXT_FRAME : STILL) });
}

async function fit(grid: SheetGrid): Promise<void> {
  const { fonts } = document;
  // Not by its promise: the browser sometimes throws that away unkept.
  if (fonts.status === 'loading')
    await new Promise((done) => fonts.addEventListener('loadingdone', done, { once: true }));
  const body = grid.shadowRoot?.querySelector<HTMLElement>('.body');
  const scroller = body?.parentElement;
  const view = scroller?.clientWidth ?? 0;
  if (!scroller || view === 0) return;
  const words = longWords(grid, view - HEAD_WIDTH);
  if (needs.size > MOST_KEPT) needs.clear();
  measure(body, [...new Map(words.filter(({ key }) => !needs.has(key)).map((each) => [each.key, each])).values()]);
  const tall = new Set(words.filter(({ key }) => needs.get(key)?.fits === false).map(({ row }) => row));
  const heights = new Map<number, number>();
  for (const { row, key } of words)
    if (tall.has(row)) heights.set(row, Math.max(heights.get(row) ?? 0, needs.get(key)?.height ?? 0));
  if (!isSame(heights, grid.heights ?? new Map())) await become(grid, heights, scroller);
}

/** Makes rows so high. What is read stays where it is, although rows above it become higher or lower, and the active cell
 *  in view if it was. */
async function become(grid: SheetGrid, heights: ReadonlyMap<number, number>, scroller: HTMLElement): Promise<void> {
  const isTouch = isPointerCoarse();
  const { model } = grid;
  const { row } = grid.selection.focus;
  const [before, after] = [grid.heights, heights].map((each) => new Geometry(model, isTouch, each)) as [
    Geometry,
    Geometry,
  ];
  const { scrollTop, scrollLeft, clientHeight } = scroller;
  const first = before.rowAt(scrollTop);
  const wasSeen = row >= first && before.top(row + 1) <= scrollTop + clientHeight - HEAD_HEIGHT;
  grid.heights = heights;
  await grid.updateComplete;
  scroller.scrollTop = scrollTop + after.top(first) - before.top(first);
  if (wasSeen) grid.reveal(grid.selection.focus);
  scroller.scrollLeft = scrollLeft;
}

function longWords({ model }: SheetGrid, view: number): readonly Words[] {
  const geometry = new Geometry(model, false);
  const columns = model.columns.length;
  const rows = Math.min(model.rows, Math.floor(MOST_CELLS / Math.max(columns, 1)));
  const found: Words[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const shown = model.shown(row, column);
      const cell = model.cell(row, column);
      // Headings and notes run on over the cells beside them.
      if (cell?.look === 'section' || cell?.look === 'note') continue;
      if (!/^(?:verdict|problem|text|record)$/.test(shown.kind)) continue;
      const width = geometry.seenWidth(column, view);
      if (shown.kind === 'problem' && width < LEAST_FOR_PROBLEM) continue;
      const look = lookAt(model, row, column);
      const key = `${String(width)} ${lookKey(look)}`;
      if (key.length * WIDE_LETTER > width) found.push({ row, look, width, key });
    }
  }
  return found;
}

/** Lays words out beside the sheet, unseen: first in usual rows, then in high ones. */
function measure(body: HTMLElement, words: readonly Words[]): void {
  if (words.length === 0) return;
  const row = document.createElement('div');
  row.className = 'row';
  row.ariaHidden = 'true';
  row.style.visibility = 'hidden';
  row.style.height = '28px';
  const cells = words.map(({ look, width }) => {
    const cell = document.createElement('div');
    drawCell(cell, look, '');
    // A pixel less: a word that is wider by a part of a pixel is cut off all the same.
    cell.style.width = `${String(width - 1)}px`;
    return cell;
  });
  row.append(...cells);
  body.append(row);
  const fits = cells.map((cell) =>
    [...cell.querySelectorAll('.words, .reason')].every(
      (part) => part.scrollWidth <= part.clientWidth && part.scrollHeight <= part.clientHeight + OVERHANG,
    ),
  );
  row.className = 'row tall';
  for (const { style } of cells) {
    style.contain = 'none';
    style.bottom = 'auto';
  }
  for (const [index, { key }] of words.entries())
    needs.set(key, { fits: fits[index] ?? true, height: (cells[index]?.offsetHeight ?? 0) + 1 });
  row.remove();
}

const isSame = (a: ReadonlyMap<number, number>, b: ReadonlyMap<number, number>): boolean =>
  a.size === b.size && [...a].every(([row, height]) => b.get(row) === height);
