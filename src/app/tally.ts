import type { Sheet } from '../document/types.ts';
import { countVerdicts, type Counts } from '../document/verdicts.ts';
import type { Workbook } from '../document/workbook.ts';

/** Counts the verdicts of a sheet. */
export const tally = (workbook: Workbook, sheet: Sheet): Counts =>
  countVerdicts(
    [...workbook.judged(sheet.id)].flatMap((cell) => (sheet.cells.has(cell) ? [workbook.state(sheet.id, cell)] : [])),
  );
