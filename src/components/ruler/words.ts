/** Unit symbols as they are spoken; a symbol that is not here is read as it stands. */
const SPOKEN: Readonly<Record<string, string>> = {
  Hz: 'hertz',
  kHz: 'kilohertz',
  m: 'metres',
  cm: 'centimetres',
  mm: 'millimetres',
  in: 'inches',
  ft: 'feet',
  'cm²': 'square centimetres',
  'm²': 'square metres',
  'in²': 'square inches',
  L: 'litres',
  l: 'litres',
  'm³': 'cubic metres',
  'ft³': 'cubic feet',
  'in³': 'cubic inches',
  g: 'grams',
  kg: 'kilograms',
  oz: 'ounces',
  lb: 'pounds',
  s: 'seconds',
  ms: 'milliseconds',
  'm/s': 'metres a second',
  'ft/s': 'feet a second',
  Ω: 'ohms',
  mH: 'millihenries',
  µH: 'microhenries',
  µF: 'microfarads',
  V: 'volts',
  A: 'amperes',
  W: 'watts',
  dB: 'decibels',
  'dB/oct': 'decibels an octave',
  oct: 'octaves',
  '°': 'degrees',
  '°C': 'degrees Celsius',
  '°F': 'degrees Fahrenheit',
};

/** `2150 hertz`: a number with its unit for a screen reader. */
export const spoken = (number: string, unit: string): string =>
  [number.replaceAll(/[\u2009\u202f]/g, '').replace('\u2212', 'minus '), SPOKEN[unit] ?? unit]
    .filter((word) => word !== '')
    .join(' ');
