import { alignmentFor } from '../../../functions/enclosure/aligned.ts';
import { levelByPower, levelToWatt } from '../../../functions/level/rated.ts';
import { bracketedRoot } from '../../../functions/numeric/root.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { show, speak } from '../../units/show.ts';
import type { BassBox, BoxRules } from './types.ts';

/** What a box makes of the bass of a driver, by the volumes that cone and port move, coil inductance left out. */
export interface Bass {
  /** Where it is 3 dB down, for good. */
  readonly cutoff: number;
  /** Net volume, where the driver has a Vas. */
  readonly volume?: number;
  readonly tuning?: number;
  /** Response over the flat level, in dB. */
  response(frequency: number): number;
  /** All that leaves the box over what the cone moves, in dB. */
  gain(frequency: number): number;
}

interface Refusal {
  readonly why: string;
}

/** A driver in a box that suits it, or in that of the rules, or why there is none: closed with the Qtc of the rules, or vented
 *  with the flattest response that its Qts allows. Without a volume of one's own both follow from fs and Q alone. */
export const bassOf = (driver: Driver, box: BassBox, rules: BoxRules): Bass | Refusal =>
  box === 'closed' ? closedBass(driver, rules) : ventedBass(driver, rules);

const HALF_POWER = 10 * Math.log10(1 / 2);

/** From Small (1972): y⁴/((1 − y²)² + y²/Qtc²), y over the resonance in the box. */
function closedBass({ name, fs, qts, vas }: Driver, { qtc, volume }: BoxRules): Bass | Refusal {
  if (fs === undefined || qts === undefined)
    return { why: `${name} has no ${fs === undefined ? 'Fs' : 'Qts'}: add it to its rows.` };
  if (volume !== undefined && vas === undefined) return { why: `${name} has no Vas: add it to its rows.` };
  if (volume === undefined && qts >= qtc)
    return { why: `${name} has a Qts of ${shown(qts)}: no closed box brings it down to ${shown(qtc)}.` };
  const total = volume === undefined ? qtc : qts * Math.sqrt(1 + (vas ?? 0) / volume);
  const resonance = (fs * total) / qts;
  const half = 1 - 1 / (2 * total ** 2);
  const litres = volume ?? (vas === undefined ? undefined : vas / ((total / qts) ** 2 - 1));
  return {
    cutoff: resonance * Math.sqrt(Math.hypot(half, 1) - half),
    ...(litres !== undefined && { volume: litres }),
    response: (frequency) => {
      const square = (frequency / resonance) ** 2;
      return 10 * Math.log10(square ** 2 / ((1 - square) ** 2 + square / total ** 2));
    },
    gain: () => 0,
  };
}

/** From Small (1973): y⁴/(y⁴ + a1·y³ + a2·y² + a3·y + 1), y over the root of fs and tuning. */
function ventedBass(driver: Driver, rules: BoxRules): Bass | Refusal {
  const box = ventedBox(driver, rules);
  if ('why' in box) return box;
  const { fs, qts, vas, volume, tuning } = box;
  const { leakage } = rules;
  const h = tuning / fs;
  const middle = fs * Math.sqrt(h);
  const a1 = 1 / (qts * Math.sqrt(h)) + Math.sqrt(h) / leakage;
  const a2 = (vas / volume + 1 + h ** 2) / h + 1 / (leakage * qts);
  const a3 = Math.sqrt(h) / qts + 1 / (leakage * Math.sqrt(h));
  const response = (frequency: number): number => {
    const y = frequency / middle;
    return 10 * Math.log10(y ** 8 / ((1 - a2 * y ** 2 + y ** 4) ** 2 + (a3 * y - a1 * y ** 3) ** 2));
  };
  const missing = (octaves: number): number => response(middle * 2 ** octaves) - HALF_POWER;
  let below = OCTAVES;
  while (below > -OCTAVES && missing(below) >= 0) below -= STEP;
  const cutoff = bracketedRoot(missing, below, below + STEP);
  if (cutoff === undefined) return { why: `${driver.name} has no vented box that is 3 dB down in the bass.` };
  return {
    cutoff: middle * 2 ** cutoff,
    volume,
    tuning,
    response,
    gain: (frequency) => {
      const square = (frequency / tuning) ** 2;
      return 10 * Math.log10(square ** 2 / ((1 - square) ** 2 + square / leakage ** 2));
    },
  };
}

/** So far from its middle, and so finely, the end of the bass is looked for. */
const OCTAVES = 4;
const STEP = 1 / 8;

/** Volume and tuning of one's own, or those of the flattest response that the Qts allows. */
function ventedBox(
  driver: Driver,
  { leakage, volume, tuning }: BoxRules,
): Readonly<Record<'fs' | 'qts' | 'vas' | 'volume' | 'tuning', number>> | Refusal {
  const { name, fs, qts, vas } = driver;
  if (volume !== undefined && tuning !== undefined) {
    if (fs !== undefined && qts !== undefined && vas !== undefined) return { fs, qts, vas, volume, tuning };
    return { why: `${name} needs Fs, Qts and Vas for a box: add them to its rows.` };
  }
  const result = alignmentFor(driver, 'flattest', leakage, 0);
  if (result instanceof Problem) return { why: speak(result.message, 'metric') };
  const { known, found } = result;
  return {
    fs: known.fs,
    qts: found.qts,
    vas: known.vas,
    volume: volume ?? known.vas / found.ratio,
    tuning: tuning ?? known.fs * found.tuning,
  };
}

/** What the heat limit of a driver allows at 1 m, or why that is not known. A hot coil loses 1 to 3 dB of it. */
export function heatLevelOf({ name, level, nominal, pe }: Driver): number | Refusal {
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
