import type { DriverRow, RowMeaning } from './entry.ts';

/** One driver found in a pasted datasheet: what was understood, what is open, what was not understood. */
export interface Reading {
  /** Empty where the text names none. */
  readonly name: string;
  /** The words above everything, where no row gives a name: they may be it. */
  readonly heading?: string;
  readonly rows: readonly ReadRow[];
  readonly unread: readonly UnreadText[];
}

/** A row that was understood, or would be once its question is answered. */
export interface ReadRow extends DriverRow {
  readonly meaning: Exclude<RowMeaning, undefined | 'name'>;
  /** Where it stood, counted from 1. */
  readonly line: number;
  /** As it stood there. */
  readonly found: string;
  /** How it was taken, where that is not plain from the text. */
  readonly remark?: string;
  /** While it is open, `text` is empty. */
  readonly question?: Question;
}

/** Something that the text leaves open; each choice is a text that the row would take. */
export interface Question {
  readonly words: string;
  readonly choices: readonly Choice[];
  /** The only plausible choice, where there is just one. */
  readonly suggested?: string;
}

export interface Choice {
  readonly text: string;
  /** What choosing it means, where the text alone does not say. */
  readonly words?: string;
}

export interface UnreadText {
  readonly line: number;
  readonly text: string;
  readonly why: string;
}

/** The rows as they go on the shelf, with the answers by row; a row whose question is not answered is left out. */
export function answered({ rows }: Reading, answers: ReadonlyMap<number, string>): readonly DriverRow[] {
  return rows.flatMap(({ label, text, question }, index) => {
    const taken = question ? (answers.get(index) ?? '') : text;
    return taken === '' ? [] : [{ label, text: taken }];
  });
}
