import type { Curve } from '../values/curve.ts';
import { commonBand } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { divided, plus, polar, reciprocal, sizeOf, times, type Complex } from './complex.ts';
import { notWhole } from './impedance.ts';
import type { Wiring } from './wiring.ts';

export interface Solved {
  readonly impedance: Complex;
  /** Volts of each unit for one volt on the whole, by its number from 1. */
  readonly volts: ReadonlyMap<number, Complex>;
}

/** A wiring of known impedances, `z` by number from 1. */
export function solveWiring(wiring: Wiring, z: (unit: number) => Complex): Solved {
  const one: Complex = { re: 1, im: 0 };
  if (wiring.kind === 'unit') return { impedance: z(wiring.unit), volts: new Map([[wiring.unit, one]]) };
  const parts = wiring.parts.map((part) => solveWiring(part, z));
  const zero: Complex = { re: 0, im: 0 };
  const impedance =
    wiring.kind === 'series'
      ? parts.reduce((sum, part) => plus(sum, part.impedance), zero)
      : reciprocal(parts.reduce((sum, part) => plus(sum, reciprocal(part.impedance)), zero));
  const volts = new Map(
    parts.flatMap((part) => {
      const share = wiring.kind === 'series' ? divided(part.impedance, impedance) : one;
      return [...part.volts].map(([unit, own]) => [unit, times(own, share)] as const);
    }),
  );
  return { impedance, volts };
}

/** The share of the real power that a unit takes. */
export function powerShare(solved: Solved, unit: number, z: Complex): number {
  const volts = sizeOf(solved.volts.get(unit)!);
  return (volts ** 2 * reciprocal(z).re) / reciprocal(solved.impedance).re;
}

/** Solves a wiring of impedance curves at every point of the grid, and makes a curve of what `pick` takes from each. */
export function wiredCurve(
  wiring: Wiring,
  curves: readonly Curve[],
  pick: (solved: Solved, z: (unit: number) => Complex) => { readonly y: number; readonly phase?: number },
): Pick<Curve, 'y' | 'phase' | 'from' | 'to'> | Problem {
  const wrong = curves.map((curve) => notWhole(curve, 'curves')).find((problem) => problem !== undefined);
  if (wrong) return wrong;
  const band = commonBand(curves);
  if (band instanceof Problem) return band;
  const count = curves[0]!.y.length;
  const y = new Float64Array(count);
  const phase = new Float64Array(count);
  let hasPhase = true;
  for (let index = 0; index < count; index += 1) {
    const z = (unit: number): Complex => {
      const curve = curves[unit - 1]!;
      return polar(curve.y[index]!, curve.phase![index]!);
    };
    const picked = pick(solveWiring(wiring, z), z);
    y[index] = picked.y;
    phase[index] = picked.phase ?? 0;
    hasPhase &&= picked.phase !== undefined;
  }
  if (!y.every(Number.isFinite))
    return new Problem(say`The loads cancel at some frequency; check that their phases lie within ±90°.`, 'curves');
  return { y, ...(hasPhase && { phase }), ...band };
}
