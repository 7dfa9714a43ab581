import type { Status, Verdict } from '../../functions/values/verdict.ts';
import type { CellState } from '../engine/types.ts';

/** What of the state of a cell tells whether it holds a verdict. */
type Judged = Pick<CellState, 'value' | 'type'> | undefined;

/** How many verdicts are good, caution and fail, and how many cannot be given. */
export type Counts = Readonly<Record<Status, number> & { open?: number }>;

export const verdictIn = (state: Pick<CellState, 'value'> | undefined): Verdict | undefined =>
  state?.value.kind === 'record' && state.value.record.kind === 'verdict' ? state.value.record : undefined;

/** Counts verdicts. One that only repeats others counts like any other: it is one. */
export function countVerdicts(states: Iterable<Judged>): Counts {
  const counts = { good: 0, caution: 0, fail: 0, open: 0 };
  for (const state of states) {
    const verdict = verdictIn(state);
    if (verdict) counts[verdict.status]++;
    else if (state?.value.kind === 'problem' && state.type.kind === 'record' && state.type.record === 'verdict')
      counts.open++;
  }
  return counts;
}
