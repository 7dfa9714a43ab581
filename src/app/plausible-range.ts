import type { Cell } from '../document/types.ts';
import type { CellState } from '../engine/types.ts';
import { parseQuantity } from '../units/parse.ts';

/** The ends of an input's rule in SI: as the cell says, otherwise a factor of four to both sides of its value; always so
 *  wide that the value lies inside. Nothing for formulas and for what is no number. */
export function rangeOf(cell: Cell, state: CellState | undefined): readonly [number, number] | undefined {
  if (cell.text.startsWith('=') || state?.value.kind !== 'number') return undefined;
  const { value } = state.value;
  const [low, high] = cell.range?.map((text) => parseQuantity(text)?.value) ?? [];
  if (low !== undefined && high !== undefined && low < high) return [Math.min(low, value), Math.max(high, value)];
  if (value === 0) return [0, 1];
  return value > 0 ? [value / 4, value * 4] : [value * 4, value / 4];
}
