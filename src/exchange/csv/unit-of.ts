import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import { unitNamed } from '../../units/table.ts';

/** A unit for a column of numbers. */
export interface ColumnUnit {
  readonly symbol: string;
  /** SI to the unit. */
  of(si: number): number;
}

/** The unit of that symbol; one that is not known, or none, leaves the SI value. */
export function unitOf(symbol: string): ColumnUnit {
  const { si, offset = 0 } = unitNamed(symbol) ?? { si: 1 };
  return { symbol, of: (value) => (value - offset) / si };
}

/** The unit in which the largest of the values is shown. */
export function unitFor(values: Iterable<number>, quantity: QuantityName, system: UnitSystem): ColumnUnit {
  let largest = 0;
  for (const value of values) if (Number.isFinite(value)) largest = Math.max(largest, Math.abs(value));
  return unitOf(show(largest, { quantity, system }).unit);
}
