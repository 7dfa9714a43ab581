import type { AnyFunction } from '../define.ts';
import { driverAudit, driverCulprit } from './audit-driver.ts';
import { driverEbp, driverGroup, driverHeating, driverHot, driverHotLoss, driverSeries } from './changed.ts';
import { claimBound, claimCheck, claimConstant, claimCutoff, claimLevel, claimVolume } from './claim.ts';
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
  driverAudit,
  driverCulprit,
  driverEbp,
  driverSeries,
  driverGroup,
  driverHot,
  driverHotLoss,
  driverHeating,
  claimCheck,
  claimConstant,
  claimBound,
  claimVolume,
  claimCutoff,
  claimLevel,
] as unknown as readonly AnyFunction[];
