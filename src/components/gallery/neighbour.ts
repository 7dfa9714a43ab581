/** Where a card stands, in pixels. */
export interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

/** The card that an arrow leads to. Left and right go in reading order; up and down to the nearest row that way, and there to
 *  the card most nearly above or below. The same card where there is none. */
export function neighbour(places: readonly Place[], at: number, key: string): number {
  const last = places.length - 1;
  const here = places[at];
  if (!here) return at;
  switch (key) {
    case 'ArrowRight':
      return Math.min(at + 1, last);
    case 'ArrowLeft':
      return Math.max(at - 1, 0);
    case 'Home':
      return 0;
    case 'End':
      return last;
    case 'ArrowDown':
    case 'ArrowUp': {
      const down = key === 'ArrowDown';
      const beyond = places.filter(({ top }) => (down ? top > here.top + 1 : top < here.top - 1));
      const row = down ? Math.min(...beyond.map(({ top }) => top)) : Math.max(...beyond.map(({ top }) => top));
      const middle = here.left + here.width / 2;
      const [nearest] = beyond
        .filter(({ top }) => Math.abs(top - row) <= 1)
        .toSorted((a, b) => Math.abs(a.left + a.width / 2 - middle) - Math.abs(b.left + b.width / 2 - middle));
      return nearest ? places.indexOf(nearest) : at;
    }
    default:
      return at;
  }
}
