/** A part of what stands in a cell: an element of a kind (its class) with a mark, words and parts of its own in this order. */
export interface Part {
  readonly kind: string;
  readonly mark?: keyof typeof marks;
  readonly text?: string;
  readonly parts?: readonly Part[];
  /** A line drawn in a box of the size `SPARK`, in the place of all others. */
  readonly path?: string;
}

const marks = {
  good: ['M14.2 8a6.2 6.2 0 1 1-12.4 0 6.2 6.2 0 0 1 12.4 0', 'm5.4 8.2 1.9 1.9 3.4-3.9'],
  caution: ['M8 2 14.6 13.6H1.4z', 'M8 6.4v3.2M8 11.6v.1'],
  fail: ['M5.4 1.8h5.2l3.6 3.6v5.2l-3.6 3.6H5.4l-3.6-3.6V5.4z', 'm5.9 5.9 4.2 4.2m0-4.2-4.2 4.2'],
} as const;

/** Width and height of the line of a curve. */
export const SPARK = [120, 20] as const;

const SVG = 'http://www.w3.org/2000/svg';

/** Fills an element with parts. Where they are of the kinds of those before, its elements stay and only their words change:
 *  new elements would cost several times as much to lay out.
 *  @param former - What was given back when the element was filled last.
 *  @returns The kinds of all parts. */
export function fill(target: Element, parts: readonly Part[], former: string): string {
  const kinds = parts.map(kindsOf).join();
  if (kinds === former) renewAll(target.children, parts);
  else target.replaceChildren(...parts.map(made));
  return kinds;
}

/** Writing the same again would still count as a change. */
export function setText<Name extends string>(target: Record<Name, string>, name: Name, text: string): void {
  if (target[name] !== text) target[name] = text;
}

const kindsOf = ({ kind, mark, text, parts = [], path }: Part): string =>
  `${kind}/${mark ?? ''}${text === undefined ? '' : '"'}${path === undefined ? '' : '~'}(${parts.map(kindsOf).join()})`;

function made({ kind, mark, text, parts = [], path }: Part): Element {
  if (path !== undefined) {
    const line = drawing(kind, SPARK, [path]);
    line.setAttribute('preserveAspectRatio', 'none');
    return line;
  }
  const element = document.createElement('span');
  element.className = kind;
  if (mark) element.append(drawing('icon', [16, 16], marks[mark]));
  if (text !== undefined) element.append(text);
  element.append(...parts.map(made));
  return element;
}

function renewAll(elements: HTMLCollection, parts: readonly Part[], from = 0): void {
  for (const [index, part] of parts.entries()) {
    const element = elements[from + index];
    if (element) renew(element, part);
  }
}

function renew(element: Element, { mark, text, parts, path }: Part): void {
  if (path !== undefined) element.firstElementChild?.setAttribute('d', path);
  const words = element.childNodes[mark ? 1 : 0];
  if (text !== undefined && words instanceof Text) setText(words, 'data', text);
  if (parts) renewAll(element.children, parts, mark ? 1 : 0);
}

function drawing(kind: string, [width, height]: readonly [number, number], paths: readonly string[]): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', kind);
  svg.setAttribute('viewBox', `0 0 ${String(width)} ${String(height)}`);
  svg.setAttribute('aria-hidden', 'true');
  for (const d of paths) {
    const path = document.createElementNS(SVG, 'path');
    path.setAttribute('d', d);
    svg.append(path);
  }
  return svg;
}
