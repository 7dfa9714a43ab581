/** A rectangle to be sawn; `turns` when its grain may lie either way. */
export interface Piece {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly turns: boolean;
}

/** Where a piece lies: its sheet from 1, its corner and its size along the sheet. */
export interface Placed {
  readonly piece: Piece;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

export interface Sheet {
  readonly length: number;
  readonly width: number;
  /** What the blade takes between two pieces. */
  readonly kerf: number;
}

interface Free {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

type Order = (a: Piece, b: Piece) => number;
const longest = (piece: Piece): number => Math.max(piece.length, piece.width);
const orders: readonly Order[] = [
  (a, b) => b.length * b.width - a.length * a.width,
  (a, b) => longest(b) - longest(a),
  (a, b) => b.width - a.width || b.length - a.length,
  (a, b) => b.length - a.length || b.width - a.width,
];

/** How the rest of a sheet is cut once a piece lies in its corner: which of the two cuts runs through. */
const splits = ['along', 'across', 'shorter'] as const;
type Split = (typeof splits)[number];

/** What counts as a good fit: little left at the tighter side, or at the wider one. */
const fits = [Math.min, Math.max] as const;
type Fit = (typeof fits)[number];

/** A hair of rounding in sums of millimetres must not refuse a piece that fits exactly. */
const HAIR = 1e-9;

/**
 * Lays pieces on as few sheets as it finds, so that every piece comes free by cuts from edge to edge, as a panel saw makes
 * them. Best fit over several orders and ways to cut; the fewest sheets win, then the largest single rest. Undefined
 * when a piece is larger than a sheet.
 */
export function nest(pieces: readonly Piece[], sheet: Sheet): readonly Placed[] | undefined {
  let best: { placed: readonly Placed[]; score: number } | undefined;
  for (const order of orders)
    for (const split of splits)
      for (const fit of fits) {
        const laid = lay([...pieces].sort(order), sheet, split, fit);
        if (laid === undefined) return undefined;
        const score = laid.sheets - laid.largestRest / (sheet.length * sheet.width);
        if (best === undefined || score < best.score) best = { placed: laid.placed, score };
      }
  return best?.placed ?? [];
}

function lay(
  pieces: readonly Piece[],
  sheet: Sheet,
  split: Split,
  fit: Fit,
): { placed: Placed[]; sheets: number; largestRest: number } | undefined {
  const placed: Placed[] = [];
  let free: Free[] = [];
  let sheets = 0;
  for (const piece of pieces) {
    let spot = bestSpot(piece, free, fit);
    if (spot === undefined) {
      sheets += 1;
      const whole: Free = { sheet: sheets, x: 0, y: 0, length: sheet.length, width: sheet.width };
      free = [...free, whole];
      spot = bestSpot(piece, [whole], fit);
      if (spot === undefined) return undefined;
    }
    placed.push({
      piece,
      sheet: spot.free.sheet,
      x: spot.free.x,
      y: spot.free.y,
      length: spot.length,
      width: spot.width,
    });
    free = [
      ...free.filter((each) => each !== spot.free),
      ...rests(spot.free, spot.length, spot.width, sheet.kerf, split),
    ];
  }
  return { placed, sheets, largestRest: Math.max(0, ...free.map((each) => each.length * each.width)) };
}

/** The free rectangle that a piece fills best, and which way round. */
function bestSpot(
  piece: Piece,
  free: readonly Free[],
  fit: Fit,
): { free: Free; length: number; width: number } | undefined {
  let best: { free: Free; length: number; width: number; waste: number } | undefined;
  const ways = piece.turns && piece.length !== piece.width ? [false, true] : [false];
  for (const each of free)
    for (const turned of ways) {
      const [length, width] = turned ? [piece.width, piece.length] : [piece.length, piece.width];
      if (length > each.length + HAIR || width > each.width + HAIR) continue;
      const waste = fit(each.length - length, each.width - width);
      if (best === undefined || waste < best.waste) best = { free: each, length, width, waste };
    }
  return best;
}

/** The two rectangles that are left beside and above a piece, the blade's share taken off. */
function rests(free: Free, length: number, width: number, kerf: number, split: Split): Free[] {
  const right = free.length - length - kerf;
  const above = free.width - width - kerf;
  const along = split === 'along' || (split === 'shorter' && right < above);
  const { sheet, x, y } = free;
  const beside = { sheet, x: x + length + kerf, y, length: right, width: along ? width : free.width };
  const over = { sheet, x, y: y + width + kerf, length: along ? free.length : length, width: above };
  return [beside, over].filter((each) => each.length > HAIR && each.width > HAIR);
}
