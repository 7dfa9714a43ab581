import type { AnyFunction } from '../define.ts';
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
