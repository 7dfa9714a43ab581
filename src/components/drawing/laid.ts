import type { SVGTemplateResult } from 'lit';

/** How much room there is, and how wide a text gets; a small picture has no words, and its texts no width. */
export interface Room {
  readonly width: number;
  /** Given by the room in a small picture, else found by the drawing. */
  readonly height?: number;
  readonly measure: (text: string) => number;
  readonly isSmall: boolean;
}

/** A drawing laid out in its room. */
export interface Laid {
  readonly height: number;
  readonly picture: SVGTemplateResult;
  /** Where each thing stands that has a reading, in the order of the readings. */
  readonly places: readonly Place[];
}

export interface Place {
  readonly x: number;
  readonly y: number;
  /** How far a thing reaches from its middle: whatever lies under the pointer is read, and of several the smallest. */
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** The thing that is meant by a spot: the smallest one that it lies in, else the nearest. */
export function placeAt(places: readonly Place[], x: number, y: number): number {
  let found = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const [index, place] of places.entries()) {
    const beside = Math.max(0, Math.abs(x - place.x) - place.halfWidth);
    const above = Math.max(0, Math.abs(y - place.y) - place.halfHeight);
    const distance = Math.hypot(beside, above) + (place.halfWidth * place.halfHeight) / 1e6;
    if (distance >= least) continue;
    least = distance;
    found = index;
  }
  return found;
}
