import type { NumberField } from './parameters.ts';

/** What names a parameter in a datasheet: whole words, and phrases; the longest phrase found in a label decides. */
export const labelWords: Readonly<Record<NumberField, readonly [words: string, phrases: string]>> = {
  fs: ['fs f0', 'resonance, resonant frequency'],
  qms: ['qms', 'mechanical q'],
  qes: ['qes', 'electrical q'],
  qts: ['qts', 'total q'],
  vas: ['vas', 'equivalent volume, equivalent air volume, compliance volume'],
  re: ['re rdc', 'resistance'],
  le: ['le', 'inductance'],
  le2: ['le2 l2', 'lossy inductance'],
  re2: ['re2 r2', 'loss resistance'],
  sd: ['sd', 'cone area, piston area, radiating area, effective area, diaphragm area'],
  mms: ['mms', 'moving mass'],
  cms: ['cms', 'compliance'],
  rms: ['rms', 'mechanical resistance, mechanical loss'],
  bl: ['bl bxl', 'force factor'],
  xmax: ['xmax', 'travel, excursion'],
  pe: ['pe pmax', 'thermal limit, thermal power, power limit, power handling, rated power'],
  level: ['level spl', 'sensitivity, printed level'],
  nominal: ['nominal znom', 'nominal impedance, nominal ohms, rated impedance'],
  breakup: ['breakup', 'break-up, break up, cone resonance'],
  flange: ['flange', 'flange, outer diameter, frame diameter, overall diameter'],
  depth: ['depth', 'mounting depth'],
  displaced: ['displaced displacement', 'driver volume'],
  price: ['price', 'price, cost'],
};
