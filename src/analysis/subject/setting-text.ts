import { unitNamed } from '../../units/table.ts';
import type { Input, Setting } from './types.ts';

/** A value as the number that is typed with the unit of an input. */
export function numberIn({ unit }: Pick<Input, 'unit'>, value: number): number {
  const known = unitNamed(unit);
  return known ? (value - (known.offset ?? 0)) / known.si : value;
}

/** What would be typed to set an input, in the unit in which it was typed.
 *  @param digits - Significant digits; all of them where left out. */
export function settingText({ unit }: Pick<Input, 'unit'>, value: Setting, digits?: number): string {
  if (typeof value === 'string') return value;
  const number = numberIn({ unit }, value);
  const written = String(digits === undefined ? number : Number(number.toPrecision(digits)));
  return unitNamed(unit) ? `${written} ${unit}` : written;
}
