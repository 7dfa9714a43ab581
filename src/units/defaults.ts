import { quantities, type QuantityName } from '../../functions/quantities.ts';

type System = 'metric' | 'imperial';

/** The unit in which a quantity is shown where nothing else says, and it is not the SI unit. */
const metric: Partial<Record<QuantityName, string>> = {
  length: 'mm',
  travel: 'mm',
  area: 'cm²',
  volume: 'L',
  mass: 'g',
  time: 'ms',
  compliance: 'mm/N',
  volumeVelocity: 'L/s',
  inductance: 'mH',
  capacitance: 'µF',
  angle: '°',
  temperature: '°C',
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
  (system === 'imperial' ? imperial[quantity] : undefined) ?? metric[quantity] ?? quantities[quantity].si;
