/** Ranges wide enough for anything that is a loudspeaker and narrow enough that no result overflows. SI. */
export const usual = {
  frequency: { quantity: 'frequency', min: 0.1, max: 1e6 },
  area: { quantity: 'area', min: 1e-8, max: 100 },
  length: { quantity: 'length', min: 1e-4, max: 100 },
  ohms: { quantity: 'resistance', min: 1e-3, max: 1e6 },
  volume: { quantity: 'volume', min: 1e-9, max: 1e4 },
  q: { quantity: 'ratio', min: 0.01, max: 1e4 },
  travel: { quantity: 'travel', min: 1e-7, max: 10 },
  volts: { quantity: 'voltage', min: 1e-6, max: 1e6 },
  level: { quantity: 'level', min: -300, max: 300 },
} as const;
