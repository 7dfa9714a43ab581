/** Ranges wide enough for anything that is a loudspeaker and narrow enough that no result overflows. SI. */
export const usual = {
  frequency: { quantity: 'frequency', min: 0.1, max: 1e6 },
  area: { quantity: 'area', min: 1e-8, max: 100 },
  length: { quantity: 'length', min: 1e-4, max: 100 },
  ohms: { quantity: 'resistance', min: 1e-3, max: 1e6 },
  level: { quantity: 'level', min: -300, max: 300 },
} as const;
