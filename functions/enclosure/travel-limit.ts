import { define } from '../define.ts';
import { largestBetween } from '../numeric/largest.ts';
import { bracketedRoot } from '../numeric/root.ts';
import type { Box } from '../values/box.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { box, demoClosed, volts } from './parameters.ts';
import { travelCurve, travelFunction } from './travel-curve.ts';
import { usual } from '../usual.ts';

const lowest = frequencies[0]!;
const highest = frequencies.at(-1)!;

const from = {
  quantity: 'frequency',
  min: lowest,
  max: highest,
  default: 20,
  typical: [10, 2000],
  summary: 'the lowest frequency that is played',
} as const;

const ohms = {
  ...usual.ohms,
  typical: [2, 32],
  summary: 'the ohms into which the power is counted, usually the nominal ohms',
} as const;

interface Limit {
  /** Drive at which the cone just reaches Xmax, V rms. */
  readonly volts: number;
  /** Where it does. */
  readonly frequency: number;
}

/** The drive at which travel reaches Xmax somewhere from a frequency up. */
function travelLimit(of: Box, lowestPlayed: number): Limit | Problem {
  const { xmax } = of.driver;
  if (xmax === undefined)
    return new Problem(say`The driver needs its one-way travel Xmax: add that row to its data.`, 'box');
  const curve = travelCurve(of, 1);
  if (curve instanceof Problem) return curve;
  const travel = travelFunction(of, 1);
  if (travel instanceof Problem) return travel;
  let at = lowestPlayed;
  let most = travel(lowestPlayed);
  let place = -1;
  for (let index = 0; index < curve.length; index += 1) {
    if (frequencies[index]! < lowestPlayed || curve[index]! <= most) continue;
    most = curve[index]!;
    at = frequencies[index]!;
    place = index;
  }
  if (place >= 0) {
    const before = Math.max(frequencies[place - 1] ?? lowestPlayed, lowestPlayed);
    at = largestBetween(travel, before, frequencies[place + 1] ?? highest);
    most = travel(at);
  }
  return { volts: xmax / most, frequency: at };
}

const source = { source: 'small1973vented', at: 'cone displacement function' } as const;

export const boxTravelVolts = define({
  name: 'BOX.TRAVEL_VOLTS',
  summary: 'The largest sine voltage at which the cone stays within Xmax from a frequency up.',
  parameters: { box, from },
  returns: { quantity: 'voltage', summary: 'drive, V rms' },
  source,
  example: { formula: `=BOX.TRAVEL_VOLTS(${demoClosed}, "20 Hz")`, gives: 9.3 },
  compute: (given) => {
    const limit = travelLimit(given.box, given.from);
    return limit instanceof Problem ? limit : limit.volts;
  },
});

export const boxTravelPower = define({
  name: 'BOX.TRAVEL_POWER',
  summary: 'The largest power at which the cone stays within Xmax from a frequency up, counted as volts² over ohms.',
  parameters: { box, ohms, from },
  returns: { quantity: 'power', summary: 'power' },
  source,
  example: { formula: `=BOX.TRAVEL_POWER(${demoClosed}, "8 ohm", "20 Hz")`, gives: 10.9 },
  remarks: 'In the bass it is often far below the thermal limit, which is the one that is printed.',
  compute: (given) => {
    const limit = travelLimit(given.box, given.from);
    return limit instanceof Problem ? limit : limit.volts ** 2 / given.ohms;
  },
});

export const boxTravelPowerAt = define({
  name: 'BOX.TRAVEL_POWER_AT',
  summary: 'The frequency at which travel first reaches Xmax as the drive rises.',
  parameters: { box, ohms, from },
  returns: { quantity: 'frequency', summary: 'frequency' },
  source,
  example: {
    formula:
      '=BOX.TRAVEL_POWER_AT(VENTED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH"), "22.3 L", "39.6 Hz"), "8 ohm", "39.6 Hz")',
    gives: 58,
  },
  compute: (given) => {
    const limit = travelLimit(given.box, given.from);
    return limit instanceof Problem ? limit : limit.frequency;
  },
});

export const boxTravelLimit = define({
  name: 'BOX.TRAVEL_LIMIT',
  summary: 'The frequency below which travel can exceed Xmax at a drive voltage.',
  parameters: { box, volts },
  returns: { quantity: 'frequency', summary: 'highest frequency at which travel exceeds Xmax' },
  source,
  example: { formula: `=BOX.TRAVEL_LIMIT(${demoClosed}, "20 V")`, gives: 98 },
  remarks: 'Gives 10 Hz, the lowest frequency of every curve, where the travel stays within Xmax throughout.',
  compute: (given) => {
    const { xmax } = given.box.driver;
    if (xmax === undefined)
      return new Problem(say`The driver needs its one-way travel Xmax: add that row to its data.`, 'box');
    const curve = travelCurve(given.box, given.volts);
    if (curve instanceof Problem) return curve;
    const travel = travelFunction(given.box, given.volts);
    if (travel instanceof Problem) return travel;
    const last = curve.findLastIndex((y) => y > xmax);
    if (last < 0) return lowest;
    const next = frequencies[last + 1];
    if (next === undefined) {
      return new Problem(
        say`Travel exceeds Xmax at every frequency up to ${measured(highest, 'frequency')}: lower the voltage.`,
        'volts',
      );
    }
    return bracketedRoot((f) => travel(f) - xmax, frequencies[last]!, next) ?? frequencies[last]!;
  },
});
