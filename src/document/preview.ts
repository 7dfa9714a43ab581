import type { Place } from '../engine/types.ts';

/** A text tried out in a cell while it is dragged, before it is a command. */
export interface Preview {
  readonly place: Place;
  readonly text: string;
}

export const samePlace = (a: Place, b: Place): boolean => a.sheet === b.sheet && a.cell === b.cell;

export const keyOf = ({ sheet, cell }: Place): string => `${sheet}!${cell}`;
