import { parseAddress } from '../../formula/address.ts';
import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt, Outline, Selection } from './model.ts';

/** The rings over the cells of a sheet, kept: to look for them among all cells would cost more than to draw them. */
interface Rings {
  readonly selection: HTMLElement;
  readonly active: HTMLElement;
  readonly outlines: HTMLElement[];
}
const kept = new WeakMap<HTMLElement, Rings>();

/** Draws the rings that lie over the cells: the selection, the active cell, what a formula refers to. */
export function drawOverlays(
  body: HTMLElement,
  geometry: Geometry,
  selection: Selection,
  outlines: readonly Outline[],
): void {
  let rings = kept.get(body);
  if (!rings)
    kept.set(body, (rings = { selection: ring(body, 'selection'), active: ring(body, 'active'), outlines: [] }));
  const { anchor, focus } = selection;
  const isRange = anchor.row !== focus.row || anchor.column !== focus.column;
  place(rings.selection, geometry, anchor, focus, isRange);
  place(rings.active, geometry, focus, focus, true);
  for (const spare of rings.outlines.splice(outlines.length)) spare.remove();
  for (const [index, { cells, colour }] of outlines.entries()) {
    const element = (rings.outlines[index] ??= ring(body, 'outline'));
    const [first = '', last = first] = cells.split(':');
    const [a, b] = [parseAddress(first), parseAddress(last)];
    element.style.borderColor = colour;
    if (a && b) place(element, geometry, a, b, true);
    else element.hidden = true;
  }
}

function ring(body: HTMLElement, kind: string): HTMLElement {
  const made = document.createElement('div');
  made.className = kind;
  made.setAttribute('role', 'presentation');
  body.append(made);
  return made;
}

function place(element: HTMLElement, geometry: Geometry, a: CellAt, b: CellAt, isShown: boolean): void {
  element.hidden = !isShown;
  if (!isShown) return;
  const top = geometry.top(Math.min(a.row, b.row));
  const left = geometry.left(Math.min(a.column, b.column));
  element.style.top = `${String(top - 1)}px`;
  element.style.left = `${String(HEAD_WIDTH + left - 1)}px`;
  element.style.height = `${String(geometry.top(Math.max(a.row, b.row) + 1) - top + 1)}px`;
  element.style.width = `${String(geometry.left(Math.max(a.column, b.column) + 1) - left + 1)}px`;
}
