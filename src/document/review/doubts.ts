import { speak } from '../../units/show.ts';
import { parseQuantity } from '../../units/parse.ts';
import { labelOf } from '../labels.ts';
import type { Sheet } from '../types.ts';
import type { Reviewed, ReviewedRow } from './rows.ts';

/** Everything about the sheet that a careful reader would ask about, each thing once. */
export function doubtsOf(workbook: Reviewed, sheet: Sheet, rows: readonly ReviewedRow[]): readonly string[] {
  const { system } = workbook.document;
  const found = rows.flatMap(({ cells }) =>
    cells.flatMap(({ role, address, cell, state, text, lacksBasis }) => {
      const label = labelOf(sheet, address);
      const own: string[] = [];
      if (role === 'problem') own.push(`${label}: ${text}`);
      if (!state) own.push(`${label} (${address}) is not computed yet.`);
      if (state?.value.kind === 'record' && state.value.record.kind === 'driver') {
        const { name, doubts } = state.value.record;
        own.push(...doubts.map((doubt) => `${name || label}: ${speak(doubt, system)}`));
      }
      if (role !== 'problem') own.push(...(state?.findings ?? []).map(({ message }) => `${label}: ${message}`));
      if (lacksBasis)
        own.push(`${label}: no basis is given; ${text} at 2.83 V and at 1 W can differ by 3 dB and more.`);
      const value = parseQuantity(cell.text)?.value;
      const [low, high] = cell.range?.map((end) => parseQuantity(end)?.value) ?? [];
      if (value !== undefined && low !== undefined && high !== undefined && (value < low || value > high)) {
        own.push(`${label}: ${text} lies outside its plausible range, ${cell.range?.join(' to ') ?? ''}.`);
      }
      return own;
    }),
  );
  return [...new Set(found)];
}
