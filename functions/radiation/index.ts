import type { AnyFunction } from '../define.ts';
import { edgeFrequency, edgeShelfInductance, edgeShelfResistance, edgeStep } from './edge.ts';
import { pistonByDiameter, pistonLoss, pistonNarrowing, pistonOffAxis } from './piston.ts';
import { spacingBetween, spacingLimit, spacingNull, spacingWavelengths } from './spacing.ts';

export const radiationFunctions: readonly AnyFunction[] = [
  pistonLoss,
  pistonNarrowing,
  pistonByDiameter,
  pistonOffAxis,
  spacingBetween,
  spacingLimit,
  spacingNull,
  spacingWavelengths,
  edgeFrequency,
  edgeStep,
  edgeShelfResistance,
  edgeShelfInductance,
];
