import type { QuantityName } from '../quantities.ts';
import type { Driver } from '../values/driver.ts';

/** Every field of a driver that holds a number. */
export type NumberField = {
  [K in keyof Driver]-?: Exclude<Driver[K], undefined> extends number ? K : never;
}[keyof Driver];

export type GivenNumbers = { [K in NumberField]?: number };

export interface DriverParameter {
  readonly field: NumberField;
  /** As written in a datasheet. */
  readonly symbol: string;
  readonly summary: string;
  readonly quantity: QuantityName;
  /** Plausible values, SI. */
  readonly plausible: readonly [number, number] | undefined;
  /** What a slip of the unit multiplies a value by to mend it, likeliest first: mm² for cm², a bare number for cm². */
  readonly slips: readonly number[] | undefined;
  readonly mayBeZero: true | undefined;
}

const of = (
  field: NumberField,
  symbol: string,
  summary: string,
  quantity: QuantityName,
  plausible?: DriverParameter['plausible'],
  slips?: DriverParameter['slips'],
  mayBeZero?: true,
): DriverParameter => ({ field, symbol, summary, quantity, plausible, slips, mayBeZero });

/** All numbers of a driver, in the order in which a datasheet lists them. */
export const driverParameters: readonly DriverParameter[] = [
  of('fs', 'Fs', 'Free-air resonance', 'frequency', [15, 2500], [1e3, 1e-3]),
  of('qms', 'Qms', 'Mechanical Q', 'ratio', [1, 15]),
  of('qes', 'Qes', 'Electrical Q', 'ratio', [0.15, 2]),
  of('qts', 'Qts', 'Total Q', 'ratio', [0.12, 1.9]),
  of('vas', 'Vas', 'Equivalent volume of the suspension', 'volume', [5e-7, 1.2], [1e-3, 1e3, 1e-6]),
  of('re', 'Re', 'Voice-coil resistance', 'resistance', [1.5, 14], [1e-3, 1e3]),
  of('le', 'Le', 'Voice-coil inductance', 'inductance', [5e-6, 5e-3], [1e-3, 1e-6, 1e3], true),
  of('le2', 'Le2', 'Lossy part of the voice-coil inductance', 'inductance', [1e-6, 0.02], [1e-3, 1e-6, 1e3], true),
  of('re2', 'Re2', 'Resistance across that lossy part', 'resistance', [0.1, 1000], undefined, true),
  of('sd', 'Sd', 'Cone area', 'area', [2e-4, 0.18], [1e2, 1e-4, 1e-2]),
  of('mms', 'Mms', 'Moving mass with air load', 'mass', [1e-4, 0.4], [1e-3, 1e3]),
  of('cms', 'Cms', 'Compliance of the suspension', 'compliance', [2e-5, 5e-3], [1e-3, 1e3, 1e-6]),
  of('rms', 'Rms', 'Mechanical resistance', 'mechanicalResistance', [0.05, 20]),
  of('bl', 'Bl', 'Force factor', 'forceFactor', [1, 40]),
  of('xmax', 'Xmax', 'Largest one-way travel', 'travel', [1e-4, 0.04], [1e-3, 1e3]),
  of('pe', 'Pe', 'Thermal power limit', 'power', [3, 1500]),
  of('level', 'Level', 'Level at 1 m for 2.83 V', 'level', [78, 106]),
  of('nominal', 'Nominal', 'Nominal ohms', 'resistance', [2, 16]),
  of('breakup', 'Break-up', 'First strong cone resonance', 'frequency', [500, 30e3], [1e3, 1e-3]),
  of('flange', 'Flange', 'Outer diameter of the flange', 'length', [0.025, 0.48], [1e-3]),
  of('depth', 'Depth', 'Depth behind the flange', 'length', [0.01, 0.25], [1e-3]),
  of('displaced', 'Displaced', 'Volume that the driver takes up in the box', 'volume', [0, 0.012], [1e-3], true),
  of('price', 'Price', 'Price', 'price', undefined, undefined, true),
];

export const parameterOf = (field: NumberField): DriverParameter =>
  driverParameters.find((each) => each.field === field)!;
