import type { AnyFunction } from '../define.ts';
import { checkCurve, checkMass, checkOhms, checkSymmetry, gateLimit, nearLimit, nearOffset } from './checks.ts';
import { measureImpedance, measureLevel, measureMinimumPhase } from './curves.ts';
import { measureDriver, measureFitted, measureSweep } from './sweep.ts';
import { measureMass, measureMiddle, measureQes, measureQms, measureQts, measureVas } from './three-points.ts';

export const measureFunctions: readonly AnyFunction[] = [
  measureSweep,
  measureDriver,
  measureFitted,
  measureMiddle,
  measureQms,
  measureQes,
  measureQts,
  measureMass,
  measureVas,
  checkSymmetry,
  checkMass,
  checkOhms,
  measureLevel,
  measureImpedance,
  measureMinimumPhase,
  checkCurve,
  gateLimit,
  nearLimit,
  nearOffset,
];
