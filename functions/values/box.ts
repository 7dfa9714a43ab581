import type { Driver } from './driver.ts';

/** A Butterworth high-pass ahead of the amplifier. */
export interface HighPass {
  /** Where it is 3.01 dB down, in hertz. */
  readonly frequency: number;
  readonly order: number;
}

/** A driver in an enclosure, with all that its lumped model needs. SI. */
export interface Box {
  readonly kind: 'box';
  readonly style: 'closed' | 'vented';
  readonly driver: Driver;
  /** Net volume of air. */
  readonly volume: number;
  /** Apparent-volume factor of the filling, 1 without. */
  readonly fill: number;
  /** Series resistance between amplifier and driver. */
  readonly seriesResistance: number;
  /** Port tuning in hertz; vented only. */
  readonly tuning?: number;
  /** Leakage Q at the tuning (vented) or at the closed-box resonance; infinite without. */
  readonly leakageQ: number;
  readonly absorptionQ: number;
  readonly portQ: number;
  /** Filter that the drive passes first. */
  readonly highPass?: HighPass;
}
