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
  /** Mechanical side S² + S/Qms + 1 + αF, for the motional impedance. */
  readonly mechanicalRe: Float64Array;
  readonly mechanicalIm: Float64Array;
}

const none = zeros(2, 0);

/**
 * Solves the small-signal circuit: Re and series resistance, motional branch, and the load of the box. With `withCoil`
 * the coil inductance acts on pressure and travel too; without, it is left out, as small-signal theory does. What is not
 * wanted stays empty.
 */
export function solveLumped(
  model: LumpedModel,
  at: Float64Array,
  withCoil = false,
  load: AcousticLoad = solveLoad(model, at),
  wanted: 'all' | 'pressure' | 'travel' = 'all',
): LumpedSolution {
  const { fs, qes, re, series = 0, coil, lossyCoil } = model;
  const { mechanicalRe, mechanicalIm, outRe, outIm, flowRe, flowIm } = load;
  const count = at.length;
  const [sounds, moves] = [wanted !== 'travel', wanted !== 'pressure'];
  const flows = wanted === 'all' && flowRe !== undefined && flowIm !== undefined;
  const [pressureRe, pressureIm] = sounds ? zeros(2, count) : none;
  const [travelRe, travelIm] = moves ? zeros(2, count) : none;
  const [portRe, portIm] = flows ? zeros(2, count) : none;
  const total = re + series;
  const damping = re / (qes * total * fs);
  const reactive = withCoil ? (2 * Math.PI * coil) / total : 0;
  const lossy = withCoil ? lossyCoil : undefined;
  const perSquareFs = -1 / (fs * fs);
  for (let index = 0; index < count; index += 1) {
    const f = at[index]!;
    const mRe = mechanicalRe[index]!;
    const mIm = mechanicalIm[index]!;
    // X = 1/(M·Ze/Rt + S·Re/(Qes·Rt)).
    let eRe = 1;
    let eIm = f * reactive;
    if (lossy !== undefined) {
      const x = (2 * Math.PI * f * lossy.inductance) / lossy.across;
      const part = (lossy.across * x) / ((1 + x * x) * total);
      eRe += part * x;
      eIm += part;
    }
    const dRe = mRe * eRe - mIm * eIm;
    const dIm = mIm * eRe + mRe * eIm + f * damping;
    const inverse = 1 / (dRe * dRe + dIm * dIm);
    const xRe = dRe * inverse;
    const xIm = -dIm * inverse;
    if (sounds) {
      const square = f * f * perSquareFs;
      const oRe = outRe === undefined ? 1 : outRe[index]!;
      const oIm = outIm === undefined ? 0 : outIm[index]!;
      pressureRe[index] = square * (oRe * xRe - oIm * xIm);
      pressureIm[index] = square * (oRe * xIm + oIm * xRe);
    }
    if (moves) {
      travelRe[index] = xRe;
      travelIm[index] = xIm;
    }
    if (flows) {
      const uRe = flowRe[index]!;
      const uIm = flowIm[index]!;
      portRe[index] = uRe * xRe - uIm * xIm;
      portIm[index] = uRe * xIm + uIm * xRe;
    }
  }
  if (model.highPass !== undefined) {
    applyHighPass(model.highPass, at, [
      [pressureRe, pressureIm],
      [travelRe, travelIm],
      [portRe, portIm],
    ]);
  }
  return { pressureRe, pressureIm, travelRe, travelIm, portRe, portIm, mechanicalRe, mechanicalIm };
}
