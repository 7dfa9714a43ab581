import type { QuantityName } from '../quantities.ts';
import type { Driver } from '../values/driver.ts';
import { measured, say, type Sentence } from '../values/say.ts';
import { driverParameters, parameterOf, type DriverParameter, type GivenNumbers } from './parameters.ts';
import { determined, linked, type Linked, type Parameters } from './relations.ts';

/** How far a printed value may lie from what the other printed values give: relative, or in dB for the level. */
const tolerances: readonly (readonly [field: Linked, tolerance: number])[] = [
  ['qts', 0.03],
  ['fs', 0.03],
  ['bl', 0.05],
  ['vas', 0.1],
  ['level', 1.5],
];

const show = (value: number, quantity: QuantityName) => measured(value, quantity);

/** What the other given values make of one of them; `undefined` when they do not determine it. A level is best
 *  computed from the moving mass: printed Vas spreads most. */
export function expected(field: Linked, given: Parameters): number | undefined {
  const others = { ...given, level: undefined };
  if (field !== 'level') return determined(field, others);
  return determined('level', { ...others, vas: undefined }) ?? determined('level', others);
}

/** The level at 2.83 V that the driver's given parameters make; `undefined` when they do not determine it. */
export function computedLevel(driver: Driver): number | undefined {
  const given: Parameters = {};
  for (const field of linked) {
    const value = driver[field];
    if (value !== undefined && !driver.derived.includes(field)) given[field] = value;
  }
  return expected('level', given);
}

/** Contradictions between given values, as sentences to the reader. */
export function contradictions(given: Parameters): Sentence[] {
  return tolerances.flatMap(([field, tolerance]) => {
    const printed = given[field];
    const computed = printed === undefined ? undefined : expected(field, given);
    if (printed === undefined || computed === undefined) return [];
    const gap = field === 'level' ? Math.abs(printed - computed) : Math.abs(printed / computed - 1);
    if (gap <= tolerance) return [];
    const { symbol, quantity } = parameterOf(field);
    return [
      say`${symbol} is given as ${show(printed, quantity)}, but the other values give ${show(computed, quantity)}.`,
    ];
  });
}

const outside = (value: number, [low, high]: readonly [number, number]): boolean => value < low || value > high;

function question(each: DriverParameter, value: number): Sentence {
  const range = each.plausible!;
  const mended = (each.slips ?? []).map((factor) => value * factor).find((guess) => !outside(guess, range));
  const words = say`${each.symbol} of ${show(value, each.quantity)} is not plausible for a loudspeaker driver`;
  return mended === undefined
    ? say`${words}: between ${show(range[0], each.quantity)} and ${show(range[1], each.quantity)} is usual.`
    : say`${words}: did you mean ${show(mended, each.quantity)}?`;
}

/** Given values outside what drivers have, each with a guess at the slip of a unit. */
export function implausible(given: Readonly<GivenNumbers>): Sentence[] {
  const found: Sentence[] = [];
  for (const each of driverParameters) {
    const value = given[each.field];
    if (value === undefined || each.plausible === undefined || (value === 0 && each.mayBeZero)) continue;
    if (outside(value, each.plausible)) found.push(question(each, value));
  }
  return found;
}
