import type { Driver } from '../values/driver.ts';
import { expected } from './audit.ts';
import { linked, type Linked, type Parameters } from './relations.ts';

/** How much printed values usually spread, relative, or in dB for the level. Common practice, no source. */
export const spreads: Readonly<Record<Linked, number>> = {
  fs: 0.03,
  qms: 0.1,
  qes: 0.05,
  qts: 0.03,
  vas: 0.1,
  re: 0.03,
  sd: 0.04,
  mms: 0.04,
  cms: 0.1,
  rms: 0.1,
  bl: 0.05,
  level: 1.5,
};

/** What the reader gave of the linked parameters, not what was computed. */
export function givenOf(driver: Driver): Parameters {
  const given: Parameters = {};
  for (const field of linked) {
    const value = driver[field];
    if (value !== undefined && !driver.derived.includes(field)) given[field] = value;
  }
  return given;
}

/** Printed over expected, in spreads: ln of the ratio over the usual spread, or dB over it. Positive when too large. */
export const gapOf = (field: Linked, printed: number, computed: number): number =>
  (field === 'level' ? printed - computed : Math.log(printed / computed)) / spreads[field];

function without(given: Parameters, field: Linked): Parameters {
  const rest: Parameters = { ...given };
  delete rest[field];
  return rest;
}

/** The value of each relation that is computed and rounded from the others where a datasheet is made: blamed first. */
const dependents: readonly Linked[] = ['qts', 'fs', 'bl', 'vas', 'rms', 'level'];

/** How many relations are off by more than `limit` spreads, and by how many squared spreads all together. */
function brokenIn(given: Parameters, limit = 1): { readonly count: number; readonly sum: number } {
  let count = 0;
  let sum = 0;
  for (const field of dependents) {
    const printed = given[field];
    const computed = printed === undefined ? undefined : expected(field, given);
    if (printed === undefined || computed === undefined) continue;
    const gap = Math.abs(gapOf(field, printed, computed));
    if (gap > limit) count += 1;
    sum += gap ** 2;
  }
  return { count, sum };
}

export interface Culprit {
  readonly field: Linked;
  readonly printed: number;
  /** What the values that agree with one another make of it. */
  readonly computed: number;
}

/**
 * Lower is likelier: relations still broken without it, then whether it is no dependent, then the squared spreads left.
 * What is measured first (Fs, Sd, Mms, Qes) must mend the others well, within half a spread, to be blamed for them.
 */
const costOf = (field: Linked, rest: Parameters): readonly number[] => {
  const dependent = dependents.includes(field);
  const { count, sum } = brokenIn(without(rest, field), dependent ? 1 : 0.5);
  return [count, dependent ? 0 : 1, sum];
};

function lower(one: readonly number[], other: readonly number[]): boolean {
  const place = one.findIndex((value, index) => value !== other[index]);
  return place >= 0 && one[place]! < other[place]!;
}

/**
 * The printed values that fit least, likeliest first: again and again the one without which most relations among the
 * others hold, until all do. Of values whose absence mends as many, the one is blamed that a datasheet computes
 * from the rest.
 */
export function culprits(given: Parameters): readonly Culprit[] {
  const found: Culprit[] = [];
  let rest = given;
  while (brokenIn(rest).count > 0) {
    let best: { readonly culprit: Culprit; readonly cost: readonly number[] } | undefined;
    for (const field of linked) {
      const printed = rest[field];
      const computed = printed === undefined ? undefined : expected(field, rest);
      if (printed === undefined || computed === undefined) continue;
      const cost = costOf(field, rest);
      if (best === undefined || lower(cost, best.cost)) best = { culprit: { field, printed, computed }, cost };
    }
    if (best === undefined) break;
    found.push(best.culprit);
    rest = without(rest, best.culprit.field);
  }
  // Against all that is left in the end, which agrees; taken out one by one they were still judged by the next.
  const sound = found.reduce<Parameters>((rest, { field }) => without(rest, field), given);
  return found.map((each) => ({
    ...each,
    computed: expected(each.field, { ...sound, [each.field]: each.printed }) ?? each.computed,
  }));
}
