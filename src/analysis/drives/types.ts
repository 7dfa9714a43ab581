import type { OctavoDocument } from '../../document/types.ts';
import type { CellValue, Place } from '../../engine/types.ts';
import type { Input, Result } from '../subject/types.ts';

export interface DrivesQuestion {
  readonly document: OctavoDocument;
  readonly at: Place;
}

/** A cell that a result depends on, with what it depends on in turn. */
export interface Branch extends Place {
  readonly label: string;
  readonly isInput: boolean;
  readonly value: CellValue;
  /** What one per cent more of an input does to the result, SI; nothing for what is no input or has no effect to tell. */
  readonly perPercent?: number;
  /** The largest effect of the inputs behind it: branches are sorted by it. */
  readonly weight: number;
  readonly branches: readonly Branch[];
  /** The cell stands elsewhere in the tree with its branches. */
  readonly isRepeated?: true;
}

export interface Drives {
  readonly result: Result;
  readonly tree: Branch;
  /** The inputs that move the result, biggest effect first. */
  readonly inputs: readonly { readonly input: Input; readonly perPercent: number }[];
  /** The inputs behind the result that do not move it. */
  readonly still: readonly Input[];
}

export interface FollowsQuestion {
  readonly document: OctavoDocument;
  readonly at: Place;
}

export interface Follows {
  readonly input: Input;
  /** All results that follow, in reading order; `perPercent` for numbers. */
  readonly results: readonly { readonly result: Result; readonly perPercent?: number }[];
}
