import type { Workbook } from '../document/workbook.ts';
import type { Sheet } from '../document/types.ts';
import type { Counts } from './sheet-rail.ts';

/** Counts the verdicts of a sheet. A verdict that only repeats others counts like any other cell: it is one. */
export function countVerdicts(workbook: Workbook | undefined, sheet: Sheet): Counts {
  const counts = { good: 0, caution: 0, fail: 0 };
  for (const cell of sheet.cells.keys()) {
    const value = workbook?.state(sheet.id, cell)?.value;
    if (value?.kind === 'record' && value.record.kind === 'verdict') counts[value.record.status]++;
  }
  return counts;
}
