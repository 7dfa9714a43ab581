import type { Changes, Place } from '../engine/types.ts';

/** What a 'change' event tells. */
export interface WorkbookChange {
  /** The document itself changed, or another took its place. */
  readonly document: boolean;
  /** The cells that show something else now; `all` where that is not known cell by cell. */
  readonly places: readonly Place[] | 'all';
  /** How long the engine took, where it answered. */
  readonly timing?: Changes['timing'];
}
