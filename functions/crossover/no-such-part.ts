import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';

/** Refuses a place that no part of a filter has; `noun` for one of them. */
export function noSuchPart(filter: string, count: number, noun: string, place: number): Problem {
  const counted = count === 0 ? `no ${noun}` : `${String(count)} ${noun}${count === 1 ? '' : 's'}`;
  const remedy =
    count === 0
      ? 'ask for another part or another filter.'
      : `there is no number ${String(place)}: ${count === 1 ? 'give 1' : `give a whole number from 1 to ${String(count)}`}.`;
  return new Problem(say`${filter} has ${counted}${count === 0 ? '; ' : ', so '}${remedy}`, 'place');
}
