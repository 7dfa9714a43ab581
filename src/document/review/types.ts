import type { Status } from '../../../functions/values/verdict.ts';
import type { Origin, Plot } from '../types.ts';

/** One sheet made ready to be read and checked by others: all that it rests on and all that it says, as shown texts. */
export interface Review {
  /** Of the document. */
  readonly title: string;
  readonly sheet: string;
  readonly summary: string;
  /** When it was made, as an ISO date and time. */
  readonly made: string;
  readonly counts: Readonly<Record<Status, number>>;
  /** Failures first, then cautions. */
  readonly verdicts: readonly ReviewVerdict[];
  /** What is open: doubts in data, problems in cells, inputs outside their range, numbers that nobody vouches for. */
  readonly doubts: readonly string[];
  readonly plots: readonly Plot[];
  readonly inputs: readonly ReviewSection[];
  readonly results: readonly ReviewSection[];
  readonly origins: readonly ReviewOrigin[];
  /** What was taken for granted. */
  readonly assumptions: readonly string[];
  /** What rests on common practice and on no publication. */
  readonly rules: readonly string[];
  /** The notes that stand on the sheet. */
  readonly notes: readonly string[];
  readonly sources: readonly ReviewSource[];
}

export interface ReviewVerdict {
  readonly label: string;
  readonly status: Status;
  readonly word: string;
  readonly reason: string;
  readonly note: string;
  /** What it is held against: "Good 0.5 oct". */
  readonly limits: readonly string[];
}

/** Rows between two headings of a sheet; `columns` are those that hold anything. */
export interface ReviewSection {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly ReviewRow[];
}

export interface ReviewRow {
  readonly label: string;
  /** One for each column of the section; empty where the row has nothing there. */
  readonly cells: readonly ReviewCell[];
}

export interface ReviewCell {
  readonly text: string;
  readonly origin?: Origin;
}

/** Which inputs come from there; `unstated` where nobody has said. */
export interface ReviewOrigin {
  readonly origin: Origin | 'unstated';
  readonly inputs: readonly string[];
}

/** A publication and the functions of this sheet that rest on it. */
export interface ReviewSource {
  readonly title: string;
  readonly functions: readonly string[];
}
