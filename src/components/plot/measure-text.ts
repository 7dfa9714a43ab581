const known = new Map<string, number>();
let pen: CanvasRenderingContext2D | null | undefined;

/** Width of a text in pixels in a CSS font; remembered, since plots ask for the same words on every frame. */
export function textWidth(text: string, font: string): number {
  const key = `${font}\n${text}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return text.length * 7;
  pen.font = font;
  const { width } = pen.measureText(text);
  if (known.size > 2000) known.clear();
  known.set(key, width);
  return width;
}

/** Widths measured before the faces were there are wrong. */
export const forgetWidths = (): void => known.clear();

const families = new WeakMap<Element, string>();

/** The font family of an element, read once: to ask for it makes the browser lay out the page in the middle of drawing. */
export function familyOf(element: Element): string {
  const known = families.get(element);
  if (known !== undefined) return known;
  const { fontFamily } = getComputedStyle(element);
  if (element.isConnected) families.set(element, fontFamily);
  return fontFamily;
}
