import { usual } from '../usual.ts';

/** Parameters that several level functions share. */
export const systemLevel = { ...usual.level, typical: [70, 110], summary: 'level at 1 m for 2.83 V' } as const;
export const distance = {
  quantity: 'distance',
  min: 0.1,
  max: 1000,
  typical: [1, 10],
  summary: 'from the loudspeakers to the chair',
} as const;
export const decay = {
  quantity: 'level',
  min: 0,
  max: 7,
  default: 3,
  typical: [2, 6.1],
  summary: 'loss for every doubling of the distance: 6.02 dB in the open, about 3 dB in a living room',
} as const;
export const together = {
  quantity: 'level',
  min: 0,
  max: 20,
  default: 0,
  typical: [0, 6],
  summary: 'what further loudspeakers add: 3 dB for a stereo pair with unlike signals',
} as const;
export const ohms = {
  ...usual.ohms,
  default: 8,
  typical: [2, 16],
  summary: 'ohms into which the power is counted, usually the nominal ohms',
} as const;
export const power = { quantity: 'power', min: 1e-6, max: 1e6, typical: [1, 2000] } as const;
