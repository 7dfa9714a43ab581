import type { Driver } from '../values/driver.ts';
import type { Sentence } from '../values/say.ts';
import { contradictions, implausible } from './audit.ts';
import type { GivenNumbers } from './parameters.ts';
import { complete } from './relations.ts';

/** A driver from what is known of it: the missing parameters computed, contradictions and odd values questioned.
 *  `level` must be at 2.83 V already; `doubts` are kept and come first. */
export function completeDriver(
  name: string,
  given: GivenNumbers,
  levelBasis?: string,
  doubts: readonly Sentence[] = [],
): Driver {
  const { known: numbers, derived } = complete(given);
  const basis =
    given.level !== undefined ? levelBasis : numbers.level === undefined ? undefined : 'from the parameters';
  return {
    kind: 'driver',
    name,
    ...numbers,
    ...(basis === undefined ? {} : { levelBasis: basis }),
    derived,
    doubts: [...doubts, ...contradictions(given), ...implausible(given)],
  };
}
