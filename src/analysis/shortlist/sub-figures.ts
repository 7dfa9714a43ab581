import { subsCount, subsLevel } from '../../../functions/pairing/subs.ts';
import { levelByTravel } from '../../../functions/level/rated.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { lacks } from './pair-limits.ts';
import { bassOf, heatLevelOf, type Bass } from './reach.ts';
import type { BassBox, BassLimit, BoxRules } from './types.ts';

/** What several of a driver give as subs, each with an amplifier of its own. */
export interface SubFigures {
  readonly count: number;
  /** The lowest note at the level that is wanted, in hertz. */
  readonly reach: number;
  /** What ends it there. */
  readonly end: BassLimit;
  /** Of all together, from the lowest note asked to the highest. */
  readonly most: number;
  /** Of all together for 2.83 V each. */
  readonly level: number;
  readonly bass: Bass;
}

/** The level that is wanted of subs together, and from which note to which. */
export interface SubsWanted {
  readonly level: number;
  readonly lowest: number;
  readonly highest: number;
}

const context = { quantity: 'ratio' } as const;
/** So many notes of the band are looked at, and so many an octave below it, for so many octaves. */
const NOTES = 48;
const OCTAVES_BELOW = 4;

/** How many of a driver it takes to play a level down to a note, by travel, heat and the air in the port, or why that cannot be told. */
export function subFigures(
  driver: Driver,
  wanted: SubsWanted,
  box: BassBox,
  rules: BoxRules,
): SubFigures | { readonly why: string } {
  const { sd, xmax, level } = driver;
  if (sd === undefined || xmax === undefined || level === undefined)
    return { why: lacks(driver, ['sd', 'xmax', 'level']) };
  const bass = bassOf(driver, box, rules);
  const heat = heatLevelOf(driver);
  if ('why' in bass) return bass;
  if (typeof heat !== 'number') return heat;
  const limits = (note: number): Readonly<Record<BassLimit, number>> => ({
    travel: moved(sd, xmax, note) + bass.gain(note),
    heat: heat + bass.response(note),
    port: byPort(bass, rules, note),
  });
  const most = (note: number): number => Math.min(...Object.values(limits(note)));
  const { lowest } = wanted;
  const top = Math.log2(Math.max(1, wanted.highest / lowest));
  const band = Array.from({ length: NOTES + 1 }, (_, index) => most(lowest * 2 ** ((top * index) / NOTES)));
  const one = Math.min(...band);
  const count = subsCount.compute({ one, target: wanted.level, lift: 0 }, context) as number;
  const together = (each: number): number =>
    subsLevel.compute({ one: each, count, drive: 'same volts' }, context) as number;
  const spare = (note: number): number => together(most(note)) - wanted.level;
  const reach = lowestNote(spare, lowest);
  const ends = Object.entries(limits(reach)) as [BassLimit, number][];
  const [end] = ends.reduce((least, each) => (each[1] < least[1] ? each : least));
  return { count, reach, end, most: together(one), level: together(level), bass };
}

/** Where what is to spare is used up, going down from a note that has some. */
function lowestNote(spare: (note: number) => number, from: number): number {
  let above = spare(from);
  for (let step = 1; step <= OCTAVES_BELOW * NOTES; step++) {
    const note = from * 2 ** (-step / NOTES);
    const below = spare(note);
    if (below < 0) return note * 2 ** (-below / (above - below) / NOTES);
    above = below;
  }
  return from * 2 ** -OCTAVES_BELOW;
}

/** The level in half space of an area that moves to both sides by so much. */
const moved = (sd: number, xmax: number, frequency: number): number =>
  levelByTravel.compute({ sd, xmax, frequency }, context) as number;

/** The level at which the air in the port is as fast as the rules allow: all that leaves the box is (f/fb)² of what leaves the port. */
function byPort({ tuning }: Bass, { port, air }: BoxRules, note: number): number {
  if (tuning === undefined || port === undefined) return Infinity;
  return moved(port, air / (2 * Math.PI * note), note) + 40 * Math.log10(note / tuning);
}
