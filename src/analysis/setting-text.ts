import { unitNamed } from '../units/table.ts';
import type { Input, Setting } from './subject-types.ts';

/** What would be typed to set an input, in the unit in which it was typed.
 *  @param digits - Significant digits; all of them where left out. */
export function settingText({ unit }: Pick<Input, 'unit'>, value: Setting, digits?: number): string {
  if (typeof value === 'string') return value;
  const known = unitNamed(unit);
  const number = known ? (value - (known.offset ?? 0)) / known.si : value;
  const written = String(digits === undefined ? number : Number(number.toPrecision(digits)));
  return known ? `${written} ${unit}` : written;
}
