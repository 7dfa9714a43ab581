import { zeros } from '../numeric/blocks.ts';
import { solveLoad, type AcousticLoad } from './acoustic-load.ts';
import { applyHighPass } from './high-pass.ts';
import type { LumpedModel } from './lumped-model.ts';

export type { LumpedModel } from './lumped-model.ts';

/** Complex ratios over a list of frequencies; `Re` and `Im` are the parts. */
export interface LumpedSolution {
  /** Pressure in half space over that of the moving mass alone: 1 far above the resonances. */
  readonly pressureRe: Float64Array;
  readonly pressureIm: Float64Array;
  /** Travel over Bl·Cms/(Re + series) times the voltage, its value at 0 Hz in free air. */
  readonly travelRe: Float64Array;
  readonly travelIm: Float64Array;
  /** Volume displaced in port or radiators over Sd times that same travel; empty without one. */
  readonly portRe: Float64Array;
  readonly portIm: Float64Array;
}

type Pair = readonly [Float64Array, Float64Array];

const none: Pair = zeros(2, 0);

/** Travel of the cone over its value at 0 Hz in free air: X = 1/(M·Ze/Rt + S·Re/(Qes·Rt)). */
function solveTravel(
  model: LumpedModel,
  at: Float64Array,
  withCoil: boolean,
  { mechanicalRe, mechanicalIm }: AcousticLoad,
  [travelRe, travelIm]: Pair,
): void {
  const { fs, qes, re, series = 0, coil } = model;
  const total = re + series;
  const damping = re / (qes * total * fs);
  const reactive = withCoil ? (2 * Math.PI * coil) / total : 0;
  const { inductance = 0, across = 1 } = (withCoil ? model.lossyCoil : undefined) ?? {};
  const perAcross = (2 * Math.PI * inductance) / across;
  const lossy = across / total;
  for (let index = 0; index < at.length; index += 1) {
    const f = at[index]!;
    const mRe = mechanicalRe[index]!;
    const mIm = mechanicalIm[index]!;
    let eRe = 1;
    let eIm = f * reactive;
    if (inductance !== 0) {
      const x = perAcross * f;
      const part = (lossy * x) / (1 + x * x);
      eRe += part * x;
      eIm += part;
    }
    const dRe = mRe * eRe - mIm * eIm;
    const dIm = mIm * eRe + mRe * eIm + f * damping;
    const inverse = 1 / (dRe * dRe + dIm * dIm);
    travelRe[index] = dRe * inverse;
    travelIm[index] = -dIm * inverse;
  }
}

/** Multiplies complex values point by point, in place. */
function multiply([re, im]: Pair, [byRe, byIm]: Pair): void {
  for (let index = 0; index < re.length; index += 1) {
    const real = re[index]!;
    const imaginary = im[index]!;
    re[index] = real * byRe[index]! - imaginary * byIm[index]!;
    im[index] = real * byIm[index]! + imaginary * byRe[index]!;
  }
}

/** Pressure −S²·O·X times `scale`, where O is what reaches the room; `to` may be the arrays of the travel themselves. */
function solvePressure(
  { fs }: LumpedModel,
  scale: number,
  at: Float64Array,
  { outRe, outIm }: AcousticLoad,
  [travelRe, travelIm]: Pair,
  [pressureRe, pressureIm]: Pair,
): void {
  const perSquareFs = -scale / (fs * fs);
  for (let index = 0; index < at.length; index += 1) {
    const square = at[index]! * at[index]! * perSquareFs;
    pressureRe[index] = square * travelRe[index]!;
    pressureIm[index] = square * travelIm[index]!;
  }
  if (outRe !== undefined && outIm !== undefined) multiply([pressureRe, pressureIm], [outRe, outIm]);
}

/** What flows through port or radiators: its share of the cone's volume times the travel. */
function solvePort({ flowRe, flowIm }: AcousticLoad, [travelRe, travelIm]: Pair): Pair {
  if (flowRe === undefined || flowIm === undefined) return none;
  const port = [flowRe.slice(), flowIm.slice()] as const;
  multiply(port, [travelRe, travelIm]);
  return port;
}

/**
 * Solves the small-signal circuit: Re and series resistance, motional branch, and the load of the box. With `withCoil`
 * the coil inductance acts on pressure and travel too; without, it is left out, as small-signal theory does. What is not
 * wanted stays empty; what alone is wanted is in the arrays given last, a pressure times `scale`.
 */
export function solveLumped(
  model: LumpedModel,
  at: Float64Array,
  withCoil = false,
  load: AcousticLoad = solveLoad(model, at),
  wanted: 'all' | 'pressure' | 'travel' = 'all',
  cone: Pair = zeros(2, at.length),
  scale = 1,
): LumpedSolution {
  solveTravel(model, at, withCoil, load, cone);
  const travel = wanted === 'pressure' ? none : cone;
  // Where the travel itself is not wanted, the pressure takes its place.
  const pressure = wanted === 'all' ? zeros(2, at.length) : wanted === 'pressure' ? cone : none;
  if (wanted !== 'travel') solvePressure(model, scale, at, load, cone, pressure);
  const port = wanted === 'all' ? solvePort(load, cone) : none;
  if (model.highPass !== undefined) applyHighPass(model.highPass, at, [pressure, travel, port]);
  const [pressureRe, pressureIm] = pressure;
  const [travelRe, travelIm] = travel;
  const [portRe, portIm] = port;
  return { pressureRe, pressureIm, travelRe, travelIm, portRe, portIm };
}
