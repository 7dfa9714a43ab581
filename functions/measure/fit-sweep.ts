import { polar, type Complex } from '../electrical/complex.ts';
import { lossyCoil } from '../electrical/voice-coil.ts';
import { leastSquares } from '../numeric/least-squares.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Measured } from './read-table.ts';

export interface Parameters {
  readonly re: number;
  readonly fs: number;
  readonly qms: number;
  readonly qes: number;
  /** Inductance at 1 kHz, and the exponent of the frequency with which it loses. */
  readonly le: number;
  readonly exponent: number;
}

export interface SweepFit {
  readonly found: Parameters;
  /** One standard deviation each; 0 for a resistance that was given. */
  readonly errors: Parameters;
  /** Root mean square deviation as a share of the ohms. */
  readonly residual: number;
}

/** The impedance of a driver in free air with a lossy voice coil. */
export function driverImpedanceAt(of: Parameters, frequency: number): Complex {
  const s = frequency / of.fs;
  const coil = lossyCoil(of.le, of.exponent, 1000)(frequency);
  const real = 1 - s * s;
  const imaginary = s / of.qms;
  const motional = ((of.re / of.qes) * s) / (real * real + imaginary * imaginary);
  return { re: of.re + motional * imaginary + coil.re, im: motional * real + coil.im };
}

export interface Peak {
  readonly frequency: number;
  readonly ohms: number;
  /** Where the ohms pass √(Re·Zmax) below and above, where the sweep shows it. */
  readonly below?: number;
  readonly above?: number;
}

/** Where a line from one point to the next passes a value, straight in log f. */
function passes({ frequency, value }: Measured, from: number, to: number, level: number): number {
  const share = (level - value[from]!) / (value[to]! - value[from]!);
  return frequency[from]! * (frequency[to]! / frequency[from]!) ** share;
}

/** The least of each value and all that follow it. */
function leastFrom(values: readonly number[]): readonly number[] {
  const least = [...values];
  for (let at = least.length - 2; at >= 0; at -= 1) least[at] = Math.min(least[at]!, least[at + 1]!);
  return least;
}

/** The most prominent hump of a sweep; the rise of the voice coil at its end is none. */
export function peakOf(sweep: Measured, re?: number): Peak | Problem {
  const { value, frequency } = sweep;
  let best = -1;
  let prominence = 0;
  const after = leastFrom(value);
  let before = Infinity;
  for (let at = 1; at < value.length - 1; at += 1) {
    before = Math.min(before, value[at - 1]!);
    const here = value[at]! - Math.max(before, after[at + 1]!);
    if (here > prominence) [best, prominence] = [at, here];
  }
  if (best < 0)
    return new Problem(
      say`The sweep shows no hump of a resonance; sweep from well below it to well above, in free air.`,
      'sweep',
    );
  const ohms = value[best]!;
  const level = Math.sqrt((re ?? after[0]!) * ohms);
  let low = best;
  while (low > 0 && value[low]! > level) low -= 1;
  let high = best;
  while (high < value.length - 1 && value[high]! > level) high += 1;
  return {
    frequency: frequency[best]!,
    ohms,
    ...(value[low]! <= level && { below: passes(sweep, low, low + 1, level) }),
    ...(value[high]! <= level && { above: passes(sweep, high - 1, high, level) }),
  };
}

/** Above 1 a coil would gain; a little room lets an ideal one lie inside. */
const mostExponent = 1.2;
const logistic = (t: number): number => mostExponent / (1 + Math.exp(-t));

function start(sweep: Measured, re: number | undefined): Parameters | Problem {
  const peak = peakOf(sweep, re);
  if (peak instanceof Problem) return peak;
  const resistance = re ?? leastFrom(sweep.value)[0]! * 0.97;
  const ratio = Math.max(peak.ohms / resistance, 1.05);
  const width = (peak.above ?? peak.frequency * 1.5) - (peak.below ?? peak.frequency / 1.5);
  const qms = (peak.frequency * Math.sqrt(ratio)) / width;
  const last = sweep.value.length - 1;
  const reactance = Math.sqrt(Math.max(sweep.value[last]! ** 2 - resistance ** 2, (0.05 * resistance) ** 2));
  const exponent = 0.75;
  const atEnd = reactance / (2 * Math.PI * sweep.frequency[last]!);
  const le = atEnd * (sweep.frequency[last]! / 1000) ** (1 - exponent);
  return { re: resistance, fs: peak.frequency, qms, qes: qms / (ratio - 1), le, exponent };
}

/** Parameters from a whole sweep by least squares: of the complex ohms where it has phases, of their magnitude elsewhere,
 *  each point as a share of its own ohms. A resistance that is given is held. */
export function fitSweep(sweep: Measured, re: number | undefined): SweepFit | Problem {
  if (sweep.value.some((ohms) => !(ohms > 0)))
    return new Problem(say`An impedance must be above 0 Ω in every line; correct the sweep.`, 'sweep');
  if (sweep.value.length < 12)
    return new Problem(say`The sweep has ${String(sweep.value.length)} points; a fit wants at least 12.`, 'sweep');
  const first = start(sweep, re);
  if (first instanceof Problem) return first;
  const read = (values: readonly number[]): Parameters => ({
    fs: Math.exp(values[0]!),
    qms: Math.exp(values[1]!),
    qes: Math.exp(values[2]!),
    le: Math.exp(values[3]!),
    exponent: logistic(values[4]!),
    re: re ?? Math.exp(values[5]!),
  });
  const targets = sweep.value.map((ohms, index) => polar(ohms, ((sweep.degrees?.[index] ?? 0) * Math.PI) / 180));
  const residuals = (values: readonly number[]): readonly number[] => {
    const of = read(values);
    return sweep.frequency.flatMap((frequency, index) => {
      const z = driverImpedanceAt(of, frequency);
      const ohms = sweep.value[index]!;
      if (!sweep.degrees) return [Math.log(Math.hypot(z.re, z.im) / ohms)];
      const target = targets[index]!;
      return [(z.re - target.re) / ohms, (z.im - target.im) / ohms];
    });
  };
  const begin = [first.fs, first.qms, first.qes, first.le].map(Math.log);
  const turned = -Math.log(mostExponent / first.exponent - 1);
  const fit = leastSquares(residuals, [...begin, turned, ...(re === undefined ? [Math.log(first.re)] : [])]);
  const failed = new Problem(
    say`No driver in free air has such an impedance; look at the sweep for a resonance of the mounting, a slip of units or a wrong resistor.`,
    'sweep',
  );
  if (!fit || !fit.hasConverged) return failed;
  const found = read(fit.values);
  const share = (index: number): number => fit.errors[index]!;
  if (![...Object.values(found), ...fit.errors].every(Number.isFinite) || fit.residual > 0.5) return failed;
  return {
    found,
    errors: {
      fs: found.fs * share(0),
      qms: found.qms * share(1),
      qes: found.qes * share(2),
      le: found.le * share(3),
      exponent: found.exponent * (1 - found.exponent / mostExponent) * share(4),
      re: re === undefined ? found.re * share(5) : 0,
    },
    residual: fit.residual,
  };
}
