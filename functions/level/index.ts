import type { AnyFunction } from '../define.ts';
import { levelFromRatio, levelPowerOf, levelRatio } from './ratio.ts';
import { trebleFloor, trebleTravel, trebleTravelAt } from './treble.ts';

export const levelFunctions: readonly AnyFunction[] = [
  levelRatio,
  levelFromRatio,
  levelPowerOf,
  trebleTravel,
  trebleFloor,
  trebleTravelAt,
];
