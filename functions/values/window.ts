/** One end of a window and the rule that sets it. */
export interface Limit {
  /** As it stands in a sentence: "resonance", "narrowing". */
  readonly name: string;
  /** The frequency by the rule, in hertz. */
  readonly at: number;
  /** The frequency when the rule is stretched, in hertz. */
  readonly stretched: number;
}

/** The band that two drivers can share: above every floor, below every ceiling. */
export interface Window {
  readonly kind: 'window';
  readonly floors: readonly Limit[];
  readonly ceilings: readonly Limit[];
  /** The binding floor and ceiling. */
  readonly low: Limit;
  readonly high: Limit;
  /** log2(high / low); negative when they do not meet. */
  readonly octaves: number;
  /** The same with every rule stretched. */
  readonly stretchedOctaves: number;
}
