import type { Driver } from '../values/driver.ts';
import type { GivenNumbers, NumberField } from './parameters.ts';

/** A driver with some of its numbers multiplied; what it lacks stays absent. The level changes
 *  by so many dB, the total Q follows the electrical one. */
export function scaled(
  driver: Driver,
  name: string,
  factors: { readonly [K in NumberField]?: number },
  levelChange: number,
): Driver {
  const numbers: GivenNumbers = {};
  for (const [field, factor] of Object.entries(factors) as [NumberField, number][]) {
    const value = driver[field];
    if (value !== undefined) numbers[field] = value * factor;
  }
  const { qms } = driver;
  const qes = numbers.qes ?? driver.qes;
  if (qms !== undefined && qes !== undefined && factors.qes !== undefined) numbers.qts = 1 / (1 / qms + 1 / qes);
  if (driver.level !== undefined) numbers.level = driver.level + levelChange;
  return { ...driver, name, ...numbers };
}
