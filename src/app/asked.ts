import { labelOf } from '../document/labels.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { Place } from '../engine/types.ts';

/** What a cell asks about the input that feeds it, and what it cannot do with it: said where the input was typed. */
export function askedBy(workbook: Workbook, sheet: Sheet, place: Place): readonly string[] {
  const state = place.sheet === sheet.id ? workbook.state(place.sheet, place.cell) : undefined;
  const asked = new Set(state?.findings.map(({ message }) => message));
  // A problem that came from elsewhere is told by the cell in which it arose.
  if (state?.value.kind === 'problem' && !state.value.origin) asked.add(state.value.message);
  return [...asked].map((message) => `${place.cell}, ${labelOf(sheet, place.cell)}: ${message}`);
}
