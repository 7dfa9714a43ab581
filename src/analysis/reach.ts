import { alignmentFor } from '../../functions/enclosure/aligned.ts';
import { levelByPower, levelToWatt } from '../../functions/level/rated.ts';
import { bracketedRoot } from '../../functions/numeric/root.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { Problem } from '../../functions/values/problem.ts';
import { show, speak } from '../units/show.ts';
import type { BassBox } from './shortlist-types.ts';

/** Losses of the vented box, as the sheets take them. */
const LEAKAGE_Q = 7;

/** Where a driver is 3 dB down in a box that suits it, or why there is none: closed with a Qtc of 0.707, or vented with the
 *  flattest response that its Qts allows. Both follow from fs and Q alone; the volume is what it takes. */
export function reachOf(driver: Driver, box: BassBox): number | { readonly why: string } {
  return box === 'closed' ? closedReach(driver) : ventedReach(driver);
}

function closedReach({ name, fs, qts }: Driver): number | { readonly why: string } {
  if (fs === undefined || qts === undefined)
    return { why: `${name} has no ${fs === undefined ? 'Fs' : 'Qts'}: add it to its rows.` };
  if (qts >= Math.SQRT1_2) return { why: `${name} has a Qts of ${shown(qts)}: no closed box brings it down to 0.707.` };
  return (fs * Math.SQRT1_2) / qts;
}

/** From Small (1973): the response of the box is y⁴/(y⁴ + a1·y³ + a2·y² + a3·y + 1), y over the root of fs and tuning. */
function ventedReach(driver: Driver): number | { readonly why: string } {
  const result = alignmentFor(driver, 'flattest', LEAKAGE_Q, 0);
  if (result instanceof Problem) return { why: speak(result.message, 'metric') };
  const { known, found } = result;
  const { ratio, tuning: h, qts } = found;
  const a1 = 1 / (qts * Math.sqrt(h)) + Math.sqrt(h) / LEAKAGE_Q;
  const a2 = (ratio + 1 + h ** 2) / h + 1 / (LEAKAGE_Q * qts);
  const a3 = Math.sqrt(h) / qts + 1 / (LEAKAGE_Q * Math.sqrt(h));
  const above = (y: number): number => (1 - a2 * y ** 2 + y ** 4) ** 2 + (a3 * y - a1 * y ** 3) ** 2 - 2 * y ** 8;
  const y = bracketedRoot(above, 0.05, 20);
  return y === undefined
    ? { why: `${driver.name} has no vented box that is 3 dB down in the bass.` }
    : y * known.fs * Math.sqrt(h);
}

/** What the heat limit of a driver allows at 1 m, or why that is not known. A hot coil loses 1 to 3 dB of it. */
export function heatLevelOf({ name, level, nominal, pe }: Driver): number | { readonly why: string } {
  if (level === undefined || nominal === undefined || pe === undefined) {
    const missing = level === undefined ? 'level' : nominal === undefined ? 'nominal ohms' : 'heat limit Pe';
    return { why: `${name} has no ${missing}: add it to its rows.` };
  }
  const context = { quantity: 'level' } as const;
  const forWatt = levelToWatt.compute({ level, ohms: nominal }, context);
  return forWatt instanceof Problem
    ? { why: speak(forWatt.message, 'metric') }
    : (levelByPower.compute({ level: forWatt, power: pe }, context) as number);
}

const shown = (value: number): string => show(value, { quantity: 'ratio', system: 'metric' }).number;
