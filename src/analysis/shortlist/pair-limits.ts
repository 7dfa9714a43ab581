import { soundSpeed } from '../../../functions/air.ts';
import { trebleFloor } from '../../../functions/level/treble.ts';
import { pistonNarrowing } from '../../../functions/radiation/narrowing.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { speak } from '../../units/show.ts';
import { bassOf } from './reach.ts';
import type { PairRules, SubRules } from './types.ts';

/** The ends of one side that a driver brings along by the rule and stretched, in hertz, with the name of each that binds. */
export interface Side {
  readonly at: number;
  readonly stretched: number;
  readonly name: string;
}

/** The limits of a driver above the hand-over: its floors. */
export function floorOf(driver: Driver, rules: PairRules): Side | { readonly why: string } {
  const { fs, sd, xmax } = driver;
  if (fs === undefined || sd === undefined || xmax === undefined || driver.flange === undefined)
    return { why: lacks(driver, ['fs', 'sd', 'xmax', 'flange']) };
  return bindingOf([['resonance', rules.resonance[0] * fs, rules.resonance[1] * fs], travelLimit(sd, xmax, rules)], 1);
}

/** The limits of a driver below the hand-over, spacing apart: its ceilings. */
export function ceilingOf(driver: Driver, rules: PairRules): Side | { readonly why: string } {
  const { sd, breakup } = driver;
  if (sd === undefined || breakup === undefined || driver.flange === undefined)
    return { why: lacks(driver, ['sd', 'breakup', 'flange']) };
  const narrowing = (loss: number): number | Problem =>
    pistonNarrowing.compute({ sd, angle: rules.angle, loss }, context);
  return bindingOf(
    [
      ['narrowing', narrowing(rules.narrowing[0]), narrowing(rules.narrowing[1])],
      ['break-up', rules.breakup[0] * breakup, rules.breakup[1] * breakup],
    ],
    -1,
  );
}

/** The limits of mains above the subs: where their closed box sags, and how far they move. */
export function mainsFloor(driver: Driver, rules: PairRules, { sag }: SubRules): Side | { readonly why: string } {
  const { sd, xmax } = driver;
  if (sd === undefined || xmax === undefined) return { why: lacks(driver, ['sd', 'xmax']) };
  const { volume: _, ...own } = rules;
  const bass = bassOf(driver, 'closed', own);
  if ('why' in bass) return bass;
  return bindingOf([['F3', bass.cutoff / sag[0], bass.cutoff / sag[1]], travelLimit(sd, xmax, rules)], 1);
}

/** The limits of subs below the mains: where the ear finds them, and their first break-up. */
export function subCeiling(driver: Driver, rules: PairRules, { location }: SubRules): Side | { readonly why: string } {
  const { breakup } = driver;
  if (breakup === undefined) return { why: lacks(driver, ['breakup']) };
  return bindingOf(
    [
      ['location', ...location],
      ['break-up', rules.breakup[0] * breakup, rules.breakup[1] * breakup],
    ],
    -1,
  );
}

/** The ceiling that the distance between two flanges sets. */
export const spacingCeiling = (flanges: number, gap: number, wavelengths: number): number =>
  (wavelengths * soundSpeed) / (flanges / 2 + gap);

const context = { quantity: 'ratio' } as const;

const travelLimit = (sd: number, xmax: number, { target, slope, travel: [rule, stretched] }: PairRules): Limit => {
  const at = (share: number): number | Problem =>
    trebleFloor.compute({ sd, xmax, level: target, slope, share }, context);
  return ['travel', at(rule), at(stretched)];
};

type Limit = readonly [name: string, at: number | Problem, stretched: number | Problem];

/** The highest of floors (sense 1), the lowest of ceilings (−1); by the rule and stretched each for itself. */
function bindingOf(limits: readonly Limit[], sense: 1 | -1): Side | { readonly why: string } {
  let side: Side = { at: -sense * Infinity, stretched: -sense * Infinity, name: '' };
  for (const [name, at, stretched] of limits) {
    if (at instanceof Problem) return { why: speak(at.message, 'metric') };
    if (stretched instanceof Problem) return { why: speak(stretched.message, 'metric') };
    const binds = sense * (at - side.at) > 0;
    side = {
      at: binds ? at : side.at,
      name: binds ? name : side.name,
      stretched: sense * (stretched - side.stretched) > 0 ? stretched : side.stretched,
    };
  }
  return side;
}

const words = {
  fs: 'Fs',
  sd: 'Sd',
  xmax: 'Xmax',
  flange: 'flange diameter',
  breakup: 'first break-up',
  level: 'level',
  re: 'Re',
  price: 'price',
} as const;

/** Says which numbers a driver does not have. */
export function lacks(driver: Driver, fields: readonly (keyof typeof words)[]): string {
  const missing = fields.filter((field) => driver[field] === undefined).map((field) => words[field]);
  return `${driver.name} has no ${missing.join(', no ')}: add it to its rows.`;
}
