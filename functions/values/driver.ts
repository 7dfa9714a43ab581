import type { Currency } from '../quantities.ts';
import type { Sentence } from './say.ts';

/** A loudspeaker driver by its small-signal parameters, SI. Absent fields were neither given nor derivable. */
export interface Driver {
  readonly kind: 'driver';
  readonly name: string;
  readonly fs?: number;
  readonly qms?: number;
  readonly qes?: number;
  readonly qts?: number;
  readonly vas?: number;
  readonly re?: number;
  readonly le?: number;
  /** Lossy part of the inductance, in series with `le`; {@link re2} lies across it. */
  readonly le2?: number;
  readonly re2?: number;
  readonly sd?: number;
  readonly mms?: number;
  readonly cms?: number;
  readonly rms?: number;
  readonly bl?: number;
  /** One-way peak. */
  readonly xmax?: number;
  /** Thermal power limit. */
  readonly pe?: number;
  /** dB at 1 m, half space, for 2.83 V. */
  readonly level?: number;
  /** Where `level` comes from: as printed on which basis, or from the parameters. */
  readonly levelBasis?: string;
  readonly nominal?: number;
  readonly flange?: number;
  readonly depth?: number;
  readonly displaced?: number;
  /** First strong cone resonance. */
  readonly breakup?: number;
  readonly price?: number;
  /** The sign of that price, where it has one. */
  readonly money?: Currency;
  /** Names of the fields that were computed from others, not given. */
  readonly derived: readonly string[];
  /** What looks wrong in the data, as questions to the reader. */
  readonly doubts: readonly Sentence[];
}
