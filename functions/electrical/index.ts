import type { AnyFunction } from '../define.ts';
import { loadCurrent, loadDissipation, loadPower, loadResistive, loadVolts } from './load-amplifier.ts';
import { loadNominal, loadPermitted, loadRating, loadVerdict } from './load-rating.ts';
import { loadShare, loadVoltage, loadWired } from './load-wired.ts';
import { loadMixed, loadWirings } from './load-wirings.ts';
import { loadHandover, loadLowest, loadLowestAt, loadParallel, loadSeries } from './load.ts';
import { padDrive, padHeat } from './pad-heat.ts';
import { padPairs, padPairsAt, padStandardSeries, padStandardShunt } from './pad-standard.ts';
import { padImpedance, padInput, padLoss, padResponse, padSeries, padShunt, padSingle } from './pad.ts';
import { standardAbove, standardBelow, standardNearest, standardPairs, standardTolerance } from './standard.ts';

export const electricalFunctions: readonly AnyFunction[] = [
  loadLowest,
  loadLowestAt,
  loadParallel,
  loadSeries,
  loadHandover,
  loadWired,
  loadVoltage,
  loadShare,
  loadWirings,
  loadMixed,
  loadVerdict,
  loadNominal,
  loadRating,
  loadPermitted,
  loadDissipation,
  loadResistive,
  loadPower,
  loadCurrent,
  loadVolts,
  padSeries,
  padShunt,
  padLoss,
  padInput,
  padSingle,
  padStandardSeries,
  padStandardShunt,
  padPairs,
  padPairsAt,
  padImpedance,
  padResponse,
  padDrive,
  padHeat,
  standardNearest,
  standardBelow,
  standardAbove,
  standardPairs,
  standardTolerance,
];
