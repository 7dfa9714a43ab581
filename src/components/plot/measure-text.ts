const known = new Map<string, number>();
/** One for each font: to take up another costs more than to measure. */
const pens = new Map<string, CanvasRenderingContext2D | null>();

/** Width of a text in pixels in a CSS font; remembered, since plots ask for the same words on every frame, with other figures that
 *  are all as wide as a nought. */
export function textWidth(words: string, font: string): number {
  const text = words.replaceAll(/\d/g, '0');
  const key = `${font}\n${text}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const pen = penFor(font);
  if (!pen) return text.length * 7;
  const { width } = pen.measureText(text);
  if (known.size > 2000) known.clear();
  known.set(key, width);
  return width;
}

function penFor(font: string): CanvasRenderingContext2D | null {
  const held = pens.get(font);
  if (held !== undefined) return held;
  const pen = document.createElement('canvas').getContext('2d');
  if (pen) pen.font = font;
  pens.set(font, pen);
  return pen;
}

/** Widths measured before the faces were there are wrong. */
export function forgetWidths(): void {
  known.clear();
  pens.clear();
}

const families = new WeakMap<Element, string>();

/** The font family of an element, read once: to ask for it makes the browser lay out the page in the middle of drawing. */
export function familyOf(element: Element): string {
  const known = families.get(element);
  if (known !== undefined) return known;
  const { fontFamily } = getComputedStyle(element);
  if (element.isConnected) families.set(element, fontFamily);
  return fontFamily;
}
