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
  /** Whole words that name it. */
  readonly words: readonly string[];
  /** Phrases that name it; the longest phrase found in a label decides. */
  readonly phrases: readonly string[];
  /** Plausible values, SI. */
  readonly plausible?: readonly [number, number];
  /** What a slip of the unit multiplies a value by to mend it, likeliest first: mm² for cm², a bare number for cm². */
  readonly slips?: readonly number[];
  readonly mayBeZero?: true;
}

/** All numbers of a driver, in the order in which a datasheet lists them. */
export const driverParameters: readonly DriverParameter[] = [
  {
    field: 'fs',
    symbol: 'Fs',
    summary: 'Free-air resonance',
    quantity: 'frequency',
    words: ['fs', 'f0'],
    phrases: ['resonance', 'resonant frequency', 'resonance frequency'],
    plausible: [15, 2500],
    slips: [1e3, 1e-3],
  },
  {
    field: 'qms',
    symbol: 'Qms',
    summary: 'Mechanical Q',
    quantity: 'ratio',
    words: ['qms'],
    phrases: ['mechanical q'],
    plausible: [1, 15],
  },
  {
    field: 'qes',
    symbol: 'Qes',
    summary: 'Electrical Q',
    quantity: 'ratio',
    words: ['qes'],
    phrases: ['electrical q'],
    plausible: [0.15, 2],
  },
  {
    field: 'qts',
    symbol: 'Qts',
    summary: 'Total Q',
    quantity: 'ratio',
    words: ['qts'],
    phrases: ['total q'],
    plausible: [0.12, 1.9],
  },
  {
    field: 'vas',
    symbol: 'Vas',
    summary: 'Equivalent volume of the suspension',
    quantity: 'volume',
    words: ['vas'],
    phrases: ['equivalent volume', 'equivalent air volume', 'compliance volume'],
    plausible: [5e-7, 1.2],
    slips: [1e-3, 1e3, 1e-6],
  },
  {
    field: 're',
    symbol: 'Re',
    summary: 'Voice-coil resistance',
    quantity: 'resistance',
    words: ['re', 'rdc'],
    phrases: ['resistance', 'dc resistance', 'voice-coil resistance', 'voice coil resistance'],
    plausible: [1.5, 14],
    slips: [1e-3, 1e3],
  },
  {
    field: 'le',
    symbol: 'Le',
    summary: 'Voice-coil inductance',
    quantity: 'inductance',
    words: ['le'],
    phrases: ['inductance', 'voice-coil inductance', 'voice coil inductance'],
    plausible: [5e-6, 5e-3],
    slips: [1e-3, 1e-6, 1e3],
    mayBeZero: true,
  },
  {
    field: 'le2',
    symbol: 'Le2',
    summary: 'Lossy part of the voice-coil inductance',
    quantity: 'inductance',
    words: ['le2', 'l2'],
    phrases: ['lossy inductance'],
    plausible: [1e-6, 0.02],
    slips: [1e-3, 1e-6, 1e3],
    mayBeZero: true,
  },
  {
    field: 're2',
    symbol: 'Re2',
    summary: 'Resistance across that lossy part',
    quantity: 'resistance',
    words: ['re2', 'r2'],
    phrases: ['loss resistance'],
    plausible: [0.1, 1000],
    mayBeZero: true,
  },
  {
    field: 'sd',
    symbol: 'Sd',
    summary: 'Cone area',
    quantity: 'area',
    words: ['sd'],
    phrases: ['cone area', 'piston area', 'radiating area', 'effective area', 'diaphragm area'],
    plausible: [2e-4, 0.18],
    slips: [1e2, 1e-4, 1e-2],
  },
  {
    field: 'mms',
    symbol: 'Mms',
    summary: 'Moving mass with air load',
    quantity: 'mass',
    words: ['mms'],
    phrases: ['moving mass'],
    plausible: [1e-4, 0.4],
    slips: [1e-3, 1e3],
  },
  {
    field: 'cms',
    symbol: 'Cms',
    summary: 'Compliance of the suspension',
    quantity: 'compliance',
    words: ['cms'],
    phrases: ['compliance'],
    plausible: [2e-5, 5e-3],
    slips: [1e-3, 1e3, 1e-6],
  },
  {
    field: 'rms',
    symbol: 'Rms',
    summary: 'Mechanical resistance',
    quantity: 'mechanicalResistance',
    words: ['rms'],
    phrases: ['mechanical resistance', 'mechanical loss'],
    plausible: [0.05, 20],
  },
  {
    field: 'bl',
    symbol: 'Bl',
    summary: 'Force factor',
    quantity: 'forceFactor',
    words: ['bl', 'bxl'],
    phrases: ['force factor'],
    plausible: [1, 40],
  },
  {
    field: 'xmax',
    symbol: 'Xmax',
    summary: 'Largest one-way travel',
    quantity: 'travel',
    words: ['xmax'],
    phrases: ['travel', 'excursion', 'linear travel'],
    plausible: [1e-4, 0.04],
    slips: [1e-3, 1e3],
  },
  {
    field: 'pe',
    symbol: 'Pe',
    summary: 'Thermal power limit',
    quantity: 'power',
    words: ['pe', 'pmax'],
    phrases: ['thermal limit', 'thermal power', 'power limit', 'power handling', 'rated power'],
    plausible: [3, 1500],
  },
  {
    field: 'level',
    symbol: 'Level',
    summary: 'Level at 1 m for 2.83 V',
    quantity: 'level',
    words: ['level', 'spl'],
    phrases: ['sensitivity', 'printed level'],
    plausible: [78, 106],
  },
  {
    field: 'nominal',
    symbol: 'Nominal',
    summary: 'Nominal ohms',
    quantity: 'resistance',
    words: ['nominal', 'znom'],
    phrases: ['nominal impedance', 'nominal ohms', 'rated impedance'],
    plausible: [2, 16],
  },
  {
    field: 'breakup',
    symbol: 'Break-up',
    summary: 'First strong cone resonance',
    quantity: 'frequency',
    words: ['break-up', 'breakup'],
    phrases: ['break-up', 'break up', 'cone resonance', 'cone break-up'],
    plausible: [500, 30e3],
    slips: [1e3, 1e-3],
  },
  {
    field: 'flange',
    symbol: 'Flange',
    summary: 'Outer diameter of the flange',
    quantity: 'length',
    words: ['flange'],
    phrases: ['flange', 'outer diameter', 'frame diameter', 'overall diameter'],
    plausible: [0.025, 0.48],
    slips: [1e-3],
  },
  {
    field: 'depth',
    symbol: 'Depth',
    summary: 'Depth behind the flange',
    quantity: 'length',
    words: ['depth'],
    phrases: ['mounting depth'],
    plausible: [0.01, 0.25],
    slips: [1e-3],
  },
  {
    field: 'displaced',
    symbol: 'Displaced',
    summary: 'Volume that the driver takes up in the box',
    quantity: 'volume',
    words: ['displaced', 'displacement'],
    phrases: ['displaced volume', 'driver volume', 'volume displaced'],
    plausible: [0, 0.012],
    slips: [1e-3],
    mayBeZero: true,
  },
  {
    field: 'price',
    symbol: 'Price',
    summary: 'Price',
    quantity: 'price',
    words: ['price', 'cost'],
    phrases: [],
    mayBeZero: true,
  },
];

export const parameterOf = (field: NumberField): DriverParameter =>
  driverParameters.find((each) => each.field === field)!;
