import type { Origin } from '../types.ts';

/** A text that found its place in the new sheet. */
export interface Taken {
  /** What it is, as the new sheet calls it. */
  readonly what: string;
  readonly text: string;
  /** The cell in the new sheet. */
  readonly cell: string;
}

/** An input of the old sheet that the new one has no place for, or refuses. */
export interface Left {
  /** What it is, as the old sheet calls it. */
  readonly what: string;
  readonly text: string;
  readonly why: string;
  /** The cell in the old sheet. */
  readonly cell: string;
}

/** What one sheet takes from another. */
export interface Taking {
  /** Texts by address of the new sheet. */
  readonly texts: ReadonlyMap<string, string>;
  /** Where those come from of which it was said. */
  readonly origins: ReadonlyMap<string, Origin>;
  readonly taken: readonly Taken[];
  readonly left: readonly Left[];
  /** What a reader must know of the drivers: what was computed, what is missing. */
  readonly told: readonly string[];
}

/** The name of the driver that a cell of an old sheet picked out of a list; nothing where it holds no driver. */
export type PickedAt = (cell: string, sheet: string) => string | undefined;

/** What a cell of an old sheet shows, as one would type it; nothing where that cannot be typed. */
export type TypedAs = (cell: string, sheet: string) => string | undefined;
