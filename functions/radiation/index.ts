import type { AnyFunction } from '../define.ts';
import { pistonAirLoad, pistonReactance, pistonResistance } from './air-load.ts';
import { pistonDirectivity, pistonDirectivityCurve, pistonMatch } from './directivity.ts';
import { edgeFrequency, edgeShelfInductance, edgeShelfResistance, edgeStep } from './edge.ts';
import { pistonByDiameter, pistonBySize, pistonNarrowing, pistonSize } from './narrowing.ts';
import { lineLoss, pistonNear } from './near.ts';
import { pistonLoss, pistonNull, pistonOffAxis, pistonWidth } from './piston.ts';
import { edgeSphere } from './sphere.ts';
import { spacingBetween, spacingLimit, spacingNull, spacingWavelengths } from './spacing.ts';

export const radiationFunctions: readonly AnyFunction[] = [
  pistonLoss,
  pistonNarrowing,
  pistonByDiameter,
  pistonBySize,
  pistonSize,
  pistonOffAxis,
  pistonWidth,
  pistonNull,
  pistonDirectivity,
  pistonDirectivityCurve,
  pistonMatch,
  pistonResistance,
  pistonReactance,
  pistonAirLoad,
  pistonNear,
  lineLoss,
  spacingBetween,
  spacingLimit,
  spacingNull,
  spacingWavelengths,
  edgeFrequency,
  edgeStep,
  edgeSphere,
  edgeShelfResistance,
  edgeShelfInductance,
];
