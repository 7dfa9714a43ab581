import type { HighPass } from '../values/box.ts';

/** A driver on its acoustic load, by ratios: all that the small-signal circuit needs. SI. */
export interface LumpedModel {
  readonly style: 'free' | 'closed' | 'vented' | 'radiator' | 'bandpass';
  readonly fs: number;
  readonly qms: number;
  readonly qes: number;
  readonly re: number;
  /** Voice-coil inductance, in series with Re. */
  readonly coil: number;
  /** Its lossy part in series with that: an inductance with a resistance across it. */
  readonly lossyCoil?: { readonly inductance: number; readonly across: number } | undefined;
  /** Series resistance ahead of the voice coil; 0 without. */
  readonly series?: number;
  /** Vas over the apparent volume behind the cone; 0 in free air. */
  readonly ratio?: number;
  /** Vas over the volume before the cone; band-pass only. */
  readonly frontRatio?: number;
  /** Compliance of the radiators over that of the air, their resonance and Q. */
  readonly radiator?: { readonly ratio: number; readonly fp: number; readonly qmp: number };
  /** The frequency at which the loss Qs hold: the tuning or the closed-box resonance. */
  readonly lossFrequency?: number;
  readonly leakageQ?: number;
  readonly absorptionQ?: number;
  readonly portQ?: number;
  readonly highPass?: HighPass | undefined;
}
