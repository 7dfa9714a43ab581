import type { AnyFunction } from '../define.ts';
import { pistonAirLoad, pistonReactance, pistonResistance } from './air-load.ts';
import { pistonDirectivity, pistonDirectivityCurve, pistonMatch } from './directivity.ts';
import {
  aroundAt,
  aroundAxis,
  aroundEarly,
  aroundEarlyIndex,
  aroundIndex,
  aroundPower,
  aroundRoom,
  aroundWindow,
} from './around-curves.ts';
import { edgeDiffraction, edgeRadius, edgeRipple } from './diffraction.ts';
import { edgeFrequency, edgeStep } from './edge.ts';
import { spacingEarsHigh, spacingEarsLow, spacingLobe, spacingTilt, spacingWindow } from './lobe.ts';
import { edgePlace } from './panel.ts';
import { roomDip, roomLift, roomLowestMode, roomReflection, roomWallDip, roomWalls } from './room.ts';
import { edgeShelfInductance, edgeShelfLoad, edgeShelfLoss, edgeShelfResistance } from './shelf.ts';
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
  spacingLobe,
  spacingTilt,
  spacingWindow,
  spacingEarsLow,
  spacingEarsHigh,
  edgeFrequency,
  edgeStep,
  edgeSphere,
  edgeShelfResistance,
  edgeShelfInductance,
  edgeShelfLoss,
  edgeShelfLoad,
  edgeDiffraction,
  edgeRipple,
  edgeRadius,
  edgePlace,
  aroundAxis,
  aroundAt,
  aroundWindow,
  aroundEarly,
  aroundPower,
  aroundRoom,
  aroundIndex,
  aroundEarlyIndex,
  roomReflection,
  roomDip,
  roomWallDip,
  roomWalls,
  roomLowestMode,
  roomLift,
];
