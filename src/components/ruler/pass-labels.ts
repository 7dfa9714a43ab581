/** A window on the rule in which named checks pass. */
export interface Pass {
  readonly label: string;
  /** Ends in pixels along the rule. */
  readonly from: number;
  readonly to: number;
  /** Width of the label as text. */
  readonly width: number;
}

/** Where the label of a window stands: beside its leader, in a row counted upwards from the rule. */
export interface PassLabel {
  readonly x: number;
  readonly row: number;
  /** Where the leader leaves the window, and where it meets the text. */
  readonly leader: readonly [number, number];
}

const LEADER = 14;
const BEYOND = 24;

/** Labels beside the windows, left where there is room, clear of the needle and of one another as far as two rows allow. */
export function placePasses(passes: readonly Pass[], needle: number, pixels: number): PassLabel[] {
  const taken: { from: number; to: number; row: number }[] = [];
  const free = (from: number, to: number, row: number): boolean =>
    from >= -BEYOND &&
    to <= pixels + BEYOND &&
    taken.every((other) => other.row !== row || to < other.from - 4 || from > other.to + 4);
  // The second row stands above the needle's head.
  const clear = (from: number, to: number, row: number): boolean => row > 0 || to < needle - 10 || from > needle + 10;
  return passes.map(({ from, to, width }) => {
    const left = from - LEADER - width;
    const right = to + LEADER;
    const places = [0, 1].flatMap((row) => [
      { x: left, row, leader: [from + Math.min(6, (to - from) / 2), from - LEADER + 4] as const },
      { x: right, row, leader: [to - Math.min(6, (to - from) / 2), to + LEADER - 4] as const },
    ]);
    const fit = places.filter((place) => free(place.x, place.x + width, place.row));
    // No room beside it: over its middle.
    const middle = (from + to) / 2;
    const over = Math.max(-BEYOND, Math.min(middle - width / 2, pixels + BEYOND - width));
    const last = { x: over, row: 1, leader: [middle, middle] as const };
    const chosen = fit.find((place) => clear(place.x, place.x + width, place.row)) ?? fit[0] ?? last;
    taken.push({ from: chosen.x, to: chosen.x + width, row: chosen.row });
    return chosen;
  });
}
