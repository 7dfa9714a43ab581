/** Characters drawn in a colour, or underlined for what is wrong or doubtful with them. */
export interface Mark {
  readonly from: number;
  readonly to: number;
  /** A reference: its place in the palette. */
  readonly index?: number;
  readonly level?: 'error' | 'doubt';
}

/** A piece of the text that looks the same all through. */
export interface Piece {
  readonly text: string;
  /** Its classes; none where it is plain. */
  readonly look: string;
}

/** Cuts a text where marks begin and end. Marks may lie over one another. */
export function piecesOf(text: string, marks: readonly Mark[]): Piece[] {
  const cuts = [0, text.length, ...marks.flatMap(({ from, to }) => [from, to])];
  const places = [...new Set(cuts.filter((cut) => cut <= text.length))].sort((a, b) => a - b);
  return places.slice(1).map((to, index) => {
    const from = places[index] ?? 0;
    const looks = marks.filter((mark) => mark.from <= from && mark.to >= to).map(lookOf);
    return { text: text.slice(from, to), look: looks.join(' ') };
  });
}

const lookOf = ({ index, level }: Mark): string =>
  index === undefined ? `finding-${level ?? 'doubt'}` : `reference-${String(index)}`;
