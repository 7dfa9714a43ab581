/** One leg of a ladder: parts in series or parallel with one another. SI; absent parts are not there. */
export interface Leg {
  /** In the way of the signal, or across what follows. */
  readonly place: 'series' | 'shunt';
  /** `chain`: its parts in series; `tank`: its parts in parallel. */
  readonly form: 'chain' | 'tank';
  readonly resistance?: number;
  readonly inductance?: number;
  /** Resistance of the coil's wire, always in series with the inductance. */
  readonly coilResistance?: number;
  readonly capacitance?: number;
  /** What it is for, as in "low-pass coil". */
  readonly label?: string;
}

/** A passive filter as built: a ladder from the amplifier to the driver. */
export interface Network {
  readonly kind: 'network';
  readonly name: string;
  /** From the amplifier to the driver. */
  readonly legs: readonly Leg[];
}
