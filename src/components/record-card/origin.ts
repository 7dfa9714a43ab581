/** A function that a cell's formula calls, and where it comes from. */
export interface Origin {
  readonly name: string;
  readonly summary: string;
  /** The source and the place in it. */
  readonly source: string;
}
