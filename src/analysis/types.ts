import type { OctavoDocument } from '../document/types.ts';
import type { Subject, Watch } from './subject/types.ts';
import type { SweepQuestion, Sweep, MapQuestion, ResultMap } from './sweep/types.ts';
import type { CheapestQuestion, Cheapest } from './cheapest/types.ts';
import type { CombineQuestion, Combine } from './combine/types.ts';
import type { OptimiseQuestion, Optimum } from './optimise/types.ts';
import type { ReadQuestion } from './read/types.ts';
import type { SeekQuestion, Seek } from './seek/types.ts';
import type { ScatterPart, ScatterRuns } from './scatter/runs.ts';
import type { ScatterQuestion, ScatterShare, Scattered, Scatter } from './scatter/types.ts';
import type { DrivesQuestion, Drives, FollowsQuestion, Follows } from './drives/types.ts';
import type { Row, ShortlistQuestion, Shortlist } from './shortlist/types.ts';

/** All questions, wherever they are answered: in this thread, or in workers. */
export interface Analyst {
  subject(document: OctavoDocument): Promise<Subject>;
  /** Reads a question in plain words against the names and labels of a document. */
  read(document: OctavoDocument, sentence: string): Promise<ReadQuestion>;
  sweep(question: SweepQuestion, watch?: Watch): Promise<Sweep>;
  map(question: MapQuestion, watch?: Watch): Promise<ResultMap>;
  seek(question: SeekQuestion, watch?: Watch): Promise<Seek>;
  combine(question: CombineQuestion, watch?: Watch): Promise<Combine>;
  optimise(question: OptimiseQuestion, watch?: Watch): Promise<Optimum>;
  cheapest(question: CheapestQuestion, watch?: Watch): Promise<Cheapest>;
  scatter(question: ScatterQuestion, watch?: Watch): Promise<Scatter>;
  /** The same in two steps, so that several threads can share each. */
  scatterPart(share: ScatterShare, watch?: Watch): Promise<ScatterPart>;
  scatterSummary(given: ScatterRuns, watch?: Watch): Promise<readonly Scattered[]>;
  drives(question: DrivesQuestion, watch?: Watch): Promise<Drives>;
  follows(question: FollowsQuestion, watch?: Watch): Promise<Follows>;
  /** @param first - Hears the first rows before all are judged. */
  shortlist(question: ShortlistQuestion, watch?: Watch, first?: (rows: readonly Row[]) => void): Promise<Shortlist>;
  dispose(): void;
}

export type { Subject, Watch, Span } from './subject/types.ts';
export type { SweepQuestion, Sweep, MapQuestion, ResultMap } from './sweep/types.ts';
export type { SeekQuestion, Seek } from './seek/types.ts';
export type { CombineQuestion, Combine } from './combine/types.ts';
export type { OptimiseQuestion, Optimum } from './optimise/types.ts';
export type { CheapestQuestion, Cheapest } from './cheapest/types.ts';
export type { CauseName, Spread, ScatterQuestion, Scattered, Scatter } from './scatter/types.ts';
export type { DrivesQuestion, Drives, FollowsQuestion, Follows } from './drives/types.ts';
export type { Candidate, Row, ShortlistQuestion, Shortlist } from './shortlist/types.ts';
