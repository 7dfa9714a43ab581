import { usual } from '../usual.ts';

/** Parameters that the cabinet functions share. */
export const height = { ...usual.length, summary: 'outside height', typical: [0.1, 2.5] } as const;
export const width = { ...usual.length, summary: 'outside width', typical: [0.08, 1.2] } as const;
export const depth = { ...usual.length, summary: 'outside depth', typical: [0.08, 1.2] } as const;
export const thickness = {
  ...usual.length,
  summary: 'thickness of the panels',
  typical: [0.006, 0.05],
} as const;
export const displaced = {
  quantity: 'volume',
  min: 0,
  max: 1e4,
  default: 0,
  summary: 'volume that driver, port and braces take',
} as const;
export const density = {
  quantity: 'density',
  min: 10,
  max: 20000,
  default: 740,
  typical: [350, 1100],
  summary: 'density of the panels; 740 kg/m³ is a common fibreboard',
} as const;
