/** A rectangle of the window, in pixels. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

const GAP = 14;
const EDGE = 8;

/** Where a card stands so that it does not hide what it speaks of: below, above, right or left of it, the first with room; in
 *  a corner of it where it fills the window; in the middle where there is nothing to point at. Never outside the window. */
export function placeCard(target: Box | undefined, card: Size, window: Size): { left: number; top: number } {
  const inside = (left: number, top: number): { left: number; top: number } => ({
    left: Math.max(EDGE, Math.min(left, window.width - card.width - EDGE)),
    top: Math.max(EDGE, Math.min(top, window.height - card.height - EDGE)),
  });
  if (!target) return inside((window.width - card.width) / 2, (window.height - card.height) / 2);
  const { left, top, width, height } = target;
  const right = left + width;
  const bottom = top + height;
  if (bottom + GAP + card.height + EDGE <= window.height) return inside(left, bottom + GAP);
  if (top - GAP - card.height >= EDGE) return inside(left, top - GAP - card.height);
  if (right + GAP + card.width + EDGE <= window.width) return inside(right + GAP, top);
  if (left - GAP - card.width >= EDGE) return inside(left - GAP - card.width, top);
  return inside(right - card.width - GAP, bottom - card.height - GAP);
}
