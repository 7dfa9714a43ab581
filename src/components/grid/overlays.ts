import { parseAddress } from '../../formula/address.ts';
import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { CellAt, Outline, Selection } from './model.ts';

/** Draws the rings that lie over the cells: the selection, the active cell, what a formula refers to. */
export function drawOverlays(
  body: HTMLElement,
  geometry: Geometry,
  selection: Selection,
  outlines: readonly Outline[],
): void {
  const { anchor, focus } = selection;
  const isRange = anchor.row !== focus.row || anchor.column !== focus.column;
  place(ring(body, 'selection', 0), geometry, anchor, focus, isRange);
  place(ring(body, 'active', 0), geometry, focus, focus, true);
  const held = body.querySelectorAll<HTMLElement>('.outline');
  held.forEach((each, index) => {
    if (index >= outlines.length) each.remove();
  });
  outlines.forEach(({ cells, colour }, index) => {
    const [first = '', last = first] = cells.split(':');
    const a = parseAddress(first);
    const b = parseAddress(last);
    if (!a || !b) return;
    const element = ring(body, 'outline', index);
    element.style.borderColor = colour;
    place(element, geometry, a, b, true);
  });
}

function ring(body: HTMLElement, kind: string, index: number): HTMLElement {
  const held = body.querySelectorAll<HTMLElement>(`:scope > .${kind}`)[index];
  if (held) return held;
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
