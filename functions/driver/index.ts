import type { AnyFunction } from '../define.ts';
import { driverFromTable, driverOf } from './driver.ts';
import { driverImpedance } from './impedance.ts';
import { driverEfficiency, driverLevel, driverLevelGap, driverQts, levelFromWatt } from './levels.ts';

export const driverFunctions = [
  driverFromTable,
  driverOf,
  driverQts,
  driverLevel,
  driverLevelGap,
  driverEfficiency,
  levelFromWatt,
  driverImpedance,
] as unknown as readonly AnyFunction[];
