import { css } from 'lit';
import { Geometry, HEAD_WIDTH } from './geometry.ts';
import type { GridModel } from './model.ts';
import type { SheetGrid } from './sheet-grid.ts';

/** No narrower than that a usual label is read in two lines, and else no more than this share of the view. */
const LEAST_WIDTH = 112;
const MOST_OF_VIEW = 0.3;

const styles = css`
  .corner[data-label] {
    overflow: visible;
  }
  .corner[data-label]::after,
  .rowhead[data-label]::after {
    content: attr(data-label);
    position: absolute;
    left: 100%;
    top: 0;
    bottom: 0;
    box-sizing: border-box;
    width: var(--labels);
    padding: 0 6px 0 10px;
    overflow: clip;
    background: var(--panel);
    border-right: 1px solid var(--line2);
    color: var(--ink);
    font-weight: 600;
    line-height: 30px;
    white-space: nowrap;
  }
  .rowhead[data-label]::after {
    bottom: -1px;
    border-bottom: 1px solid var(--line);
    background: var(--paper);
    font: 12px/13px var(--sans);
    display: flex;
    align-items: center;
    white-space: normal;
  }
  .rowhead.section[data-label]::after {
    font-weight: 600;
    border-bottom-color: var(--line2);
  }
  [data-whole] .rowhead[data-label]::after {
    font-size: 14px;
    line-height: 18px;
  }
  .rowhead.tall[data-label]::after {
    align-items: start;
    padding-top: 6px;
  }
`;

const strips = new WeakMap<SheetGrid, LabelStrip>();

/** Keeps the labels of the first column beside the row numbers of a grid that is scrolled sideways. */
export function keepLabels(grid: SheetGrid): void {
  const strip = strips.get(grid) ?? new LabelStrip(grid);
  strips.set(grid, strip);
  strip.draw();
}

/** The first column, no wider than it must be. It gives way to words that need the whole view, as those of a verdict: they
 *  say themselves what they are about. */
class LabelStrip {
  readonly #grid: SheetGrid;
  readonly #scroller: HTMLElement;
  /** As last told by the browser: asked for after drawing, the page would be laid out once more. */
  #scrolled = 0;
  #view = 0;
  #model: GridModel | undefined;
  #geometry: Geometry | undefined;
  #isShown = false;

  constructor(grid: SheetGrid) {
    this.#grid = grid;
    const root = grid.shadowRoot;
    if (root && styles.styleSheet) root.adoptedStyleSheets.push(styles.styleSheet);
    this.#scroller = root?.querySelector<HTMLElement>('.scroller') ?? grid;
    // Before the grid draws, while the page is laid out.
    this.#scroller.addEventListener('scroll', () => this.#see(), { capture: true, passive: true });
    new ResizeObserver(() => this.#see()).observe(this.#scroller);
  }

  #see(): void {
    this.#scrolled = this.#scroller.scrollLeft;
    this.#view = this.#scroller.clientWidth - HEAD_WIDTH;
    if (this.#isShown || this.#scrolled > 0) queueMicrotask(() => this.draw());
  }

  draw(): void {
    const { model, selection } = this.#grid;
    if (this.#view <= 0) return;
    if (model.columns !== this.#model?.columns) this.#geometry = new Geometry(model, false);
    this.#model = model;
    const geometry = this.#geometry;
    const first = geometry?.widthOf(0) ?? 0;
    const width = Math.round(Math.min(first, Math.max(LEAST_WIDTH, MOST_OF_VIEW * this.#view)));
    const { column } = selection.focus;
    const hasRoom = column === 0 || (geometry?.seenWidth(column, this.#view) ?? 0) <= this.#view - width;
    // Exactly so far is scrolled to the cell beside them.
    const isOut = this.#scrolled > 0 && this.#scrolled >= first - width;
    this.#show(isOut && hasRoom ? width : 0);
    const padding = `${String(hasLabels(model) ? width : 0)}px`;
    if (this.#scroller.style.scrollPaddingLeft !== padding) this.#scroller.style.scrollPaddingLeft = padding;
  }

  #show(width: number): void {
    const { model } = this.#grid;
    const isShown = width > 0 && hasLabels(model);
    if (!isShown && !this.#isShown) return;
    this.#isShown = isShown;
    const corner = this.#scroller.querySelector<HTMLElement>('.corner');
    label(corner, isShown ? (model.columns[0]?.title ?? '') : undefined);
    const numbers = this.#scroller.querySelector<HTMLElement>('.numbers');
    numbers?.toggleAttribute('data-whole', width === model.columns[0]?.width);
    for (const part of [corner, numbers]) part?.style.setProperty('--labels', `${String(width)}px`);
    for (const head of numbers?.querySelectorAll<HTMLElement>('.rowhead') ?? [])
      label(head, isShown && !head.hidden ? labelIn(model, Number(head.textContent) - 1) : undefined);
  }
}

function label(element: HTMLElement | null, text: string | undefined): void {
  if (!element || element.dataset['label'] === text) return;
  if (text === undefined) delete element.dataset['label'];
  else element.dataset['label'] = text;
}

/** The words at the beginning of a row; nothing where they run on over the cells beside them. */
function labelIn(model: GridModel, row: number): string | undefined {
  if (model.cell(row, 0)?.look === 'note') return undefined;
  const shown = model.shown(row, 0);
  return shown.kind === 'text' || shown.kind === 'waiting' ? shown.text : '';
}

/** Whether the first column is one of labels, as its first rows tell. */
const hasLabels = (model: GridModel): boolean =>
  Array.from({ length: Math.min(model.rows, 12) }, (_, row) => labelIn(model, row)).some(Boolean);
