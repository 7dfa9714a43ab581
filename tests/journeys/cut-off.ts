import type { Page } from 'puppeteer-core';

/** The words on the page that cannot be read whole where they stand, a line each: what they say and what ends them. What a
 *  reader can scroll to is no cut, nor is what is drawn for screen readers alone. */
export const cutOff = (page: Page): Promise<string[]> => page.evaluate(findCuts);

/** Runs in the page. */
function findCuts(): string[] {
  /** Rounding, and the overhang of letters. */
  const SLACK = 1.5;
  const cuts = new Set<string>();
  const parentOf = (node: Node): Element | null => {
    if ((node instanceof Element || node instanceof Text) && node.assignedSlot) return node.assignedSlot;
    const { parentNode } = node;
    if (parentNode instanceof ShadowRoot) return parentNode.host;
    return parentNode instanceof Element ? parentNode : null;
  };

  /** What ends words at a side: the nearest box around them that neither shows nor scrolls to what passes it. */
  const cutBy = (words: Text): string | undefined => {
    const range = document.createRange();
    range.selectNodeContents(words);
    const rects = [...range.getClientRects()].filter(({ width, height }) => width > 0 && height > 0);
    if (rects.length === 0) return undefined;
    const left = Math.min(...rects.map((rect) => rect.left));
    const right = Math.max(...rects.map((rect) => rect.right));
    const top = Math.min(...rects.map((rect) => rect.top));
    const bottom = Math.max(...rects.map((rect) => rect.bottom));
    const isReachable = { across: false, down: false };
    for (let box = parentOf(words); box; box = parentOf(box)) {
      const style = getComputedStyle(box);
      if (style.display === 'contents' || style.display === 'inline') continue;
      const rect = box.getBoundingClientRect();
      // Drawn for screen readers alone.
      if (rect.width <= 1 || rect.height <= 1 || style.clipPath !== 'none') return undefined;
      const isClipping = /strict|content|paint/.test(style.contain);
      const ends = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip' || isClipping;
      const scrolls = (overflow: string): boolean => overflow === 'auto' || overflow === 'scroll';
      if (scrolls(style.overflowX)) isReachable.across = true;
      if (scrolls(style.overflowY)) isReachable.down = true;
      const isCutAcross = ends(style.overflowX) && (left < rect.left - SLACK || right > rect.right + SLACK);
      const isCutDown = ends(style.overflowY) && (top < rect.top - SLACK || bottom > rect.bottom + SLACK);
      if ((isCutAcross && !isReachable.across) || (isCutDown && !isReachable.down))
        return `${box.localName}.${box.getAttribute('class') ?? ''}`;
      if (style.position === 'fixed') return undefined;
    }
    return undefined;
  };

  const visit = (root: Document | ShadowRoot): void => {
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (node instanceof Element) {
        if (node.shadowRoot) visit(node.shadowRoot);
        continue;
      }
      const words = node.nodeValue?.trim() ?? '';
      const element = node.parentElement;
      if (words === '' || !element?.checkVisibility({ visibilityProperty: true })) continue;
      // Drawings shorten names themselves; on a button the dots say that more is asked.
      const isShortened = element instanceof SVGElement && words.endsWith('…');
      const by = isShortened ? 'the drawing' : cutBy(node as Text);
      if (by !== undefined) cuts.add(`“${words}” is cut off by ${by}`);
    }
  };
  visit(document);
  return [...cuts];
}
