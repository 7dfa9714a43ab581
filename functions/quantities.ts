/** Signs of money. No rate of exchange is known here, so a price keeps the sign it was typed with. */
export const currencies = ['€', '$', '£', '¥', '₹', 'CHF', 'kr', 'zł', 'Kč'] as const;
export type Currency = (typeof currencies)[number];

/** A physical dimension: exponents over the base quantities. `dB`, `rad`, `oct` and `money` are kept apart
 *  so that a level is never added to a ratio unnoticed. */
export type Base = 'm' | 'kg' | 's' | 'A' | 'K' | 'dB' | 'rad' | 'oct' | 'money' | Currency;
export type Dimension = Readonly<Partial<Record<Base, number>>>;

export interface Quantity {
  /** What a reader calls it, as in "a frequency is wanted". */
  readonly noun: string;
  /** The unit in which every function takes and gives it. Empty for pure numbers. */
  readonly si: string;
  readonly dimension: Dimension;
}

const ohm: Dimension = { m: 2, kg: 1, s: -3, A: -2 };

/** All that can be measured here. The first quantity listed with a dimension is the one a bare dimension is read as. */
export const quantities = {
  ratio: { noun: 'a plain number', si: '', dimension: {} },
  frequency: { noun: 'a frequency', si: 'Hz', dimension: { s: -1 } },
  length: { noun: 'a length', si: 'm', dimension: { m: 1 } },
  /** One-way peak travel of a cone; `mm p-p` converts on entry. */
  travel: { noun: 'a one-way travel', si: 'm', dimension: { m: 1 } },
  /** A listening distance or a wall distance: shown in metres. */
  distance: { noun: 'a distance', si: 'm', dimension: { m: 1 } },
  area: { noun: 'an area', si: 'm²', dimension: { m: 2 } },
  volume: { noun: 'a volume', si: 'm³', dimension: { m: 3 } },
  mass: { noun: 'a mass', si: 'kg', dimension: { kg: 1 } },
  time: { noun: 'a time', si: 's', dimension: { s: 1 } },
  speed: { noun: 'a speed', si: 'm/s', dimension: { m: 1, s: -1 } },
  density: { noun: 'a density', si: 'kg/m³', dimension: { kg: 1, m: -3 } },
  pressure: { noun: 'a pressure', si: 'Pa', dimension: { kg: 1, m: -1, s: -2 } },
  compliance: { noun: 'a compliance', si: 'm/N', dimension: { kg: -1, s: 2 } },
  mechanicalResistance: { noun: 'a mechanical resistance', si: 'kg/s', dimension: { kg: 1, s: -1 } },
  forceFactor: { noun: 'a force factor', si: 'T·m', dimension: { m: 1, kg: 1, s: -2, A: -1 } },
  volumeVelocity: { noun: 'a volume velocity', si: 'm³/s', dimension: { m: 3, s: -1 } },
  resistance: { noun: 'ohms', si: 'Ω', dimension: ohm },
  inductance: { noun: 'an inductance', si: 'H', dimension: { m: 2, kg: 1, s: -2, A: -2 } },
  capacitance: { noun: 'a capacitance', si: 'F', dimension: { m: -2, kg: -1, s: 4, A: 2 } },
  voltage: { noun: 'a voltage', si: 'V', dimension: { m: 2, kg: 1, s: -3, A: -1 } },
  current: { noun: 'a current', si: 'A', dimension: { A: 1 } },
  power: { noun: 'a power', si: 'W', dimension: { m: 2, kg: 1, s: -3 } },
  /** Sound pressure level re 20 µPa, or a difference of levels. */
  level: { noun: 'decibels', si: 'dB', dimension: { dB: 1 } },
  slope: { noun: 'a slope', si: 'dB/oct', dimension: { dB: 1, oct: -1 } },
  angle: { noun: 'an angle', si: 'rad', dimension: { rad: 1 } },
  octaves: { noun: 'octaves', si: 'oct', dimension: { oct: 1 } },
  temperature: { noun: 'a temperature', si: 'K', dimension: { K: 1 } },
  /** By how much one temperature is above another: 5 K, never −268 °C. */
  warming: { noun: 'a difference of temperatures', si: 'K', dimension: { K: 1 } },
  price: { noun: 'a price', si: '¤', dimension: { money: 1 } },
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof quantities;
