import type { QuantityName } from '../../functions/quantities.ts';

type System = 'metric' | 'imperial';

/** The unit in which a quantity is shown where nothing else says. */
const metric: Partial<Record<QuantityName, string>> = {
  frequency: 'Hz',
  length: 'mm',
  travel: 'mm',
  distance: 'm',
  area: 'cm²',
  volume: 'L',
  mass: 'g',
  time: 'ms',
  speed: 'm/s',
  density: 'kg/m³',
  pressure: 'Pa',
  compliance: 'mm/N',
  mechanicalResistance: 'kg/s',
  forceFactor: 'T·m',
  volumeVelocity: 'L/s',
  resistance: 'Ω',
  inductance: 'mH',
  capacitance: 'µF',
  voltage: 'V',
  current: 'A',
  power: 'W',
  level: 'dB',
  slope: 'dB/oct',
  angle: '°',
  octaves: 'oct',
  temperature: '°C',
  warming: 'K',
  price: '¤',
};

const imperial: Partial<Record<QuantityName, string>> = {
  length: 'in',
  travel: 'in',
  distance: 'ft',
  area: 'in²',
  volume: 'ft³',
  mass: 'oz',
  speed: 'ft/s',
  temperature: '°F',
};

export const defaultUnit = (quantity: QuantityName, system: System): string =>
  (system === 'imperial' ? imperial[quantity] : undefined) ?? metric[quantity] ?? '';
