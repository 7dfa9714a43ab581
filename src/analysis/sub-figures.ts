import { subsCount, subsLevel } from '../../functions/pairing/subs.ts';
import { levelByTravel } from '../../functions/level/rated.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { heatLevelOf, reachOf } from './reach.ts';
import { lacks } from './pair-limits.ts';

/** What several of a driver give as subs, in closed boxes with a Qtc of 0.707 and an amplifier for each. */
export interface SubFigures {
  readonly count: number;
  /** The lowest note at the level that is wanted, in hertz. */
  readonly reach: number;
  /** Of all together at the lowest note asked. */
  readonly most: number;
  /** Of all together for 2.83 V each. */
  readonly level: number;
}

const context = { quantity: 'ratio' } as const;

/** How many of a driver it takes to play a level down to a note, by travel and heat, or why that cannot be told. */
export function subFigures(driver: Driver, wanted: number, note: number): SubFigures | { readonly why: string } {
  const { sd, xmax, level } = driver;
  if (sd === undefined || xmax === undefined || level === undefined)
    return { why: lacks(driver, ['sd', 'xmax', 'level']) };
  const cutoff = reachOf(driver, 'closed');
  const heat = heatLevelOf(driver);
  if (typeof cutoff !== 'number') return cutoff;
  if (typeof heat !== 'number') return heat;
  const travel = levelByTravel.compute({ sd, xmax, frequency: note }, context) as number;
  // A closed box with a Qtc of 0.707 falls as a Butterworth high-pass of second order.
  const one = Math.min(travel, heat - 10 * Math.log10(1 + (cutoff / note) ** 4));
  const count = subsCount.compute({ one, target: wanted, lift: 0 }, context) as number;
  const together = (level: number): number =>
    subsLevel.compute({ one: level, count, drive: 'same volts' }, context) as number;
  const byTravel = note * 10 ** ((wanted - together(travel)) / 40);
  const byHeat = cutoff / (10 ** ((together(heat) - wanted) / 10) - 1) ** (1 / 4);
  return { count, reach: Math.max(byTravel, byHeat), most: together(one), level: together(level) };
}
