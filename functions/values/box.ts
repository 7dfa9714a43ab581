import type { Driver } from './driver.ts';

/** A Butterworth high-pass ahead of the amplifier. */
export interface HighPass {
  /** Where it is 3.01 dB down, in hertz. */
  readonly frequency: number;
  readonly order: number;
}

/** Passive radiators of a box, all of them taken as one. SI. */
export interface Radiator {
  /** Area of all together. */
  readonly area: number;
  /** Air volume with the compliance of all together. */
  readonly vap: number;
  /** Resonance in free air: the notch of the response. */
  readonly fp: number;
  readonly qmp: number;
  readonly count: number;
  /** One-way peak travel that each allows. */
  readonly xmax?: number;
}

/** `bandpass` is of fourth order: a closed volume behind the cone, a vented one before it. `baffle` is a wall without end. */
export type BoxStyle = 'closed' | 'vented' | 'radiator' | 'bandpass' | 'baffle';

/** A driver in an enclosure, with all that its lumped model needs. SI. */
export interface Box {
  readonly kind: 'box';
  readonly style: BoxStyle;
  readonly driver: Driver;
  /** Net volume of air behind the cone; infinite for a baffle. */
  readonly volume: number;
  /** Net volume before the cone; band-pass only. */
  readonly frontVolume?: number;
  /** Apparent-volume factor of the filling behind the cone, 1 without. */
  readonly fill: number;
  /** Series resistance between amplifier and driver. */
  readonly seriesResistance: number;
  /** Port tuning in hertz; vented and band-pass (of its front volume). */
  readonly tuning?: number;
  readonly radiator?: Radiator;
  /** Leakage Q at the tuning, or at the resonance in a closed box; of the front volume in a band-pass. Infinite without. */
  readonly leakageQ: number;
  /** Of the air behind the cone; at the same frequency, for a band-pass at the resonance on its closed volume. */
  readonly absorptionQ: number;
  readonly portQ: number;
  /** Filter that the drive passes first. */
  readonly highPass?: HighPass;
}
