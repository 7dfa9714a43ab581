import type { HighPass } from '../values/box.ts';
import { applyHighPass } from './high-pass.ts';

/** A driver on its acoustic load, by ratios: all that the small-signal circuit needs. SI. */
export interface LumpedModel {
  readonly style: 'free' | 'closed' | 'vented';
  readonly fs: number;
  readonly qms: number;
  readonly qes: number;
  readonly re: number;
  /** Voice-coil inductance, in series with Re. */
  readonly coil: number;
  /** Series resistance ahead of the voice coil; 0 without. */
  readonly series?: number;
  /** Vas over the apparent volume; 0 in free air. */
  readonly ratio?: number;
  /** The frequency at which the loss Qs hold: the port tuning or the closed-box resonance. */
  readonly lossFrequency?: number;
  readonly leakageQ?: number;
  readonly absorptionQ?: number;
  readonly portQ?: number;
  readonly highPass?: HighPass | undefined;
}

/** Complex ratios over a list of frequencies; `Re` and `Im` are the parts. */
export interface LumpedSolution {
  /** Pressure in half space over that of the moving mass alone: 1 far above the resonances. */
  readonly pressureRe: Float64Array;
  readonly pressureIm: Float64Array;
  /** Travel over Bl·Cms/(Re + series) times the voltage, its value at 0 Hz in free air. */
  readonly travelRe: Float64Array;
  readonly travelIm: Float64Array;
  /** Volume displaced in the port over Sd times that same travel; empty without a port. */
  readonly portRe: Float64Array;
  readonly portIm: Float64Array;
  /** Mechanical side S² + S/Qms + 1 + αF, for the motional impedance. */
  readonly mechanicalRe: Float64Array;
  readonly mechanicalIm: Float64Array;
}

/**
 * Solves the small-signal circuit: Re and series resistance, motional branch, and the load of a box with absorption in
 * series with its compliance, a leak across it and a port with losses. With `withCoil` the coil inductance acts on
 * pressure and travel too; without, it is left out, as small-signal theory does.
 */
export function solveLumped(model: LumpedModel, at: Float64Array, withCoil = false): LumpedSolution {
  const { fs, qms, qes, re, series = 0, ratio = 0, lossFrequency = fs } = model;
  const { leakageQ = Infinity, absorptionQ = Infinity, portQ = Infinity } = model;
  const count = at.length;
  const array = (): Float64Array => new Float64Array(count);
  const pressureRe = array();
  const pressureIm = array();
  const travelRe = array();
  const travelIm = array();
  const mechanicalRe = array();
  const mechanicalIm = array();
  const vented = model.style === 'vented';
  const portRe = new Float64Array(vented ? count : 0);
  const portIm = new Float64Array(vented ? count : 0);
  const bare = !vented && leakageQ === Infinity && absorptionQ === Infinity;
  const total = re + series;
  const damping = re / (qes * total);
  const reactive = withCoil ? (2 * Math.PI * model.coil) / total : 0;
  for (let index = 0; index < count; index += 1) {
    const f = at[index]!;
    const s = f / fs;
    // Compliance of the box with its losses: F = 1/Ytot, Ya the branch of the enclosed air. F and Ya·F are 1 without.
    let loadRe = 1;
    let loadIm = 0;
    let airRe = 1;
    let airIm = 0;
    let ventRe = 0;
    let ventIm = 0;
    if (!bare) {
      const p = f / lossFrequency;
      const absorbed = p / absorptionQ;
      const yaRe = 1 / (1 + absorbed * absorbed);
      const yaIm = -absorbed * yaRe;
      if (vented) {
        const friction = p / portQ;
        const size = p * p * p * p + friction * friction;
        ventRe = -(p * p) / size;
        ventIm = -friction / size;
      }
      const sumRe = yaRe + ventRe;
      const sumIm = yaIm + ventIm - 1 / (p * leakageQ);
      const size = sumRe * sumRe + sumIm * sumIm;
      loadRe = sumRe / size;
      loadIm = -sumIm / size;
      airRe = yaRe * loadRe - yaIm * loadIm;
      airIm = yaRe * loadIm + yaIm * loadRe;
    }
    const mRe = 1 - s * s + ratio * loadRe;
    const mIm = s / qms + ratio * loadIm;
    mechanicalRe[index] = mRe;
    mechanicalIm[index] = mIm;
    // X = 1/(M·Ze/Rt + S·Re/(Qes·Rt)), Ze/Rt = 1 + j·reactance.
    const reactance = f * reactive;
    const dRe = mRe - mIm * reactance;
    const dIm = mIm + mRe * reactance + s * damping;
    const inverse = 1 / (dRe * dRe + dIm * dIm);
    const xRe = dRe * inverse;
    const xIm = -dIm * inverse;
    travelRe[index] = xRe;
    travelIm[index] = xIm;
    const s2 = s * s;
    pressureRe[index] = -s2 * (airRe * xRe - airIm * xIm);
    pressureIm[index] = -s2 * (airRe * xIm + airIm * xRe);
    if (vented) {
      const uRe = ventRe * loadRe - ventIm * loadIm;
      const uIm = ventRe * loadIm + ventIm * loadRe;
      portRe[index] = uRe * xRe - uIm * xIm;
      portIm[index] = uRe * xIm + uIm * xRe;
    }
  }
  if (model.highPass !== undefined) {
    applyHighPass(model.highPass, at, [
      [pressureRe, pressureIm],
      [travelRe, travelIm],
      ...(vented ? [[portRe, portIm] as const] : []),
    ]);
  }
  return { pressureRe, pressureIm, travelRe, travelIm, portRe, portIm, mechanicalRe, mechanicalIm };
}
