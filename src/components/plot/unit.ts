import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import { unitNamed } from '../../units/table.ts';

/** The unit of a value axis: one for all its values, chosen for the largest. */
export interface AxisUnit {
  readonly symbol: string;
  /** SI to axis unit. */
  of(si: number): number;
  /** `3.6 Ω`: a value in the axis unit, to the three digits that a curve can be read to. */
  text(si: number): string;
  /** The same with all digits that were given. */
  exactly(si: number): string;
}

/** The unit in which the reader's system shows a value of that size. */
export function axisUnit(quantity: QuantityName, largest: number, system: UnitSystem): AxisUnit {
  return unitOf(quantity, show(largest, { quantity, system }).unit, system);
}

/** An axis in a unit that was chosen already. */
export function unitOf(quantity: QuantityName, symbol: string, system: UnitSystem): AxisUnit {
  const { si, offset = 0 } = unitNamed(symbol) ?? { si: 1 };
  return {
    symbol,
    of: (value) => (value - offset) / si,
    text: (value) => spell(Number(value.toPrecision(3)), quantity, system, symbol),
    exactly: (value) => spell(value, quantity, system, symbol),
  };
}

/** Number and unit in one text, with a space that does not break. */
export function spell(si: number, quantity: QuantityName, system: UnitSystem, unit?: string): string {
  const shown = show(si, { quantity, system, unit });
  return shown.unit === '' ? shown.number : `${shown.number}\u00a0${shown.unit}`;
}

/** A frequency with its unit: `2 150 Hz`, as everywhere in sentences. */
export const spellFrequency = (hertz: number, system: UnitSystem): string => spell(hertz, 'frequency', system);

/** A frequency read off a curve, to the two digits that the grid of curves can tell. */
export const spellRoughly = (hertz: number, system: UnitSystem): string =>
  spell(Number(hertz.toPrecision(2)), 'frequency', system);
